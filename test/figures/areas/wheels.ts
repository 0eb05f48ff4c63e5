import type { FigureValues } from './values.js';

const MODULES = [0.05, 0.3, 0.8, 1, 2.5, 5];
const each = <A, B, C>(as: readonly A[], bs: readonly B[], make: (a: A, b: B) => C): C[] =>
  as.flatMap((a) => bs.map((b) => make(a, b)));

/** Teeth and leaves: the class pair, the ends of the ranges, and odd ones between. */
const PAIRS = [
  [60, 8],
  [20, 20],
  [160, 6],
  [72, 12],
  [96, 16],
  [31, 7],
  [160, 24],
] as const;

export const wheels: FigureValues = {
  'wheel-outline': {
    typical: { teeth: 60, leaves: 8, module: 0.8 },
    sweep: [
      ...each([6, 12, 31, 60, 77, 120, 160], MODULES, (teeth, module) => ({ teeth, leaves: 6, module })),
      { teeth: 60, leaves: 60, module: 0.8, addendum: 'theoretical', root: 'round' },
      { teeth: 30, leaves: 5, module: 2, addendum: 'theoretical' },
    ],
  },
  'tooth-sizes': {
    typical: { modules: [0.5, 0.8, 1, 1.5] },
    sweep: [[0.05], [0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 1, 1.5], [5, 4, 3], [0.8, 0.794], [2, 1.5875]].map(
      (modules) => ({ modules }),
    ),
  },
  'tooth-curve': {
    typical: { teeth: 60, leaves: 8, module: 0.8 },
    sweep: each(PAIRS, MODULES, ([teeth, leaves], module) => ({
      teeth,
      leaves: Math.min(20, leaves),
      module,
    })),
  },
  'pinion-outline': {
    typical: { leaves: 8, module: 0.8 },
    sweep: each([6, 7, 8, 9, 10, 12, 16, 21, 30], MODULES, (leaves, module) => ({ leaves, module })).flatMap(
      (given) => [given, { ...given, root: 'round' }],
    ),
  },
  'mesh-positions': {
    typical: { teeth: 60, leaves: 8, module: 0.8 },
    sweep: [
      ...each(PAIRS, MODULES, ([teeth, leaves], module) => ({ teeth, leaves, module })),
      { teeth: 60, leaves: 8, module: 0.8, centreDistance: 27.4 },
      { teeth: 60, leaves: 8, module: 0.8, centreDistance: 27.05, addendum: 'theoretical' },
    ],
  },
  'mesh-depth': {
    typical: { teeth: 60, leaves: 8, module: 0.8 },
    sweep: [
      ...each(PAIRS, MODULES, ([teeth, leaves], module) => ({ teeth, leaves, module })),
      { teeth: 60, leaves: 8, module: 0.8, modules: 0.6 },
      { teeth: 60, leaves: 8, module: 0.8, modules: 0.1 },
      { teeth: 60, leaves: 8, module: 0.8, show: 'shallow' },
      { teeth: 160, leaves: 24, module: 5, show: ['deep', 'shallow'] },
    ],
  },
};
