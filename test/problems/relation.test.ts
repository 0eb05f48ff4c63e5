import { describe, expect, it } from 'vitest';
import { Fault } from '../../src/problems/fault.js';
import { relationInWords } from '../../src/problems/method.js';
import { Names } from '../../src/problems/names.js';
import { holds, sidesInWords } from '../../src/problems/relation.js';

const names = new Names(
  { teeth: 60, leaves: 8, blank: { depth: 2.36 }, possible: true, moves: [{ holes: 12 }], word: 'x' },
  { z: 60, d_a: 50.208 },
);

describe('relations', () => {
  it.each([
    ['teeth / leaves >= 5', true],
    ['teeth / leaves = 7.5', true],
    ['teeth != 60', false],
    ['blank.depth < 2.36', false],
    ['blank.depth <= 2.36', true],
    ['moves.0.holes > 11 and z < 61', true],
    ['possible', true],
    ['not possible', false],
    ['0.1 + 0.2 = 0.3', true],
    ['d_a - 0.208 = 50 and possible', true],
  ])('%s', (relation, truth) => expect(holds([relation], names)).toBe(truth));

  it.each([
    ['tooth > 5', /no value called tooth/],
    ['word', /neither true nor false/],
    ['word > 1', /word is not a number/],
    ['teeth > ', /./],
    ['import(teeth) > 1', /./],
  ])('%s is a fault', (relation, message) => {
    expect(() => holds([relation], names)).toThrow(Fault);
    expect(() => holds([relation], names)).toThrow(message);
  });

  it('are told with their numbers', () =>
    expect(sidesInWords('blank.depth*2 <= teeth and leaves != 7', names)).toBe('4.72 ≤ 60 and 8 ≠ 7'));
});

it('reads aloud as it would be written on a board', () => {
  expect(relationInWords('chord*pi <= sqrt(rootRadius^2 - 1)')).toBe('chord × π ≤ √(root radius² − 1)');
  expect(relationInWords('asind(lean) = atan(2) - cosd(60)')).toBe('arcsin(lean) = arctan(2) − cos(60)');
});
