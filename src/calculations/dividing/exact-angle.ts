import type { Turn } from '../../geometry/dividing/angle.js';
import { angle, type Quantity } from '../quantity.js';

/** Thousandths of an arc second in a degree. */
const THOUSANDTHS = 3_600_000;

const anyAngle = angle('A', 'angle', 0.001, 360);

/** What a double holds apart from its neighbours: so many places of a degree, and of the last part of minutes and seconds. */
const TOO_FINE = { degrees: /\.\d{13}/, parts: /\.\d{7}/ } as const;
const DECIMAL = /^[\d.]+$/;

/** An angle of the work, kept as it was typed: a decimal at its word, minutes and seconds to a thousandth of a second. */
export const exactAngle: Quantity<number> = {
  ...anyAngle,
  accepts: `${anyAngle.accepts}, with 12 decimals at most, or 6 in minutes and seconds`,
  read: (raw) => {
    const degrees = anyAngle.read(raw);
    if (degrees === undefined || typeof raw !== 'string') return degrees;
    const decimal = DECIMAL.test(raw.trim());
    if ((decimal ? TOO_FINE.degrees : TOO_FINE.parts).test(raw)) return undefined;
    if (decimal) return degrees;
    const thousandths = degrees * THOUSANDTHS;
    // Only the last bits of binary thirds and sixtieths are off.
    const nearest = Math.round(thousandths);
    return Math.abs(thousandths - nearest) < 1e-4 ? nearest / THOUSANDTHS : degrees;
  },
};

/** Whole thousandths of a second, of an angle that is so many; nothing for any other. */
export function thousandthsIn(degrees: number): number | undefined {
  const nearest = Math.round(degrees * THOUSANDTHS);
  return nearest / THOUSANDTHS === degrees ? nearest : undefined;
}

/** The share of a full turn that an angle is, exactly. */
export function turnOf(degrees: number): Turn {
  const thousandths = thousandthsIn(degrees);
  if (thousandths !== undefined) return { top: BigInt(thousandths), bottom: BigInt(360 * THOUSANDTHS) };
  const [whole = '', places = ''] = String(degrees).split('.');
  return { top: BigInt(whole + places), bottom: 360n * 10n ** BigInt(places.length) };
}
