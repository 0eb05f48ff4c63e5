import { InputError } from '../../diagnostics/errors.js';
import { closingOf } from '../../geometry/dividing/closing.js';
import { closingVerdict } from '../../handbook/dividing/closing-verdict.js';
import { closingByWalking } from '../../handbook/dividing/closing-walk.js';
import { derived, practice } from '../../handbook/record.js';
import { calculation } from '../calculation.js';
import { length, number } from '../quantity.js';
import { remembered } from '../remembered.js';
import { decimals } from '../working.js';
import { divisions } from './givens.js';
import { signInWords } from './sign-in-words.js';

interface ClosingGiven {
  readonly divisions: number;
  readonly stepErrorArcSeconds: number;
  readonly diameter: number;
}

const byWalking = derived('the wheel walked round cut by cut, one step after another');
const walked = remembered((g: ClosingGiven) => closingByWalking(g.divisions, g.stepErrorArcSeconds));
const mmPerDegree = (g: ClosingGiven) => (Math.PI * g.diameter) / 360;

/** What the eye, a gauge and the mesh find, by the closing error's share of the pitch. */
function verdictOf(percent: number, stepError: number, lastTooth: number): string {
  if (stepError === 0) return 'closes exactly';
  // Rounded to the last bits, so that 5 % is 5 % and not a hair less.
  const share = Math.round(percent * 1e9) / 1e9;
  const last = stepError < 0 ? 'fat' : lastTooth > 0 ? 'thin' : 'gone';
  if (share < 1) return `too little to see: the last tooth is a hair ${last}`;
  const shows =
    share < 5
      ? 'found by measuring'
      : share < 8
        ? 'seen by eye'
        : share < 50
          ? 'felt in mesh'
          : 'plain to see';
  return `${shows}: the last tooth is ${last}`;
}

/** Most pitches that a wheel may close out: beyond it another count was cut, and no tooth is left to look at. */
const MOST_PITCHES = 5;

export const closing = calculation({
  name: 'dividing.closing',
  title: 'What the last tooth shows of a constant error of the step',
  given: {
    divisions,
    stepErrorArcSeconds: number('e', 'error of each step, above 0 too long', '″', -600_000, 600_000),
    diameter: length('D', 'pitch diameter', 0.5, 2000),
  },
  found: {
    closingAngle: { symbol: 'G', unit: '°', name: 'error at the last division, above 0 past the first cut' },
    closingAtRim: { symbol: 'c', unit: 'mm', name: 'the same along the pitch circle' },
    percentOfPitch: { symbol: 'y', unit: '%', name: 'size of the error against the pitch' },
    lastToothThickness: {
      symbol: 's_l',
      unit: 'mm',
      name: 'thickness of the last tooth, where a true one is half the pitch',
    },
    verdict: { unit: '', name: 'what it shows' },
  },
  refuse: (g) => {
    const step = 1_296_000 / g.divisions;
    const most = Math.min(step, (MOST_PITCHES * step) / g.divisions);
    if (Math.abs(g.stepErrorArcSeconds) < most) return;
    throw new InputError(
      'stepErrorArcSeconds',
      g.stepErrorArcSeconds,
      `an error below ${decimals(most, 2)}″, so that the wheel closes less than ${MOST_PITCHES} pitches out and no step is lost`,
    );
  },
  work: (g) => {
    const { closingAngle, closingAtRim, lastToothThickness } = closingOf(
      g.divisions,
      g.stepErrorArcSeconds,
      g.diameter,
    );
    const percentOfPitch = (100 * Math.abs(closingAngle) * g.divisions) / 360;
    return {
      closingAngle,
      closingAtRim,
      percentOfPitch,
      lastToothThickness,
      verdict: verdictOf(percentOfPitch, g.stepErrorArcSeconds, lastToothThickness),
    };
  },
  proofs: [
    {
      of: 'closingAngle',
      source: byWalking,
      value: (g) => walked(g).past,
      within: 1e-8,
    },
    {
      of: 'closingAtRim',
      source: byWalking,
      value: (g) => walked(g).past * mmPerDegree(g),
      within: (g) => 1e-8 * g.diameter,
    },
    { of: 'percentOfPitch', formula: 'closing-percent' },
    {
      of: 'lastToothThickness',
      source: byWalking,
      value: (g) => walked(g).lastTooth * mmPerDegree(g),
      within: (g) => 1e-8 * g.diameter,
    },
    {
      of: 'verdict',
      source: practice(
        'below 1 % of the pitch is not seen, 5 % is seen by eye, 8 % is felt in mesh, half a pitch is plain',
      ),
      value: (g) => closingVerdict(g.divisions, g.stepErrorArcSeconds),
    },
  ],
  working: (_, found) => [
    'G = N*e/3600',
    'c = pi*D*G/360',
    'y = 100*abs(G)*N/360',
    's_l = max(0, pi*D/(2*N) - (N - 1)*pi*D*e/1296000)',
    { say: signInWords(found.closingAngle) },
  ],
  slips: (g) =>
    g.stepErrorArcSeconds === 0
      ? {}
      : {
          oneStep: {
            of: 'closingAngle',
            formula: 'e/3600',
            says: 'That is one step’s error. It adds up at every division.',
          },
          asMinutes: {
            of: 'closingAngle',
            formula: 'N*e/60',
            says: 'You turned seconds into minutes; 3600 of them make a degree.',
          },
          radius: {
            of: 'closingAtRim',
            formula: 'pi*(D/2)*G/360',
            says: 'You used the radius; the rim is π times the diameter.',
          },
        },
});
