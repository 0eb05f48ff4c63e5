import { InputError } from '../../diagnostics/errors.js';
import { evaluateFormula } from '../../formula/formula.js';
import { gravityAt } from '../../geometry/trains/gravity.js';
import { pendulumLength } from '../../geometry/trains/pendulum.js';
import { formulas } from '../../handbook/formulas.js';
import { type Citation, derived } from '../../handbook/record.js';
import { beatsBySwinging } from '../../handbook/trains/swing.js';
import { calculation } from '../calculation.js';
import { angle, number, optional } from '../quantity.js';

/** Standard gravity, m/s²: what is used when neither gravity nor latitude is given. */
const STANDARD = 9.80665;

interface Place {
  readonly gravity?: number | undefined;
  readonly latitude?: number | undefined;
}

const standard: Citation = { work: 'cgpm1901', at: 'standard acceleration of gravity, 980.665 cm/s²' };
const normal = formulas['normal-gravity'];
const published = formulas['pendulum-length'];

/** Gravity by the handbook: as given, as the standard has it, or by the published formula of latitude. */
const publishedGravity = ({ gravity, latitude }: Place): number =>
  latitude === undefined ? (gravity ?? STANDARD) : evaluateFormula(normal.formula, { F: latitude });

export const pendulum = calculation({
  name: 'pendulum.length',
  title: 'Length of a pendulum, to its centre of oscillation',
  given: {
    beatsPerHour: number('B', 'beats an hour', '', 300, 100_000),
    gravity: optional(
      number('g_0', `gravity; ${STANDARD} when neither it nor the latitude is given`, 'm/s²', 9.7, 9.9),
    ),
    latitude: optional(angle('F', 'latitude of the place, for gravity at sea level', -90, 90)),
  },
  found: {
    length: { symbol: 'L', unit: 'mm', name: 'length to the centre of oscillation' },
    secondsPerBeat: { symbol: 't', unit: 's', name: 'time of one beat' },
    gravityUsed: { symbol: 'g', unit: 'm/s²', name: 'gravity used' },
  },
  refuse: (g) => {
    if (g.gravity !== undefined && g.latitude !== undefined)
      throw new InputError('latitude', g.latitude, 'gravity or latitude, not both');
  },
  work: (g) => {
    const gravityUsed = g.latitude === undefined ? (g.gravity ?? STANDARD) : gravityAt(g.latitude);
    return {
      length: pendulumLength(g.beatsPerHour, gravityUsed),
      secondsPerBeat: 3600 / g.beatsPerHour,
      gravityUsed,
    };
  },
  proofs: [
    { of: 'length', formula: 'pendulum-length' },
    {
      of: 'length',
      source: derived('a pendulum so long let fall from a thousandth of a degree, step by step'),
      measure: {
        name: 'beats an hour of a pendulum so long',
        of: (length: number, g) => beatsBySwinging(length, publishedGravity(g), 0.001),
      },
      value: (g) => g.beatsPerHour,
      within: (g) => 1e-7 * g.beatsPerHour,
    },
    {
      of: 'secondsPerBeat',
      source: derived('one beat timed, of a pendulum of the published length let fall'),
      value: (g) => {
        const gravity = publishedGravity(g);
        const length = evaluateFormula(published.formula, { B: g.beatsPerHour, g: gravity });
        return 3600 / beatsBySwinging(length, gravity, 0.001);
      },
      within: (g) => (1e-7 * 3600) / g.beatsPerHour,
    },
    {
      of: 'gravityUsed',
      source: (g) => (g.latitude === undefined ? standardOrGiven(g) : normal.source),
      value: publishedGravity,
      within: 2e-9,
    },
  ],
  working: (g) => [
    g.latitude === undefined
      ? { say: g.gravity === undefined ? 'Standard gravity, 9.80665 m/s².' : 'Gravity as given.' }
      : normal.formula,
    't = 3600/B',
    'L = 1000*g*t^2/pi^2',
    {
      say: 'This is the length of a bob on a thread: from where it bends to the centre of oscillation. A real rod and bob are somewhat longer over all.',
    },
  ],
  slips: (g) => ({
    wholeSwing: {
      of: 'length',
      formula: 'L/4',
      says: 'You took one beat for the whole swing there and back. Tick and tock are two beats.',
    },
    doubled: {
      of: 'length',
      formula: '4*L',
      says: 'You doubled the time of a beat. With this formula the time is that of one beat.',
    },
    metres: { of: 'length', formula: 'L/1000', says: 'That is in metres.' },
    noPi: { of: 'length', formula: '1000*g*t^2', says: 'You left out π², which is nearly 10.' },
    upsideDown: {
      of: 'length',
      formula: '1000*t^2*pi^2/g',
      says: 'You put gravity under the line. It goes on top, and π² below.',
    },
    // At a beat a second the square is the same.
    ...(Math.abs(g.beatsPerHour / 3600 - 1) > 0.05 && {
      notSquared: {
        of: 'length',
        formula: '1000*g*t/pi^2',
        says: 'You did not square the time: half the time wants a quarter of the length.',
      },
    }),
  }),
});

const standardOrGiven = (g: Place): Citation =>
  g.gravity === undefined ? standard : derived('gravity as given');
