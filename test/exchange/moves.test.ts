import { describe, expect, it } from 'vitest';
import { impossibleForms, moveForms } from '../../src/exchange/qti/move-forms.js';
import { judge } from '../../src/problems/judge.js';
import { itemFor, scores } from './one-question.js';
import { respond } from './processor.js';

describe('a movement of the crank', () => {
  const moves = [
    { holes: 15, circle: 21 },
    { holes: 35, circle: 49 },
  ];

  it('is taken as people write it, in capitals and with odd spaces', async () => {
    const item = await itemFor({ kind: 'moves', turns: 0, moves });
    const forms = [
      '15 on 21',
      '35 on the 49',
      '15/21',
      '5/7',
      '5/7 of a turn',
      '15 Spaces On The 21-hole Circle',
      ' 15  on  21 ',
    ];
    for (const form of forms) expect(scores(item, form), form).toBe(1);
    for (const form of ['14 on 21', '21 on 15', '15', '15 on 49', '115 on 21', '15 on 211', 'not possible'])
      expect(scores(item, form), form).toBe(0);
  });

  it('has its whole turns', async () => {
    const item = await itemFor({ kind: 'moves', turns: 3, moves: [{ holes: 3, circle: 39 }] });
    expect(scores(item, '3 3 on 39')).toBe(0); // nobody can tell it from 33
    const forms = [
      '3 whole turns and 3 spaces on the 39-hole circle',
      '3 and 3 on 39',
      '3 turns, 3 on 39',
      '3 + 3/39',
      '3 1/13',
      '40/13',
    ];
    for (const form of forms) expect(scores(item, form), form).toBe(1);
    for (const form of ['3 on 39', '33 on 39', '3 turns', '2 and 3 on 39', '3 and 33 on 39'])
      expect(scores(item, form), form).toBe(0);
  });

  it('may be whole turns alone, or not possible', async () => {
    const whole = await itemFor({ kind: 'moves', turns: 2, moves: [{ holes: 0, circle: 15 }] });
    for (const form of ['2', '2 turns', '2 whole turns', '2 whole turns and no spaces'])
      expect(scores(whole, form), form).toBe(1);
    expect(scores(whole, '2 and 1 on 15')).toBe(0);
    const none = await itemFor({ kind: 'moves', turns: 0, moves: [] });
    for (const form of ['not possible', 'Not possible', 'impossible'])
      expect(scores(none, form), form).toBe(1);
    expect(scores(none, '15 on 21')).toBe(0);
  });

  it('knows a slip that leaves whole turns alone, as the key writes it and as people do', async () => {
    const slip = { gives: '1 whole turn and 0 spaces on the 19-hole circle', says: 'Not one.', shown: 0 };
    const item = await itemFor({ kind: 'moves', turns: 1, moves: [{ holes: 1, circle: 19 }] }, [slip]);
    for (const form of [slip.gives, '1 turn', '1 turn and no spaces', '1 and 0 on 19'])
      expect(respond(item, { RESPONSE_1: form }).feedback[0], form).toBe(slip.says);
    for (const form of ['1 and 1 on 19', '1 1/19']) expect(scores(item, form), form).toBe(1);
    for (const form of ['2 turns', '10 on 19', '1 and 0 on 20'])
      expect(respond(item, { RESPONSE_1: form }).feedback[0], form).toMatch(/not the answer/);
  });

  it('knows the slip by one space', async () => {
    const slip = { gives: '16 spaces on the 21-hole circle', says: 'One space too many.', shown: 16 };
    const item = await itemFor({ kind: 'moves', turns: 0, moves }, [slip]);
    for (const form of ['16 on 21', '16 spaces on the 21-hole circle', '16/21 of a turn'])
      expect(respond(item, { RESPONSE_1: form }).feedback[0], form).toBe(slip.says);
    expect(respond(item, { RESPONSE_1: '17 on 21' }).feedback[0]).not.toBe(slip.says);
  });
});

it.each([
  [0, 15, 21],
  [3, 3, 39],
  [1, 1, 28],
  [2, 0, 15],
])(
  'every form of %i turns and %i on %i that is mapped is one that the judge of the sheets takes',
  (turns, holes, circle) => {
    const forms = moveForms(turns, { holes, circle });
    expect(forms.length).toBeGreaterThan(3);
    const part = {
      expects: { kind: 'moves', turns, moves: [{ holes, circle }] },
      slips: [],
      unit: '',
    } as const;
    for (const form of forms) expect(judge(form, part).kind, form).toBe('right');
  },
);

it.each(impossibleForms)('%s is not possible, for the judge too', (form) => {
  const part = { expects: { kind: 'moves', turns: 0, moves: [] }, slips: [], unit: '' } as const;
  expect(judge(form, part).kind).toBe('right');
});
