import { type NearestSetting, nearestSettings } from '../../geometry/dividing/nearest.js';
import { nearestByCounting, secondsPast } from '../../handbook/dividing/movement-trial.js';
import { derived } from '../../handbook/record.js';
import { calculation } from '../calculation.js';
import { spacesInWords } from '../moves.js';
import { length } from '../quantity.js';
import { remembered } from '../remembered.js';
import { byCounting, circle, circles, divisions, holes, ratio, turns } from './givens.js';
import { signInWords } from './sign-in-words.js';
import { turnsForOne } from './turns-in-words.js';
import { whyNotToCut } from './why-not-to-cut.js';

interface NearestGiven {
  readonly divisions: number;
  readonly ratio: number;
  readonly circles: readonly number[];
  readonly diameter: number;
}

/** Every circle's movement counted out, and its error put together from single spaces. */
const settingsByCounting = remembered((g: NearestGiven) =>
  nearestByCounting(BigInt(g.ratio), BigInt(g.divisions), g.circles).map((movement) => {
    const { turns, holes, circle } = movement;
    const step = secondsPast(movement, g.ratio);
    return {
      turns,
      holes,
      circle,
      stepErrorArcSeconds: step,
      closingErrorArcSeconds: step * g.divisions,
      closingErrorAtRim: (step * g.divisions * Math.PI * g.diameter) / 1_296_000,
    };
  }),
);

const first = (g: NearestGiven) => settingsByCounting(g)[0];

interface NearestFound extends NearestSetting {
  readonly settings: readonly NearestSetting[];
  readonly reason?: string;
}

const given = { divisions, ratio, circles, diameter: length('D', 'pitch diameter of the wheel', 0.5, 2000) };

export const nearest = calculation<typeof given, NearestFound>({
  name: 'dividing.nearest',
  title: 'The nearest movements, when none is exact',
  given,
  found: {
    turns,
    holes,
    circle,
    stepErrorArcSeconds: { symbol: 'e', unit: '″', name: 'error of each step, above 0 too long' },
    closingErrorArcSeconds: { symbol: 'E', unit: '″', name: 'error at the last division' },
    closingErrorAtRim: { symbol: 'c', unit: 'mm', name: 'the same along the pitch circle' },
    settings: { unit: '', name: 'nearest movement on each circle, the closest first' },
    reason: { unit: '', name: 'why not to cut' },
  },
  work: (g) => {
    const settings = nearestSettings(g.divisions, g.ratio, g.circles, g.diameter);
    const [closest] = settings;
    if (!closest) throw new RangeError('no circle to move on');
    const reason = whyNotToCut(closest, g);
    return { ...closest, settings, ...(reason !== undefined && { reason }) };
  },
  proofs: [
    { of: 'turns', source: byCounting, value: (g) => first(g)?.turns ?? 0 },
    { of: 'holes', source: byCounting, value: (g) => first(g)?.holes ?? 0 },
    { of: 'circle', source: byCounting, value: (g) => first(g)?.circle ?? 0 },
    { of: 'stepErrorArcSeconds', formula: 'step-error' },
    { of: 'closingErrorArcSeconds', formula: 'closing-error' },
    { of: 'closingErrorAtRim', formula: 'closing-error-at-rim' },
    {
      of: 'settings',
      source: derived(
        'spaces counted one by one on every circle; the error of a space, as often as it is made',
      ),
      value: settingsByCounting,
      within: (g) => 1e-9 * Math.max(1_300_000, g.diameter),
    },
  ],
  working: (g, found) => [
    { say: turnsForOne(g.divisions, g.ratio) },
    {
      say: `Nearest: ${spacesInWords(found.turns, found.holes)} on the ${found.circle}-hole circle. A whole circle is 1 296 000″.`,
    },
    'e = 1296000*((w + k/H)/R - 1/N)',
    'E = N*e',
    'c = pi*D*E/1296000',
    { say: signInWords(found.closingErrorArcSeconds) },
    ...(found.reason === undefined ? [] : [{ say: `It ${found.reason}.` }]),
  ],
  slips: (_, found) =>
    found.stepErrorArcSeconds === 0
      ? {}
      : {
          oneStep: {
            of: 'closingErrorArcSeconds',
            formula: 'e',
            says: 'That is the error of one step. It adds up: the last division has all of them.',
          },
          averages: {
            of: 'closingErrorArcSeconds',
            formula: '0',
            says: 'Equal errors do not average out; every step adds one more.',
          },
          radius: {
            of: 'closingErrorAtRim',
            formula: 'pi*(D/2)*E/1296000',
            says: 'You used the radius; the rim is π times the diameter.',
          },
        },
});
