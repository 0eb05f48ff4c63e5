import { type Fraction, fraction } from '../fractions.js';
import { BestFew } from './best-few.js';
import { type GearSet, type GearTrain, teethOf, wheelsOf } from './gears.js';

/** A movement of the crank with the plate geared to the spindle. */
export interface DifferentialSetting {
  /** The count that the movement alone would make, which need not be whole. */
  readonly approximate: Fraction;
  readonly turns: number;
  readonly holes: number;
  readonly circle: number;
  /** Turns of the plate for one of the spindle; below 0 against the crank. */
  readonly gearRatio: Fraction;
  readonly train: GearTrain;
}

/** Most turns of the plate for one of the spindle: gears that drive faster than this bind. */
export const LARGEST_RATIO = 6;

/**
 * Differential indexing: every movement on every circle that gears of the set put right, each with its simplest train.
 * While the spindle turns once the crank moves through divisions × movement and the plate makes up the rest:
 * gear ratio = ratio − divisions × movement = ratio × (approximate − divisions)/approximate.
 *
 * Complete for gear ratios up to 6 either way. A movement of whole turns is listed once, for any circle serves it.
 * Fewest gears first, then whole approximate counts, then the slowest plate, one that turns with the crank before one
 * against it, then the fewest teeth.
 *
 * @param most how many settings to keep; the count is of them all
 */
export function differentialSettings(
  divisions: number,
  ratio: number,
  circles: readonly number[],
  gears: GearSet,
  most = Number.POSITIVE_INFINITY,
): { readonly count: number; readonly settings: readonly DifferentialSetting[] } {
  const found = new BestFew(most, simplestDifferential);
  const wholeTurns = new Set<number>();
  for (const circle of circles) {
    const exact = (ratio * circle) / divisions;
    const reach = (LARGEST_RATIO * circle) / divisions;
    const last = Math.floor(exact + reach) + 1;
    for (let spaces = Math.max(1, Math.ceil(exact - reach) - 1); spaces <= last; spaces++) {
      const rest = ratio * circle - divisions * spaces;
      if (rest === 0 || Math.abs(rest) > LARGEST_RATIO * circle) continue;
      const gearRatio = fraction(rest, circle);
      const train = gears.trainFor({ ...gearRatio, numerator: Math.abs(gearRatio.numerator) });
      if (!train) continue;
      const [turns, holes] = [Math.floor(spaces / circle), spaces % circle];
      if (holes === 0 && wholeTurns.has(turns)) continue;
      if (holes === 0) wholeTurns.add(turns);
      found.add({ approximate: fraction(ratio * circle, spaces), turns, holes, circle, gearRatio, train });
    }
  }
  return { count: found.count, settings: found.few };
}

function simplestDifferential(a: DifferentialSetting, b: DifferentialSetting): number {
  return (
    wheelsOf(a.train).length - wheelsOf(b.train).length ||
    Number(a.approximate.denominator > 1) - Number(b.approximate.denominator > 1) ||
    Math.abs(a.gearRatio.numerator) * b.gearRatio.denominator -
      Math.abs(b.gearRatio.numerator) * a.gearRatio.denominator ||
    Number(a.gearRatio.numerator < 0) - Number(b.gearRatio.numerator < 0) ||
    teethOf(a.train) - teethOf(b.train) ||
    a.circle - b.circle
  );
}

/**
 * Idle wheels between spindle and plate, on a head whose plate turns with the crank through one idler in a simple
 * train, none in a compound one; one more turns it the other way.
 */
export function idlersFor({ gearRatio, train }: DifferentialSetting): number {
  return (train.drivers.length === 1 ? 1 : 0) + (gearRatio.numerator < 0 ? 1 : 0);
}
