import type { Fraction } from '../../geometry/fractions.js';
import { derived } from '../../handbook/record.js';
import { everyTrain, putBack, ratioOfTurns } from '../../handbook/screws/gear-trial.js';
import { calculation } from '../calculation.js';
import { counts, exact, optional, orElse, whole } from '../quantity.js';
import { remembered } from '../remembered.js';
import { decimals } from '../working.js';
import { errorInWords, FARTHEST, inWords, MOST, settingsFor } from './gear-settings.js';
import { asWritten, cutOf, exactLength, type LatheGiven, leadOf, refuseUntidy, toldOf } from './lathe.js';

const ratioByTurns = (g: LatheGiven) => ratioOfTurns(toldOf(cutOf(g)), toldOf(leadOf(g)));

/** Every choice of wheels tried; once for all that is proven by it. */
const trial = remembered((g: LatheGiven) => everyTrain(ratioByTurns(g), g.wheels, g.tolerancePpm, MOST));

const byTrial = derived('every two and every four wheels shared out in every way, and each train put back');

const inch = (name: string, tpi: Fraction, pitch: number): string =>
  `${name}: ${asWritten(tpi)} threads to the inch, 25.4 ÷ ${asWritten(tpi)} = ${decimals(pitch, 5)} mm.`;

export const changeWheels = calculation({
  name: 'screwcut.changeWheels',
  title: 'Change wheels for a pitch on a lead screw',
  given: {
    pitch: optional(exactLength('pitch to cut', 100)),
    tpi: optional(exact('threads to cut', 'threads per inch', 400)),
    leadPitch: optional(exactLength('pitch of the lead screw', 100)),
    leadTpi: optional(exact('threads of the lead screw', 'threads per inch', 400)),
    wheels: counts('change wheels there are', 10, 200, 60),
    tolerancePpm: orElse(whole('', 'largest error, parts per million', 0, FARTHEST), 0),
  },
  found: {
    pitch: { symbol: 'P_t', unit: 'mm', name: 'pitch to cut' },
    leadPitch: { symbol: 'L', unit: 'mm', name: 'pitch of the lead screw' },
    ratio: { symbol: 'i', unit: '', name: 'drivers over driven' },
    numerator: { unit: '', name: 'drivers over driven, in lowest terms: above the line' },
    denominator: { unit: '', name: 'drivers over driven, in lowest terms: below the line' },
    possible: { unit: '', name: 'possible' },
    count: { unit: '', name: 'settings within the tolerance' },
    settings: { unit: '', name: 'settings, smallest error first, 200 at most' },
    nearest: { unit: '', name: 'setting with the smallest error' },
    reason: { unit: '', name: 'why it is not possible' },
  },
  refuse: refuseUntidy,
  work: settingsFor,
  proofs: [
    {
      of: 'pitch',
      source: derived('one inch over the threads in it'),
      within: 1e-9,
      value: (g) => inMillimetres(g.pitch, g.tpi),
    },
    {
      of: 'leadPitch',
      source: derived('one inch over the threads in it'),
      within: 1e-9,
      value: (g) => inMillimetres(g.leadPitch, g.leadTpi),
    },
    { of: 'ratio', formula: 'gear-ratio' },
    {
      of: 'numerator',
      source: derived('turns told in 127ths of an inch'),
      value: (g) => ratioByTurns(g).top,
    },
    {
      of: 'denominator',
      source: derived('turns told in 127ths of an inch'),
      value: (g) => ratioByTurns(g).bottom,
    },
    { of: 'possible', source: byTrial, value: (g) => trial(g).count > 0 },
    { of: 'count', source: byTrial, value: (g) => trial(g).count },
    {
      of: 'settings',
      source: byTrial,
      value: (g) => trial(g).best,
      measure: {
        name: 'error in ppm, wheels and teeth of each train, put back',
        of: (settings, g) => settings.map(({ drivers, driven }) => putBack(ratioByTurns(g), drivers, driven)),
      },
    },
    {
      of: 'nearest',
      source: byTrial,
      within: 1e-6,
      value: (g) => (trial(g).least <= FARTHEST ? trial(g).least : null),
      measure: {
        name: 'error, ppm',
        of: (near, g) => (near === null ? null : putBack(ratioByTurns(g), near.drivers, near.driven)[0]),
      },
    },
  ],
  working: (g, found) => {
    const best = found.settings[0];
    return [
      ...(g.tpi ? [{ say: inch('Thread', g.tpi, found.pitch) }] : []),
      ...(g.leadTpi ? [{ say: inch('Lead screw', g.leadTpi, found.leadPitch) }] : []),
      'i = P_t/L',
      { say: `Drivers over driven, exactly: ${found.numerator}/${found.denominator}.` },
      { say: best ? `Best: ${inWords(best)}; ${errorInWords(best)}.` : `Not possible: ${found.reason}.` },
      ...(best
        ? [
            {
              say: `Check: ${decimals(found.leadPitch, 5)} × ${best.drivers.join(' × ')} ÷ ${best.driven.join(' ÷ ')} = ${decimals(best.pitch, 5)} mm.`,
            },
          ]
        : []),
      {
        say: 'An idler between two wheels changes the sense only. Try the wheels on the banjo: whether they clear each other and the studs is not reckoned here.',
      },
    ];
  },
  slips: (g, found) => ({
    ...(found.numerator === found.denominator
      ? {}
      : {
          upsideDown: {
            of: 'ratio',
            formula: '1/i',
            says: 'The train is upside down: drivers and driven have changed places.',
          },
        }),
    gearbox: {
      of: 'ratio',
      formula: 'i/2',
      says: 'You allowed for a 2 : 1 that is not in this train.',
    },
    ...(g.pitch && g.leadTpi
      ? {
          leadAsMm: {
            of: 'ratio',
            formula: 'P_t*L/25.4',
            says: 'You took the lead screw’s threads to the inch as its pitch in millimetres.',
          },
          shortInch: {
            of: 'ratio',
            formula: 'P_t/L*25.4/25',
            says: 'You took the inch as 25 mm. It is 25.4, which is why 127 comes in.',
          },
        }
      : {}),
    ...(g.tpi && g.leadPitch
      ? {
          tpiAsPitch: {
            of: 'ratio',
            formula: '25.4/P_t/L',
            says: 'You took threads to the inch as the pitch. The pitch is one inch divided by it.',
          },
        }
      : {}),
  }),
});

function inMillimetres(pitch: Fraction | undefined, tpi: Fraction | undefined): number {
  if (pitch) return pitch.numerator / pitch.denominator;
  return tpi ? (25.4 * tpi.denominator) / tpi.numerator : 0;
}
