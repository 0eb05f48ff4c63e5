import type { FigureValues } from './values.js';

const each = <A, B>(as: readonly A[], bs: readonly B[]): (readonly [A, B])[] =>
  as.flatMap((a) => bs.map((b) => [a, b] as const));

const plates = [
  [24, [2, 3, 4, 6, 8, 12, 24]],
  [60, [2, 5, 12, 15, 20, 30, 60]],
  [96, [2, 12, 32, 48, 96]],
  [144, [3, 16, 36, 72, 144]],
  [360, [2, 5, 8, 60, 72, 120, 180, 360]],
  [400, [2, 100, 200, 400]],
  [2, [2]],
] as const;

const moves = [
  { circle1: 15, holes1: 10, circle2: 17, holes2: 2, sense: 'forward' },
  { circle1: 23, holes1: 21, circle2: 33, holes2: 11, sense: 'back' },
  { circle1: 29, holes1: 23, circle2: 33, holes2: 11, sense: 'back' },
  { circle1: 39, holes1: 7, circle2: 41, holes2: 29, sense: 'forward', turns: 1 },
  { circle1: 39, holes1: 6, circle2: 49, holes2: 14, sense: 'forward' },
  { circle1: 49, holes1: 1, circle2: 47, holes2: 1, sense: 'back' },
  { circle1: 49, holes1: 48, circle2: 47, holes2: 46, sense: 'back' },
  { circle1: 62, holes1: 31, circle2: 66, holes2: 1, sense: 'forward' },
  { circle1: 3, holes1: 1, circle2: 4, holes2: 3, sense: 'forward' },
  { circle1: 15, holes1: 1, circle2: 66, holes2: 65, sense: 'forward', turns: 12 },
  { circle1: 100, holes1: 99, circle2: 120, holes2: 2, sense: 'back' },
  { circle1: 199, holes1: 100, circle2: 200, holes2: 101, sense: 'back' },
];

const trains = [
  { spindleGears: '56', plateGears: '24', idlers: 2 },
  { spindleGears: '24', plateGears: '24', idlers: 1 },
  { spindleGears: '24', plateGears: '100', idlers: 2 },
  { spindleGears: '100', plateGears: '24', idlers: 1 },
  { spindleGears: '10', plateGears: '200', idlers: 2 },
  { spindleGears: '100,64', plateGears: '28,56', idlers: 1 },
  { spindleGears: '72,64', plateGears: '24,48', idlers: 1 },
  { spindleGears: '72,40', plateGears: '56,24', idlers: 0 },
  { spindleGears: '24,24', plateGears: '100,86', idlers: 1 },
  { spindleGears: '100,86', plateGears: '24,24', idlers: 0 },
  { spindleGears: '24,100', plateGears: '100,24', idlers: 1 },
];

/** Divisions and diameter. */
const wheels = [
  [12, 9.6],
  [12, 900],
  [60, 48],
  [200, 100],
  [30, 18],
  [64, 51.2],
  [120, 60],
  [300, 300],
  [1000, 1000],
] as const;

/** Closing error, per cent of the pitch. */
const percents = [-90, -40, -9, -5, -1, 0, 1, 5, 9, 20, 40, 49, 60, 100];

export const dividing: FigureValues = {
  'direct-plate': {
    typical: { plate: 60, divisions: 12 },
    sweep: plates.flatMap(([plate, counts]) => counts.map((divisions) => ({ plate, divisions }))),
  },
  'compound-moves': { typical: moves[1] ?? {}, sweep: moves },
  'differential-gears': { typical: trains[0] ?? {}, sweep: trains },
  'closing-gap': {
    typical: { divisions: 60, stepErrorArcSeconds: -30, diameter: 48 },
    sweep: [...each(wheels, percents), ...each(wheels.slice(2, 4), [-200, -300, -500])].map(
      ([[divisions, diameter], percent]) => ({
        divisions,
        diameter,
        stepErrorArcSeconds: (percent * 12_960) / divisions ** 2,
      }),
    ),
  },
  'hole-error': {
    typical: { holeError: 0.05, plateRadius: 50, wheelRadius: 24 },
    sweep: each(
      [
        [0.05, 50, 24],
        [0.01, 25, 90],
        [0.2, 90, 2],
        [0.0001, 1000, 2000],
        [10, 20, 20],
        [1, 1, 0.5],
      ] as const,
      [1, 40, 90, 1000],
    ).map(([[holeError, plateRadius, wheelRadius], ratio]) => ({
      holeError,
      plateRadius,
      wheelRadius,
      ratio,
    })),
  },
};
