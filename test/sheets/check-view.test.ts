import { describe, expect, it } from 'vitest';
import { checkViews, shortCheckViews } from '../../src/sheets/check-view.js';

const table = 'A cutter maker’s dimension table, “to BS 978 Part 2” (web page, read 2026)';
const check = (source: string, value: string, agreement = 'exactly') => ({ source, value, agreement });

describe('checks on a sheet', () => {
  it('stand together when they come from one work', () => {
    expect(
      checkViews([
        check(`${table}; row “diameter of blank”`, '50.208 mm'),
        check('Elementary geometry; pitch circles touch', '27.2 mm'),
        check(`${table}; row “root diameter”; by leaf count`, '45.488 mm'),
      ]),
    ).toEqual([
      {
        source: table,
        said: 'row “diameter of blank”, 50.208 mm; row “root diameter”; by leaf count, 45.488 mm; all agree exactly.',
      },
      { source: 'Elementary geometry', said: 'pitch circles touch, 27.2 mm, agrees exactly.' },
    ]);
  });

  it('say how near each is where they differ in that', () => {
    const [view] = checkViews([check('A; one', '1'), check('A; two', '2', 'to 0.001 mm')]);
    expect(view?.said).toBe('one, 1, agrees exactly; two, 2, agrees to 0.001 mm.');
  });

  it('leave a relation to speak for itself', () => {
    expect(checkViews([check('Put back', '2 × 3 = 6', 'holds')])).toEqual([
      { source: 'Put back', said: '2 × 3 = 6, holds.' },
    ]);
  });

  it('are short on a card: the name of the work, and no more of a list than tells it', () => {
    expect(shortCheckViews([check(`${table}; row`, '1 on 2, 2 on 4, 3 on 6, 4 on 8, 5 on 10')])).toEqual([
      { source: 'A cutter maker’s dimension table', said: '1 on 2, 2 on 4, 3 on 6 …, agrees exactly.' },
    ]);
  });
});
