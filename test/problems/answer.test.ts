import { describe, expect, it } from 'vitest';
import { type Answer, answerOf } from '../../src/problems/answer.js';
import type { Subject } from '../../src/problems/subject.js';

const subject = (value: unknown, unit = ''): Subject => ({
  name: 'x',
  value,
  unit,
  symbol: '',
  title: 'x',
  from: { kind: 'drawn' },
});
const told = ({ text, accepted }: Answer) => `${text} | ${accepted}`.replace(/[\u202F\u00A0]/g, ' ');

describe('how an answer is printed, and what is taken as right', () => {
  it('lengths, in either system', () => {
    const rule = { to: '0.01 mm', accept: '0.01 mm' };
    expect(told(answerOf(subject(50.208, 'mm'), rule, 'mm'))).toBe('50.21 mm | 50.20 mm to 50.22 mm');
    expect(told(answerOf(subject(50.208, 'mm'), rule, 'inch'))).toBe('1.977 in | 1.976 in to 1.978 in');
    const both = { to: '0.1 mm or 0.0005 in', accept: '0.2 mm or 0.001 in' };
    expect(told(answerOf(subject(50.208, 'mm'), both, 'mm'))).toBe('50.2 mm | 50.0 mm to 50.4 mm');
    expect(told(answerOf(subject(50.208, 'mm'), both, 'inch'))).toBe('1.9765 in | 1.9755 in to 1.9775 in');
  });

  it('angles to the minute, speeds within a percentage, whole counts', () => {
    expect(told(answerOf(subject(360 / 56, '°'), { to: '1 minute', accept: '1 minute' }, 'mm'))).toBe(
      '6° 26′ | 6° 25′ to 6° 27′',
    );
    expect(told(answerOf(subject(795.77, 'rev/min'), { to: '1', accept: '5 %' }, 'mm'))).toBe(
      '796 rev/min | 757 rev/min to 835 rev/min',
    );
    expect(told(answerOf(subject(60), {}, 'mm'))).toBe('60 | only this');
    expect(() => answerOf(subject(60.4), {}, 'mm')).toThrow(/not a whole number/);
  });

  it('knows a fair rounding from one that could go either way', () => {
    const rule = { to: '0.01 mm' };
    expect(answerOf(subject(50.205, 'mm'), rule, 'mm').ambiguous).toBe(true);
    expect(answerOf(subject(50.2049, 'mm'), rule, 'mm').ambiguous).toBe(true);
    expect(answerOf(subject(50.208, 'mm'), rule, 'mm').ambiguous).toBe(false);
    expect(answerOf(subject(50.2, 'mm'), rule, 'mm').ambiguous).toBe(false);
  });

  it('takes what lies within the range once it is rounded, and no more', () => {
    const { takes } = answerOf(subject(50.208, 'mm'), { to: '0.01 mm', accept: '0.01 mm' }, 'mm');
    expect([50.196, 50.2, 50.21, 50.224].map(takes)).toEqual([true, true, true, true]);
    expect([50.19, 50.194, 50.226, 49.6].map(takes)).toEqual([false, false, false, false]);
  });

  it('tells a range no wider than it takes', () => {
    // 1 % of 19.95 is 0.1995, just short of four steps.
    const answer = answerOf(subject(19.95 * 25.4, 'mm'), { to: '0.05 in', accept: '1 %' }, 'inch');
    expect(told(answer)).toBe('19.95 in | 19.80 in to 20.10 in');
  });

  it('a setting of the crank, any that serves', () => {
    const moves = [
      { holes: 12, circle: 18 },
      { holes: 14, circle: 21 },
    ];
    expect(told(answerOf(subject(moves), {}, 'mm'))).toBe(
      '12 spaces on the 18-hole circle or 14 on the 21 | any one of these',
    );
    expect(told(answerOf(subject([]), {}, 'mm'))).toMatch(/^not possible/);
  });

  it.each([
    [{ to: '0.01 furlong' }, 'mm'],
    [{ to: '0' }, 'rev/min'],
    [{ to: '9'.repeat(400) }, ''],
    [{ to: '1', accept: 'much' }, ''],
  ])('refuses the rule %j', (rule, unit) =>
    expect(() => answerOf(subject(1.5, unit), rule, 'mm')).toThrow(/cannot read the step/),
  );
});
