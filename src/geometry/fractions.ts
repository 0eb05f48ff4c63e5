/** A ratio of two whole numbers, in lowest terms, the denominator above 0. */
export interface Fraction {
  readonly numerator: number;
  readonly denominator: number;
}

/** Greatest common divisor of two whole numbers, not both 0; never negative. */
export function greatestCommonDivisor(a: number, b: number): number {
  let [x, y] = [Math.abs(a), Math.abs(b)];
  while (y !== 0) [x, y] = [y, x % y];
  return x;
}

/**
 * A ratio in lowest terms.
 *
 * @throws {RangeError} unless both are whole numbers that a double holds exactly, the denominator not 0
 */
export function fraction(numerator: number, denominator = 1): Fraction {
  if (!Number.isSafeInteger(numerator) || !Number.isSafeInteger(denominator) || denominator === 0)
    throw new RangeError(`${numerator}/${denominator} is no exact fraction`);
  const common = greatestCommonDivisor(numerator, denominator) * Math.sign(denominator);
  return { numerator: numerator / common + 0, denominator: denominator / common };
}

/** Product of two fractions. Factors that cancel do so before they can grow too large. @throws {RangeError} as `fraction` */
export function times(a: Fraction, b: Fraction): Fraction {
  const first = greatestCommonDivisor(a.numerator, b.denominator);
  const second = greatestCommonDivisor(b.numerator, a.denominator);
  return fraction(
    (a.numerator / first) * (b.numerator / second),
    (a.denominator / second) * (b.denominator / first),
  );
}

/** One divided by a fraction other than 0. */
export function inverse({ numerator, denominator }: Fraction): Fraction {
  return fraction(denominator, numerator);
}

/** The fraction as a number. */
export function valueOf({ numerator, denominator }: Fraction): number {
  return numerator / denominator;
}
