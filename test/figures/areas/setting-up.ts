import type { FigureValues } from './values.js';

const cross = <A, B>(as: readonly A[], bs: readonly B[]): [A, B][] =>
  as.flatMap((a) => bs.map((b): [A, B] => [a, b]));

export const settingUp: FigureValues = {
  'cutter-height': {
    typical: { centreHeight: 95.25, cutterThickness: 0.53, feeler: 0.04 },
    sweep: cross(cross([20, 60, 125, 400], [0.15, 0.3, 0.53, 1, 2.5, 4.7, 6, 12, 40]), [0, 0.03, 0.25]).map(
      ([[centreHeight, cutterThickness], feeler]) => ({ centreHeight, cutterThickness, feeler }),
    ),
  },
  'centre-from-touch': {
    typical: { blankDiameter: 50.208, cutterThickness: 2.5, feeler: 0.05 },
    sweep: cross(cross([2, 6.4, 12, 25, 50.208, 90, 300], [0.02, 0.1, 0.3, 0.5]), [0, 0.05]).map(
      ([[blankDiameter, share], feeler]) => ({
        blankDiameter,
        cutterThickness: share * blankDiameter + 0.05 * (share < 0.5 ? 1 : 0),
        feeler,
      }),
    ),
  },
  'half-turn-test': {
    typical: { diameter: 48, halfTurnStep: 0.16 },
    sweep: cross([2, 6.4, 12, 48, 200], [0.02, 0.06, 0.1, 0.16, 0.35, 0.4]).map(
      ([diameter, halfTurnStep]) => ({
        diameter,
        halfTurnStep,
      }),
    ),
  },
  'leaning-teeth': {
    typical: { teeth: 60, leaves: 8, module: 0.8, offset: 0.3 },
    sweep: cross(cross([20, 60, 200], [6, 10, 16]), [
      { module: 0.3, offset: 0.05 },
      { module: 0.8, offset: 0.005 },
      { module: 0.8, offset: 0.48 },
      { module: 1.5, offset: 0.5 },
    ]).map(([[teeth, leaves], rest]) => ({ teeth, leaves, ...rest })),
  },
  'escape-offset': {
    typical: { diameter: 30, faceAngle: 10 },
    sweep: cross(cross([8, 15, 28.575, 30, 60, 200], [3, 6, 10, 15, 25]), [12, 16, 30, 60]).map(
      ([[diameter, faceAngle], teeth]) => ({ diameter, faceAngle, teeth }),
    ),
  },
  vernier: {
    typical: { reading: 27.34, marked: true },
    sweep: [
      ...cross([0, 0.02, 0.1, 0.98, 6.3, 9.9, 10, 27.34, 49.96, 50, 99.98, 117.5, 150], [false, true]).map(
        ([reading, marked]) => ({ reading, marked, units: 'mm' }),
      ),
      ...cross([0, 1, 24, 25, 99, 100, 999, 1000, 1077, 1318, 2024, 4999], [false, true]).map(
        ([thous, marked]) => ({ reading: 0.0254 * thous, marked, units: 'inch' }),
      ),
    ],
  },
  micrometer: {
    typical: { reading: 5.78, marked: true },
    sweep: [
      ...cross(
        [
          0, 0.01, 0.25, 0.49, 0.5, 4.99, 5, 5.02, 5.78, 9.97, 10.03, 10.1, 11.99, 12.5, 17.32, 20.01, 24.5,
          25,
        ],
        [false, true],
      ).map(([reading, marked]) => ({ reading, marked, units: 'mm' })),
      ...cross([0, 1, 12, 25, 99, 100, 101, 228, 303, 450, 500, 733, 999, 1000], [false, true]).map(
        ([thous, marked]) => ({ reading: 0.0254 * thous, marked, units: 'inch' }),
      ),
    ],
  },
};
