import type { FigureValues } from './values.js';

const each = <A, B, C>(as: readonly A[], bs: readonly B[], make: (a: A, b: B) => C): C[] =>
  as.flatMap((a) => bs.map((b) => make(a, b)));

/** The class wheel. */
const crossing = {
  arms: 5,
  rimInsideDiameter: 40.8,
  hubDiameter: 14,
  armWidthAtRim: 2.4,
  armWidthAtHub: 3.4,
  filletRadius: 1,
  outsideDiameter: 50.208,
  rootDiameter: 45.488,
  hole: 6,
};

/** Others by the rule: of few arms and many, small and as large as the narrowest page has room for. */
const crossings = each(
  [
    { arms: 3, hub: 0.2, width: 0.06, fillet: 0 },
    { arms: 4, hub: 0.3, width: 0.05, fillet: 0.03 },
    { arms: 5, hub: 0.33, width: 0.06, fillet: 0.02 },
    { arms: 6, hub: 0.35, width: 0.05, fillet: 0.02 },
    { arms: 8, hub: 0.45, width: 0.05, fillet: 0.01 },
    { arms: 12, hub: 0.55, width: 0.04, fillet: 0.01 },
  ],
  [8, 20, 30],
  ({ arms, hub, width, fillet }, rim) => ({
    arms,
    rimInsideDiameter: rim,
    hubDiameter: hub * rim,
    armWidthAtRim: width * rim,
    armWidthAtHub: 1.4 * width * rim,
    filletRadius: fillet * rim,
    outsideDiameter: 1.25 * rim,
    ...(arms % 2 === 0 ? { rootDiameter: 1.1 * rim } : { hole: 0.4 * hub * rim }),
  }),
);

const check = (teeth: number, leaves: number, module: number) => ({
  teeth,
  leaves,
  module,
  outsideDiameter: module * (teeth + 2.76),
  rootDiameter: module * (teeth - 3.14),
});

/** Circles a few mm apart, the innermost so large that its holes stand clear. */
const plate = (circles: readonly number[], innermost: number, apart: number, holeDiameter: number) => ({
  circles,
  diameters: circles.map((_, at) => innermost + 2 * apart * at),
  holeDiameter,
  plateDiameter: innermost + 2 * apart * circles.length + 2,
});

export const templates: FigureValues = {
  'crossing-template': {
    typical: crossing,
    sweep: [...crossings, ...crossings.map((one) => ({ ...one, sizes: 'no' })), { ...crossing, sizes: 'no' }],
  },
  'wheel-check': {
    typical: { ...check(60, 8, 0.8), hole: 6 },
    sweep: [
      ...[6, 12, 31, 60, 77, 96].map((teeth) => check(teeth, 6, 0.4)),
      ...[30, 60, 120, 400].map((teeth) => check(teeth, 8, 0.1)),
      { ...check(60, 8, 0.3), root: 'round' },
      check(60, 8, 0.8),
    ],
  },
  'plate-pattern': {
    typical: { ...plate([37, 39, 41, 43, 47, 49], 60, 7, 3), bore: 20 },
    sweep: [
      { ...plate([15, 16, 17, 18, 19, 20], 24, 5, 2), bore: 10, sizes: 'no' },
      { ...plate([15, 16, 17, 18, 19, 20], 24, 4, 1.5), bore: 10, sizes: 'no' },
      { ...plate([48, 60, 72], 70, 4, 1.5), bore: 25.4, sizes: 'no' },
      plate([12, 24, 36], 24, 4, 1.5),
      plate([2, 3, 4, 400], 10, 4, 0.2),
      plate([60], 30, 4, 1),
    ],
  },
  'cutter-projection': {
    typical: { teeth: 60, leaves: 8, module: 0.8 },
    sweep: each(
      [
        [0.05, 20],
        [0.3, 20],
        [0.6, 10],
        [2, 5],
        [1.2, 2],
        [0.05, 100],
      ] as const,
      [
        { teeth: 12, leaves: 12 },
        { teeth: 60, leaves: 8 },
        { teeth: 120, leaves: 16, depthForm: 3.38 },
        { teeth: 60, leaves: 8, depthForm: '2.45', tipRadius: 0 },
      ],
      ([module, scale], one) => ({ ...one, module, scale }),
    ),
  },
  'degree-disc': {
    typical: { diameter: 150 },
    sweep: [60, 72, 80, 100, 115].flatMap((diameter) => [{ diameter }, { diameter, hole: diameter - 46 }]),
  },
  'degree-vernier': {
    typical: { diameter: 150 },
    sweep: [60, 100, 150, 152.4, 300, 600].map((diameter) => ({ diameter })),
  },
  'printer-test': {
    typical: {},
    sweep: [{ side: 80 }, { side: 85 }, { side: 90 }, { side: 95 }],
  },
};
