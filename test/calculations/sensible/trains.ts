import type { Sensible } from './sensible.js';

export const trains: Sensible = {
  'train.ratio': { wheels: [60, 56], pinions: [8, 7] },
  'train.beats': { wheels: [60, 56], pinions: [8, 7], escapeTeeth: 30 },
  'train.missing': { beatsPerHour: 3600, escapeTeeth: 30, wheels: '60,?', pinions: [8, 7] },
  'train.find': { ratio: 60, stages: 2 },
  'train.motionWork': {},
  'train.duration': { wheel: 96, pinion: 8, turns: 16 },
  'pendulum.length': { beatsPerHour: 7200 },
};
