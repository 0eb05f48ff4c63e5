import type { FigureValues } from './values.js';

const cross = <A, B>(as: readonly A[], bs: readonly B[]): [A, B][] =>
  as.flatMap((a) => bs.map((b): [A, B] => [a, b]));

/** The class wheel, and others in its proportions. */
const classWheel = {
  arms: 5,
  rimInsideDiameter: 40.8,
  hubDiameter: 12,
  armWidthAtRim: 3,
  armWidthAtHub: 4.5,
  filletRadius: 0.8,
};

const wheels = cross(
  [
    { arms: 3, hub: 0.2, rimWidth: 0.08, hubWidth: 0.1 },
    { arms: 3, hub: 0.6, rimWidth: 0.3, hubWidth: 0.3 },
    { arms: 4, hub: 0.25, rimWidth: 0.06, hubWidth: 0.09 },
    { arms: 5, hub: 0.3, rimWidth: 0.07, hubWidth: 0.11 },
    { arms: 6, hub: 0.35, rimWidth: 0.05, hubWidth: 0.08 },
    { arms: 8, hub: 0.45, rimWidth: 0.05, hubWidth: 0.08 },
    { arms: 12, hub: 0.55, rimWidth: 0.04, hubWidth: 0.06 },
    { arms: 5, hub: 0.3, rimWidth: 0.12, hubWidth: 0.06 },
  ],
  [12, 40.8, 75, 200],
).map(([{ arms, hub, rimWidth, hubWidth }, rim]) => ({
  arms,
  rimInsideDiameter: rim,
  hubDiameter: hub * rim,
  armWidthAtRim: Math.max(0.2, rimWidth * rim),
  armWidthAtHub: Math.max(0.2, hubWidth * rim),
  filletRadius: arms % 2 === 0 ? 0.012 * rim : arms === 3 ? 0 : 0.02 * rim,
}));

const arm = { armWidthAtRim: 3, armWidthAtHub: 4.5, rimRadius: 20.4, hubRadius: 6 };

export const finishing: FigureValues = {
  'crossing-window': { typical: classWheel, sweep: wheels },
  'crossing-layout': {
    typical: { ...classWheel, outsideDiameter: 50.208, hole: 3 },
    sweep: wheels.map((wheel) => ({ ...wheel, outsideDiameter: 1.2 * wheel.rimInsideDiameter })),
  },
  'crossing-pegs': {
    typical: { ...arm, hubPegRadius: 8, rimPegRadius: 30 },
    sweep: [
      { ...arm, hubPegRadius: 8, rimPegRadius: 18 },
      { ...arm, armWidthAtHub: 3, hubPegRadius: 9, rimPegRadius: 19 },
      { ...arm, armWidthAtRim: 4.5, armWidthAtHub: 3, hubPegRadius: 9, rimPegRadius: 26 },
      { ...arm, armWidthAtHub: 9, hubPegRadius: 10, rimPegRadius: 24 },
      { ...arm, hubPegRadius: 3, rimPegRadius: 40 },
      {
        armWidthAtRim: 6,
        armWidthAtHub: 10,
        rimRadius: 90,
        hubRadius: 20,
        hubPegRadius: 30,
        rimPegRadius: 110,
      },
      { armWidthAtRim: 1, armWidthAtHub: 1.4, rimRadius: 8, hubRadius: 3, hubPegRadius: 4, rimPegRadius: 12 },
      { armWidthAtRim: 2, armWidthAtHub: 3, rimRadius: 60, hubRadius: 8, hubPegRadius: 10, rimPegRadius: 58 },
    ],
  },
  'flatness-bands': {
    typical: { bands: 1.5 },
    sweep: [0.25, 0.5, 1, 2, 3, 4].flatMap((bands) => [{ bands }, { bands, wavelength: 0.000_546 }]),
  },
  'wheel-wobble': { typical: {}, sweep: [{}, { lean: 3 }, { lean: 7 }, { lean: 12 }] },
  'shrunk-pattern': {
    typical: { diameter: 50.208 },
    sweep: [1, 6.2, 13, 50.208, 88, 366, 2000].flatMap((diameter) =>
      [90, 95, 98].map((percent) => ({ diameter, percent })),
    ),
  },
};
