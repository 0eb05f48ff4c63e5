import { InputError } from '../../diagnostics/errors.js';
import { inv } from '../../geometry/involute/involute.js';
import { overTwoPins, type Pin, pinInSpace, pinsThatServe } from '../../geometry/involute/pins.js';
import {
  angleAtPin,
  involuteAtPin,
  measurementOverPins,
  USUAL_PIN,
} from '../../handbook/involute/over-pins.js';
import { derived } from '../../handbook/record.js';
import { calculation } from '../calculation.js';
import { mm } from '../found.js';
import { length, optional } from '../quantity.js';
import { decimals } from '../working.js';
import {
  degrees,
  flanksOf,
  type InvoluteGiven,
  module,
  pressureAngle,
  refuseOutside,
  teeth,
} from './gearing.js';

interface PinsGiven extends InvoluteGiven {
  readonly pinDiameter?: number | undefined;
}

/** The wheel with the usual pin where none is given. */
const pinned = (g: PinsGiven) => ({ ...g, pinDiameter: g.pinDiameter ?? USUAL_PIN * g.module });

/** Pins that measure a wheel; none so thick that two would not go side by side in neighbouring spaces. */
function pinsFor(g: PinsGiven): { readonly least: number; readonly most: number } {
  const { least, most } = pinsThatServe(flanksOf(g));
  return { least, most: Math.min(most, Math.PI * g.module) };
}

const up = (value: number): string => (Math.ceil(value * 1e4) / 1e4).toFixed(4);
const down = (value: number): string => (Math.floor(value * 1e4) / 1e4).toFixed(4);

export const overPins = calculation({
  name: 'involute.overPins',
  title: 'Measurement over two pins of an involute wheel',
  given: {
    teeth,
    module,
    pressureAngle,
    pinDiameter: optional(length('D_p', 'diameter of the pins', 0.02, 500)),
  },
  found: {
    pinDiameter: mm('D_p', 'diameter of the pins'),
    baseDiameter: mm('d_b', 'base diameter'),
    inv: { symbol: 'inv_C', unit: '', name: 'involute of the angle at the pin’s middle, in radians' },
    pinAngle: { symbol: 'C', unit: '°', name: 'pressure angle at the pin’s middle' },
    measurement: mm('M', 'measurement over the pins'),
  },
  refuse: (g) => {
    const { least, most } = pinsFor(g);
    const serving = { least: up(least), most: down(most), unit: 'mm' } as const;
    const { pinDiameter } = pinned(g);
    if (g.pinDiameter === undefined && (pinDiameter < least || pinDiameter > most))
      throw new InputError(
        'pinDiameter',
        undefined,
        `it from ${serving.least} to ${serving.most} mm: the usual pin of ${decimals(pinDiameter, 4)} mm does not serve this wheel`,
      );
    const why = 'others touch no flank, rest on the bottom, lie below the tips or are thicker than a pitch';
    refuseOutside('pinDiameter', pinDiameter, serving, why);
  },
  work: (g) => {
    const flanks = flanksOf(g);
    const pin = pinInSpace(flanks, pinned(g).pinDiameter) as Pin;
    const angle = Math.acos(flanks.baseRadius / pin.centre);
    return {
      pinDiameter: pin.diameter,
      baseDiameter: 2 * flanks.baseRadius,
      inv: inv(angle),
      pinAngle: degrees(angle),
      measurement: overTwoPins(g.teeth, pin),
    };
  },
  proofs: [
    {
      of: 'pinDiameter',
      source: { work: 'over-pins-tables', at: '1.728/P unless given, from memory' },
      value: (g) => pinned(g).pinDiameter,
    },
    { of: 'baseDiameter', formula: 'base-diameter' },
    {
      of: 'inv',
      source: derived('inv α + D/d_b − π/2z'),
      within: 1e-9,
      value: (g) => involuteAtPin(pinned(g)),
    },
    {
      of: 'pinAngle',
      source: derived('the involute solved for its angle by Newton’s rule'),
      within: 1e-6,
      value: (g) => angleAtPin(pinned(g)),
    },
    {
      of: 'measurement',
      source: derived('base diameter over the cosine of the angle at the pin, and the pin'),
      within: (g) => 1e-9 * g.module * g.teeth,
      value: (g) => measurementOverPins(pinned(g)),
    },
  ],
  working: (g) => [
    ...(g.pinDiameter === undefined ? [`D_p = ${USUAL_PIN}*m`] : []),
    'd_b = m*z*cosd(A)',
    'inv_C = tand(A) - A*pi/180 + D_p/d_b - pi/(2*z)',
    { say: 'Look C up in a table of involutes, or close in on it by trial: tan C − C is to be that much.' },
    ...(g.teeth % 2 === 0
      ? ['M = d_b/cosd(C) + D_p']
      : [
          { say: 'An odd count: the pins stand half a tooth out of line.' },
          'M = d_b/cosd(C)*cosd(90/z) + D_p',
        ]),
  ],
  slips: (g) => ({
    ...(g.teeth % 2 === 0
      ? {
          evenAsOdd: {
            of: 'measurement',
            formula: 'd_b/cosd(C)*cosd(90/z) + D_p',
            says: 'The cos(90°/z) is for odd counts. With an even count the pins stand opposite.',
          },
        }
      : {
          oddAsEven: {
            of: 'measurement',
            formula: 'd_b/cosd(C) + D_p',
            says: 'With an odd count no space stands opposite another: multiply by cos(90°/z).',
          },
        }),
    noPin: {
      of: 'measurement',
      formula: 'M - D_p',
      says: 'That is from middle to middle of the pins; half a pin stands out at each end.',
    },
    twoPins: {
      of: 'measurement',
      formula: 'M + D_p',
      says: 'You added both pins whole; only half of each stands outside its middle.',
    },
    pitchCircle: {
      of: 'measurement',
      formula: 'm*z + D_p',
      says: 'The middles of the pins do not lie on the pitch circle. Find the angle at the pin.',
    },
  }),
});
