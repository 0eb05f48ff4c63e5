import { expect, it } from 'vitest';
import { unevenCuts } from '../../src/figures/drawings/cutting/uneven.js';

/** Twelve cuts, 30° apart. */
const CUTS = Array.from({ length: 12 }, (_, at) => 30 * at);
const aside = (how: Parameters<typeof unevenCuts>[1]) =>
  unevenCuts(CUTS, how).map((angle, at) => Number((angle - (CUTS[at] ?? 0)).toFixed(6)));
const HOW = { unevenArcSeconds: 3600, ratio: 40, every: 3 } as const;

it('moves one cut of every so many', () => {
  expect(aside({ ...HOW, uneven: 'every-few' })).toEqual([0, 0, 1, 0, 0, 1, 0, 0, 1, 0, 0, 1]);
});

it('moves cuts to and fro once a turn of the crank: 30° is three turns and a third', () => {
  const third = Number(Math.sin((2 * Math.PI) / 3).toFixed(6));
  expect(aside({ ...HOW, uneven: 'ripple' }).slice(0, 4)).toEqual([0, third, -third, 0]);
});

it('moves none where each move is whole turns', () => {
  expect(aside({ ...HOW, uneven: 'ripple', ratio: 24 }).every((off) => Math.abs(off) < 1e-6)).toBe(true);
});
