import { feedOfWork, speedOfRim, strikesPerSecond } from '../../geometry/setting-up/speed.js';
import { calculation } from '../calculation.js';
import { length, number, whole } from '../quantity.js';

const diameter = length('D', 'diameter', 0.1, 2000);
const revPerMin = number('S', 'spindle speed', 'rev/min', 0.1, 500_000);
const cutterTeeth = whole('T', 'teeth of the cutter', 1, 200);

export const surfaceSpeed = calculation({
  name: 'cut.surfaceSpeed',
  title: 'Cutting speed from spindle speed',
  given: { revPerMin, diameter },
  found: { cuttingSpeed: { symbol: 'V', unit: 'm/min', name: 'cutting speed' } },
  work: (g) => ({ cuttingSpeed: speedOfRim(g.revPerMin, g.diameter) }),
  proofs: [{ of: 'cuttingSpeed', formula: 'surface-speed' }],
  working: ['V = pi*D*S/1000'],
  slips: {
    noPi: { of: 'cuttingSpeed', formula: 'D*S/1000', says: 'You left out π.' },
    radius: {
      of: 'cuttingSpeed',
      formula: 'pi*D*S/2000',
      says: 'You used the radius; the rim is π times the diameter.',
    },
    thousand: {
      of: 'cuttingSpeed',
      formula: 'pi*D*S',
      says: 'That is in millimetres. Cutting speed is in metres a minute.',
    },
  },
});

export const feed = calculation({
  name: 'cut.feed',
  title: 'Feed from the feed per tooth',
  given: { revPerMin, cutterTeeth, feedPerTooth: length('f', 'feed per tooth', 0.0001, 20) },
  found: { feedPerMin: { symbol: 'F', unit: 'mm/min', name: 'feed' } },
  work: (g) => ({ feedPerMin: feedOfWork(g.revPerMin, g.cutterTeeth, g.feedPerTooth) }),
  proofs: [{ of: 'feedPerMin', formula: 'table-feed' }],
  working: ['F = S*T*f'],
  slips: (g) => ({
    ...(g.cutterTeeth === 1
      ? {}
      : {
          oneTooth: {
            of: 'feedPerMin',
            formula: 'S*f',
            says: 'That is for a cutter of one tooth. Each tooth takes its own bite.',
          },
          shared: {
            of: 'feedPerMin',
            formula: 'S*f/T',
            says: 'You shared the feed between the teeth. The feed is per tooth, so more teeth go faster.',
          },
        }),
    noTurns: {
      of: 'feedPerMin',
      formula: 'T*f',
      says: 'That is the feed for one turn; a minute has many.',
    },
    seconds: {
      of: 'feedPerMin',
      formula: 'S*T*f/60',
      says: 'That is for one second. Spindle speed is in turns a minute, and so is the feed.',
    },
  }),
});

export const toothFrequency = calculation({
  name: 'cut.toothFrequency',
  title: 'Strikes of the cutter’s teeth, for hunting chatter',
  given: { revPerMin, cutterTeeth },
  found: { hertz: { symbol: 'f', unit: 'Hz', name: 'strikes a second' } },
  work: (g) => ({ hertz: strikesPerSecond(g.revPerMin, g.cutterTeeth) }),
  proofs: [{ of: 'hertz', formula: 'tooth-frequency' }],
  working: ['f = S*T/60'],
  slips: (g) => ({
    minutes: { of: 'hertz', formula: 'S*T', says: 'That is for a minute. A hertz is one a second.' },
    ...(g.cutterTeeth === 1
      ? {}
      : {
          turns: {
            of: 'hertz',
            formula: 'S/60',
            says: 'That is how often the cutter turns. Each of its teeth strikes once a turn.',
          },
          shared: {
            of: 'hertz',
            formula: 'S/(60*T)',
            says: 'You divided by the teeth. More teeth strike more often.',
          },
        }),
  }),
});
