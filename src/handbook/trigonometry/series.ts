/**
 * Sine of an angle by its series, x − x³/3! + x⁵/5! …, until the terms no longer count.
 *
 * @param angle degrees, up to 90 either way
 */
export function sineBySeries(angle: number): number {
  const x = (angle * Math.PI) / 180;
  let term = x;
  let sum = 0;
  for (let n = 1; sum + term !== sum; n += 2) {
    sum += term;
    term *= (-x * x) / ((n + 1) * (n + 2));
  }
  return sum;
}
