import type { FigureValues } from './values.js';

const cross = <A, B>(as: readonly A[], bs: readonly B[]): [A, B][] =>
  as.flatMap((a) => bs.map((b): [A, B] => [a, b]));

const dovetails = (kind: string) =>
  cross(
    [40, 50, 55, 60, 75],
    [
      { width: 20, depth: 4, rollerDiameter: 4 },
      { width: 40, depth: 8, rollerDiameter: 6 },
      { width: 90, depth: 12, rollerDiameter: 10 },
      { width: 300, depth: 60, rollerDiameter: 50 },
    ],
  ).map(([angle, rest]) => ({ kind, angle, ...rest }));

export const trigonometry: FigureValues = {
  triangle: {
    typical: { a: 30, b: 40, A: 40 },
    sweep: [
      { a: 3, b: 4, c: 5 },
      { a: 30, b: 40, C: 70 },
      { a: 30, b: 40, C: 150 },
      { a: 50, B: 20, C: 100 },
      { a: 50, A: 25, B: 130 },
      { c: 200, A: 10, B: 12 },
      { b: 500, A: 85, C: 85 },
      { a: 6, b: 10, A: 30 },
      { b: 0.7, c: 1, B: 40 },
      { c: 52, a: 80, C: 35 },
      { a: 7, b: 10, A: 44 },
      { a: 60, b: 40, A: 40 },
      { a: 90, b: 40, A: 120 },
      { a: 1, b: 1, c: 1 },
      { a: 20, b: 100, c: 100 },
    ],
  },
  chord: {
    typical: { diameter: 50, divisions: 5 },
    sweep: [
      ...cross([2, 25, 50, 200, 1000], [2, 3, 4, 5, 6, 8, 12, 18]).map(([diameter, divisions]) => ({
        diameter,
        divisions,
      })),
      ...cross([20, 100], [20, 45, 100, 175, 185, 250, 300, 330]).map(([diameter, angle]) => ({
        diameter,
        angle,
      })),
    ],
  },
  'hole-circle': {
    typical: { holes: 5, diameter: 50, datum: 'edge' },
    sweep: cross(cross([2, 3, 4, 5, 6, 7, 8, 12, 24, 36], [0, 15, 90, 180, 200, -45, 300]), [
      { diameter: 50, datum: 'centre' },
      { diameter: 50, datum: 'edge' },
      { diameter: 200, datum: 'edge' },
      { diameter: 8 },
    ]).map(([[holes, startAngle], rest]) => ({ holes, startAngle, ...rest })),
  },
  taper: {
    typical: { largeDiameter: 6.5, smallDiameter: 3.5, length: 27 },
    sweep: [
      { largeDiameter: 17.78, smallDiameter: 14.53, length: 65 },
      { largeDiameter: 10, smallDiameter: 0, length: 5 },
      { largeDiameter: 10, smallDiameter: 0, length: 40 },
      { largeDiameter: 60, smallDiameter: 59, length: 100 },
      { largeDiameter: 60, smallDiameter: 20, length: 30 },
      { largeDiameter: 12, smallDiameter: 11, length: 100 },
      { largeDiameter: 1, smallDiameter: 0.5, length: 8 },
      { largeDiameter: 200, smallDiameter: 120, length: 600 },
      { largeDiameter: 44.4, smallDiameter: 31.3, length: 149 },
    ],
  },
  'tailstock-set-over': {
    typical: { largeDiameter: 25, smallDiameter: 20, taperLength: 60, workLength: 90 },
    sweep: [
      { largeDiameter: 63.5, smallDiameter: 50.8, taperLength: 152.4, workLength: 228.6 },
      { largeDiameter: 20, smallDiameter: 18, taperLength: 60, workLength: 60 },
      { largeDiameter: 20, smallDiameter: 10, taperLength: 30, workLength: 150 },
      { largeDiameter: 20, smallDiameter: 19, taperLength: 100, workLength: 200 },
      { largeDiameter: 10, smallDiameter: 8, taperLength: 20, workLength: 110 },
      { largeDiameter: 200, smallDiameter: 150, taperLength: 200, workLength: 500 },
    ],
  },
  'sine-bar': {
    typical: { angle: 27, centres: 127 },
    sweep: cross([3, 5, 8, 15, 23.683, 30, 45, 60, 70], [100, 127, 200, 254, 500]).map(
      ([angle, centres]) => ({
        angle,
        centres,
      }),
    ),
  },
  'dovetail-rollers': {
    typical: { kind: 'male', width: 40, angle: 55, rollerDiameter: 6, depth: 8 },
    sweep: [...dovetails('male'), ...dovetails('female')],
  },
  'polygon-flats': {
    typical: { diameter: 11.547, sides: 6 },
    sweep: cross([3, 4, 5, 6, 7, 8, 10, 12], [2, 10, 22, 60, 400]).map(([sides, diameter]) => ({
      sides,
      diameter,
    })),
  },
};
