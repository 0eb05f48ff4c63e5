import type { FigureValues } from './values.js';

const MODULES = [0.05, 0.3, 0.8, 1, 1.5, 2.5, 5];
const each = <A, B, C>(as: readonly A[], bs: readonly B[], make: (a: A, b: B) => C): C[] =>
  as.flatMap((a) => bs.map((b) => make(a, b)));

export const involute: FigureValues = {
  'involute-tooth': {
    typical: { teeth: 30, module: 2 },
    sweep: each([6, 8, 10, 11, 17, 41, 42, 60, 120], MODULES, (teeth, module) => ({ teeth, module })).flatMap(
      (given) => [given, { ...given, pressureAngle: 14.5 }, { ...given, pressureAngle: 25 }],
    ),
  },
  'involute-string': {
    typical: { baseDiameter: 30 },
    sweep: each([0.5, 2, 5.6, 18.8, 56.4, 120, 500], [30, 45, 60, 75, 90], (baseDiameter, unwound) => ({
      baseDiameter,
      unwound,
    })),
  },
  'involute-undercut': {
    typical: { teeth: 8, module: 2 },
    sweep: [
      ...each([6, 8, 10, 12, 16], MODULES, (teeth, module) => ({ teeth, module })),
      ...each([6, 12, 25], MODULES, (teeth, module) => ({
        teeth,
        module,
        largeTeeth: 40,
        pressureAngle: 14.5,
      })),
      ...each([6, 10], MODULES, (teeth, module) => ({ teeth, module, largeTeeth: 120, pressureAngle: 25 })),
    ],
  },
  'involute-span': {
    typical: { teeth: 40, module: 1 },
    sweep: [
      ...each([12, 13, 17, 18, 30, 60, 96, 120], MODULES, (teeth, module) => ({ teeth, module })),
      ...each([14.5, 25], MODULES, (pressureAngle, module) => ({ teeth: 32, module, pressureAngle })),
      { teeth: 40, module: 1, spanTeeth: 4 },
      { teeth: 40, module: 1, spanTeeth: 6 },
    ],
  },
  'involute-over-pins': {
    typical: { teeth: 12, module: 2 },
    sweep: [
      ...each([6, 7, 8, 12, 17, 22, 23], MODULES, (teeth, module) => ({ teeth, module })),
      ...each([14.5, 25], MODULES, (pressureAngle, module) => ({ teeth: 15, module, pressureAngle })),
      { teeth: 12, module: 2, pinDiameter: 4 },
    ],
  },
  'chordal-tooth': {
    typical: { teeth: 12, module: 2 },
    sweep: [
      ...each([8, 12, 17, 30, 60, 120], MODULES, (teeth, module) => ({ teeth, module })),
      ...each([14.5, 25], MODULES, (pressureAngle, module) => ({ teeth: 12, module, pressureAngle })),
    ],
  },
};
