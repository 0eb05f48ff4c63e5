import type { Fraction } from '../../geometry/fractions.js';

/** A ratio as one would type it: `60`, `365.2422`, `5/7`; of a decimal and a fraction the shorter. */
export function inWords({ numerator, denominator }: Fraction): string {
  if (denominator === 1) return `${numerator}`;
  const written = `${numerator}/${denominator}`;
  const decimal = asDecimal(numerator, denominator);
  return decimal !== undefined && decimal.length <= written.length ? decimal : written;
}

/** The decimal that a fraction comes to; nothing when it does not end within as many places as may be typed. */
function asDecimal(numerator: number, denominator: number): string | undefined {
  for (let places = 1; places <= 9; places++) {
    const unit = 10n ** BigInt(places);
    const whole = BigInt(numerator) * unit;
    if (whole % BigInt(denominator) !== 0n) continue;
    const digits = String(whole / BigInt(denominator)).padStart(places + 1, '0');
    return `${digits.slice(0, -places)}.${digits.slice(-places)}`;
  }
  return undefined;
}
