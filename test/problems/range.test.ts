import { describe, expect, it } from 'vitest';
import { parseRange, softenLists } from '../../src/problems/range.js';

describe('what a value may be', () => {
  it.each([
    ['48..96 by 24', [48, 72, 96], false],
    ['3..6', [3, 4, 5, 6], false],
    ['0.3..0.5 by 0.05 mm', [0.3, 0.35, 0.4, 0.45, 0.5], true],
    ['[1/2, 3/4] in', [12.7, 19.05], true],
    ['[leaves, 2.76]', ['leaves', 2.76], false],
    ['2 mm', [2], true],
    ['7', [7], false],
  ])('%s', (text, values, lengths) => {
    const range = parseRange(text);
    expect(range?.lengths).toBe(lengths);
    expect(range?.mm).toEqual(values.map((one) => (typeof one === 'number' ? expect.closeTo(one, 12) : one)));
    expect(range?.inch).toEqual(range?.mm);
  });

  it('has one list for millimetres and one for inches', () => {
    const range = parseRange('16..20 by 2 mm or [5/8, 1] in');
    expect(range?.mm).toEqual([16, 18, 20]);
    expect(range?.inch).toEqual([15.875, 25.4]);
  });

  it.each([
    '',
    '5..3',
    '1..2 by 0',
    '1..1000000',
    '1..x',
    'a or b or c',
    '[ , ]',
    '1 mm or',
    '9'.repeat(390),
  ])('refuses %j', (text) => expect(parseRange(text)).toBeUndefined());
  it.each([[[]], [null], [{}], [true], [['', 1]]])('refuses %j', (raw) =>
    expect(parseRange(raw)).toBeUndefined(),
  );
});

it('lists with a unit read as text in YAML, each character in its place', () => {
  const yaml = 'vary: { module: [0.5, 0.6] mm, leaves: [6, 7] }';
  const soft = softenLists(yaml);
  expect(soft).toHaveLength(yaml.length);
  expect(soft).toContain('leaves: [6, 7]');
  expect(parseRange(soft.slice(16, 29))?.mm).toEqual([0.5, 0.6]);
});
