import { type Fraction, valueOf } from '../../geometry/fractions.js';
import { type GearTrain, gearTrains } from '../../geometry/screws/change-wheels.js';
import { gearRatio, pitchOf } from '../../geometry/screws/lead.js';
import { decimals } from '../working.js';
import { cutOf, inFigures, type LatheGiven, leadOf } from './lathe.js';

/** Longest list of settings; the count says how many there are. */
export const MOST = 200;

/** Beyond this no train is called near, parts per million. */
export const FARTHEST = 20_000;

/** A setting as it is shown: pitch in mm, errors above 0 where the pitch comes out too long. */
export interface Setting {
  readonly drivers: readonly number[];
  readonly driven: readonly number[];
  readonly pitch: number;
  readonly errorPpm: number;
  readonly errorPer100mm: number;
}

/** What the change wheels come to. */
export interface WheelsFound {
  readonly pitch: number;
  readonly leadPitch: number;
  readonly ratio: number;
  readonly numerator: number;
  readonly denominator: number;
  readonly possible: boolean;
  readonly count: number;
  readonly settings: readonly Setting[];
  readonly nearest: Setting | null;
  readonly reason?: string;
}

/** Works out the settings for a lathe. */
export function settingsFor(g: LatheGiven): WheelsFound {
  const lead = pitchOf(leadOf(g));
  const ratio = gearRatio(cutOf(g), leadOf(g));
  const { count, trains } = gearTrains({ ratio, wheels: g.wheels, tolerance: g.tolerancePpm }, MOST);
  const near = trains[0] ?? nearestTrain(ratio, g.wheels);
  const nearest = near ? shown(near, valueOf(lead)) : null;
  const found = {
    pitch: valueOf(pitchOf(cutOf(g))),
    leadPitch: valueOf(lead),
    ratio: valueOf(ratio),
    ...ratio,
    possible: count > 0,
    count,
    settings: trains.map((train) => shown(train, valueOf(lead))),
    nearest,
  };
  if (count > 0) return found;
  const within = g.tolerancePpm === 0 ? 'exactly' : `within ${g.tolerancePpm} ppm`;
  const best = nearest
    ? `the nearest is ${inWords(nearest)}, ${errorInWords(nearest)}`
    : 'none comes within two percent';
  return { ...found, reason: `no two or four of these wheels give ${inFigures(ratio)} ${within}; ${best}` };
}

const shown = ({ drivers, driven, error }: GearTrain, lead: number): Setting => ({
  drivers,
  driven,
  pitch: (lead * product(drivers)) / product(driven),
  errorPpm: error,
  errorPer100mm: error / 10_000,
});

const product = (wheels: readonly number[]): number => wheels.reduce((so, wheel) => so * wheel, 1);

/** The nearest train there is, at whatever tolerance first shows one. */
function nearestTrain(ratio: Fraction, wheels: readonly number[]): GearTrain | undefined {
  for (const tolerance of [200, 2000, FARTHEST]) {
    const [train] = gearTrains({ ratio, wheels, tolerance }, 1).trains;
    if (train) return train;
  }
  return undefined;
}

/** Where each wheel goes, from the headstock on. */
export function inWords({ drivers, driven }: Setting): string {
  const [first, second] = drivers;
  const [third, last] = driven;
  return second === undefined || last === undefined
    ? `${first} on the mandrel; ${third} on the lead screw`
    : `${first} on the mandrel; ${third} and ${second} together on the stud; ${last} on the lead screw (the drivers may change places)`;
}

/** `+125 ppm, 0.0125 mm too long in 100 mm`; `exact`. */
export function errorInWords({ errorPpm, errorPer100mm }: Setting): string {
  if (errorPpm === 0) return 'exact';
  const [sign, side] = errorPpm > 0 ? ['+', 'long'] : ['−', 'short'];
  const size = decimals(Math.abs(errorPer100mm), 4);
  return `${sign}${decimals(Math.abs(errorPpm), 1)} ppm, ${size} mm too ${side} in 100 mm`;
}
