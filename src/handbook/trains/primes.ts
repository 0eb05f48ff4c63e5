/**
 * A train by its prime numbers, as it is planned on paper: every count divided out into primes, those of the wheels
 * written above and those of the pinions below, and what stands on both sides struck out.
 *
 * @returns the exponent of each prime; below 0 where it is left among the pinions
 */
export function primesOfTrain(wheels: readonly number[], pinions: readonly number[]): Map<number, number> {
  const powers = new Map<number, number>();
  const divideOut = (count: number, side: 1 | -1): void => {
    const strike = (prime: number) => powers.set(prime, (powers.get(prime) ?? 0) + side);
    let left = count;
    for (let prime = 2; prime * prime <= left; prime++)
      for (; left % prime === 0; left /= prime) strike(prime);
    if (left > 1) strike(left); // what no smaller number divides is prime
  };
  for (const wheel of wheels) divideOut(wheel, 1);
  for (const pinion of pinions) divideOut(pinion, -1);
  return powers;
}

/** The train in lowest terms, multiplied up again from its primes. */
export function lowestTerms(wheels: readonly number[], pinions: readonly number[]) {
  let [numerator, denominator] = [1, 1];
  for (const [prime, power] of primesOfTrain(wheels, pinions)) {
    if (power > 0) numerator *= prime ** power;
    else denominator *= prime ** -power;
  }
  return { numerator, denominator };
}
