import type { FigureValues } from './values.js';

/** Trains that classes plan, and odd ones: one pair, four, small work, wheels hardly larger than their pinions. */
const trainSweep: readonly Record<string, unknown>[] = [
  { wheels: [60, 56], pinions: [8, 7] },
  { wheels: '60, 56', pinions: '8, 7', escapeTeeth: 30, escapeDiameter: 32 },
  { wheels: 60, pinions: 8, module: 0.8 },
  { wheels: [80, 72], pinions: [12, 8], module: 1, escapeTeeth: 30, escapeDiameter: 40 },
  { wheels: [96, 64, 60], pinions: [8, 8, 8], module: 0.6, escapeTeeth: 30, escapeDiameter: 32 },
  { wheels: [80, 75, 70], pinions: [10, 10, 7], module: 0.15 },
  { wheels: [120, 96, 84, 78], pinions: [12, 8, 7, 6], module: 0.3 },
  { wheels: [24, 24, 24, 24], pinions: [20, 18, 16, 6], module: 0.5, escapeTeeth: 15, escapeDiameter: 6 },
  { wheels: [26, 60, 42, 45], pinions: [60, 8, 7, 7], module: 0.4, escapeTeeth: 39, escapeDiameter: 20 },
  { wheels: [30], pinions: [30], module: 5 },
  { wheels: [12, 40], pinions: [40, 12], module: 0.05 },
];

const motionWorks = [
  [12, 36, 10, 40],
  [14, 28, 6, 36],
  [40, 40, 6, 72],
  [8, 32, 10, 30],
  [24, 48, 10, 60],
  [16, 64, 20, 60],
  [30, 36, 6, 60],
].map(([cannonPinion, minuteWheel, minutePinion, hourWheel]) => ({
  cannonPinion,
  minuteWheel,
  minutePinion,
  hourWheel,
}));

export const trains: FigureValues = {
  'train-plan': { typical: { wheels: [60, 56], pinions: [8, 7], module: 0.8 }, sweep: trainSweep },
  'train-section': {
    typical: { wheels: [60, 56], pinions: [8, 7], module: 0.8, escapeTeeth: 30, escapeDiameter: 32 },
    sweep: trainSweep,
  },
  'train-path': {
    typical: {
      wheels: [96, 64, 60],
      pinions: [8, 8, 8],
      escapeTeeth: 30,
      ...motionWorks[5],
    },
    sweep: [
      ...[true, false].flatMap((counted) =>
        motionWorks.map((dial) => ({
          ...dial,
          counted,
          wheels: [108, 60, 56],
          pinions: [9, 8, 7],
          escapeTeeth: 30,
        })),
      ),
      { wheels: '60, 56', pinions: '8, 7', escapeTeeth: 30, hourArbor: 1 },
      { wheels: [60, 56], pinions: [8, 7], escapeTeeth: 30, hourArbor: 1, ...motionWorks[3] },
      { wheels: 60, pinions: 8, escapeTeeth: 15, hourArbor: 1 },
      { wheels: [84, 78, 64, 60, 70], pinions: [12, 8, 8, 8, 7], escapeTeeth: 15, hourArbor: 3 },
      { wheels: [144, 30, 24], pinions: [6, 12, 12], escapeTeeth: 60, ...motionWorks[6] },
      { wheels: [72, 96, 96], pinions: [6, 6, 6], escapeTeeth: 42, ...motionWorks[2], counted: false },
    ],
  },
  'motion-work': {
    typical: { cannonPinion: 15, minuteWheel: 45, minutePinion: 12, hourWheel: 48, module: 0.8 },
    sweep: [0.2, 0.4, 0.8, 1.5].flatMap((module) => motionWorks.map((set) => ({ ...set, module }))),
  },
  pendulum: {
    typical: { length: 993.62, secondsPerBeat: 1 },
    sweep: [5, 34.5, 134.71, 248.41, 558.9, 993.62, 3974.5, 20_000].flatMap((length) => [
      { length },
      { length, secondsPerBeat: 1.0625 },
    ]),
  },
};
