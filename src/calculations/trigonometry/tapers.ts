import { InputError } from '../../diagnostics/errors.js';
import { tailstockOver, taperOf } from '../../geometry/trigonometry/slope.js';
import { derived } from '../../handbook/record.js';
import { calculation, type Slip } from '../calculation.js';
import { mm } from '../found.js';
import { length } from '../quantity.js';
import { toldApart } from '../slips.js';

const largeDiameter = length('D', 'large diameter', 0.01, 2000);
const smallDiameter = length('d', 'small diameter', 0, 2000);
const taperLength = length('l', 'length of the taper, along the axis', 0.01, 5000);

/** Less taper than this over the whole is none that a lathe could turn. */
const LEAST = 1e-6;

function refuseNoTaper(g: { readonly largeDiameter: number; readonly smallDiameter: number }): void {
  if (g.largeDiameter - g.smallDiameter < LEAST)
    throw new InputError(
      'smallDiameter',
      g.smallDiameter,
      `less than the large diameter, ${g.largeDiameter} mm`,
    );
}

interface Tapered {
  readonly largeDiameter: number;
  readonly smallDiameter: number;
}

/** A value put back: with it the small diameter must grow to the large one. */
const putBack = <G extends Tapered, K extends string>(of: K, grown: (value: number, g: G) => number) => ({
  of,
  source: derived('put back: the small diameter grown to the large one'),
  within: (g: G) => 1e-9 * g.largeDiameter,
  value: (g: G) => g.largeDiameter,
  measure: {
    name: 'large diameter that it makes of the small one, mm',
    of: (value: unknown, g: G) => g.smallDiameter + grown(value as number, g),
  },
});

interface TaperGiven extends Tapered {
  readonly length: number;
}

interface WorkGiven extends Tapered {
  readonly taperLength: number;
  readonly workLength: number;
}

export const taperAngles = calculation({
  name: 'taper.angles',
  title: 'Taper and its angles',
  given: { largeDiameter, smallDiameter, length: taperLength },
  found: {
    taperPerUnit: { symbol: 't', unit: '', name: 'taper, change of diameter for each unit of length' },
    perFoot: { symbol: 'T', unit: 'in/ft', name: 'taper, inches per foot' },
    oneIn: { symbol: 'k', unit: '', name: 'taper as 1 in so many' },
    halfAngle: { symbol: 'a', unit: '°', name: 'half-angle, between side and axis' },
    includedAngle: { symbol: 'A', unit: '°', name: 'included angle, between the two sides' },
  },
  refuse: refuseNoTaper,
  work: (g) => {
    const { taperPerUnit, lengthForOne, halfAngle, includedAngle } = taperOf(
      g.largeDiameter,
      g.smallDiameter,
      g.length,
    );
    return { taperPerUnit, perFoot: 12 * taperPerUnit, oneIn: lengthForOne, halfAngle, includedAngle };
  },
  proofs: [
    { of: 'taperPerUnit', formula: 'taper-per-unit' },
    putBack('taperPerUnit', (t, g: TaperGiven) => t * g.length),
    { of: 'perFoot', formula: 'taper-per-foot' },
    putBack('perFoot', (inches, g: TaperGiven) => (inches / 12) * g.length),
    { of: 'oneIn', formula: 'taper-one-in' },
    putBack('oneIn', (k, g: TaperGiven) => g.length / k),
    { of: 'halfAngle', formula: 'half-angle' },
    { of: 'includedAngle', formula: 'included-angle' },
  ],
  working: [
    't = (D - d)/l',
    'T = 12*t',
    'k = l/(D - d)',
    { say: 'The radius changes by half as much as the diameter, so the side leans by the half-angle.' },
    'a = atand((D - d)/(2*l))',
    'A = 2*a',
  ],
  slips: {
    fullDifference: {
      of: 'halfAngle',
      formula: 'atand((D - d)/l)',
      says: 'You used the whole difference of the diameters; the radius changes by half of it.',
    },
    included: {
      of: 'halfAngle',
      formula: '2*a',
      says: 'That is the included angle. The top slide takes the half-angle.',
    },
    halved: {
      of: 'halfAngle',
      formula: 'a/2',
      says: 'You halved twice: the half-angle is already between side and axis.',
    },
    half: {
      of: 'includedAngle',
      formula: 'a',
      says: 'That is the half-angle; the included angle is between the two sides.',
    },
    onRadius: {
      of: 'taperPerUnit',
      formula: '(D - d)/(2*l)',
      says: 'That is the change of radius; a taper is stated on the diameter.',
    },
    perInch: { of: 'perFoot', formula: 't', says: 'That is the taper for one inch; a foot has twelve.' },
    upsideDown: {
      of: 'taperPerUnit',
      formula: 'l/(D - d)',
      says: 'The taper is upside down: diameter over length.',
    },
    oneInRadius: {
      of: 'oneIn',
      formula: '2*l/(D - d)',
      says: 'You used the change of radius; “1 in so many” is stated on the diameter.',
    },
  },
});

const setOverSlips: Readonly<Record<string, Slip>> = {
  noLength: {
    of: 'setOver',
    formula: '(D - d)/2',
    says: 'You left out the whole length: the tailstock moves for all of the work, not the taper alone.',
  },
  inverted: {
    of: 'setOver',
    formula: '(D - d)/2*l/L',
    says: 'The lengths are upside down: longer work needs more set-over.',
  },
  full: {
    of: 'setOver',
    formula: '(D - d)*L/l',
    says: 'You used the whole difference of the diameters; set-over works on the radius.',
  },
  perLength: {
    of: 'setOver',
    formula: '(D - d)/(2*l)',
    says: 'That is the slope for each millimetre; it goes on for the whole length.',
  },
};

export const taperSetOver = calculation({
  name: 'taper.setOver',
  title: 'Set-over of the tailstock for a taper',
  given: {
    largeDiameter,
    smallDiameter,
    taperLength,
    workLength: length('L', 'whole length of the work between centres', 0.01, 5000),
  },
  found: {
    setOver: mm('x', 'set-over by the trade’s rule'),
    alongWork: mm('y', 'set-over with the slant of the work reckoned in'),
  },
  refuse: (g) => {
    refuseNoTaper(g);
    if (g.workLength < g.taperLength)
      throw new InputError(
        'workLength',
        g.workLength,
        `at least the length of the taper, ${g.taperLength} mm`,
      );
  },
  work: (g) => tailstockOver(g.largeDiameter, g.smallDiameter, g.taperLength, g.workLength),
  proofs: [
    { of: 'setOver', formula: 'set-over' },
    putBack('setOver', (x, g: WorkGiven) => (2 * x * g.taperLength) / g.workLength),
    { of: 'alongWork', formula: 'set-over-along-work' },
  ],
  working: [
    { say: 'The whole length between centres counts, not only the part that is tapered.' },
    'x = (D - d)/2*L/l',
    {
      say: 'The rule measures along the bed; the work lies aslant. Measured along the work:',
    },
    'y = L*(D - d)/sqrt(4*l^2 + (D - d)^2)',
  ],
  slips: (g, found) =>
    toldApart(setOverSlips, found, {
      D: g.largeDiameter,
      d: g.smallDiameter,
      l: g.taperLength,
      L: g.workLength,
    }),
});
