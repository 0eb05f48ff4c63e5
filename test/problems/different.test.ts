import { expect, it } from 'vitest';
import { countProblems } from '../../src/problems/different.js';
import { problemSchema } from '../../src/problems/schema.js';
import { blank, inch, metric } from './kinds.js';

const count = (declared: object, kit = metric, enough = 30) =>
  countProblems({ name: 'one', declared: problemSchema.parse(declared) }, { kit, units: kit.units }, enough);
const possible = {
  calculation: 'dividing.simple',
  vary: { divisions: '42..60' },
  keep: 'possible',
  ask: 'x',
  find: 'settings',
};

it('every way to choose few values is counted, for the kit at hand', () => {
  const served = (ratio: number, circles: readonly number[]) =>
    Array.from({ length: 19 }, (_, at) => at + 42).filter((teeth) =>
      circles.some((circle) => (ratio * circle) % teeth === 0),
    ).length;
  for (const kit of [metric, inch]) {
    const { ratio, plates } = kit.heads[0] as { ratio: number; plates: readonly (readonly number[])[] };
    expect(count(possible, kit)).toEqual({ count: served(ratio, plates.flat()), more: false });
  }
});

it('a value that is listed twice counts once', () =>
  expect(count({ ...possible, vary: { divisions: [48, 48, 48, 50] } })).toEqual({ count: 2, more: false }));

it('of many ways no more are counted than are wanted', () => {
  const many = { ...blank, find: 'outsideDiameter' };
  expect(count(many)).toEqual({ count: 30, more: true });
  expect(count(many, metric, 100)).toEqual({ count: 100, more: true });
});

it('of many ways of which few are fair, those few are found', () => {
  const few = {
    ...blank,
    vary: { teeth: '50..99', module: '0.1..1.0 by 0.05 mm' },
    keep: 'teeth <= 53 and module = 1',
  };
  expect(count({ ...few, find: 'outsideDiameter' })).toEqual({ count: 4, more: false });
});
