/**
 * Theoretical addendum factor by the fixed-point form remembered from H. Sparks, "Designing Cycloidal Gears":
 * t = pi/n + 2 i b, b = atan2(sin t, 1 + 2i - cos t); f = (n/4)(1 - k + sqrt(1 + k^2 - 2k cos t)), k = 1 + 2i.
 * Dimensionless. Shares nothing with the geometry, which solves the roll angle by bisection.
 */
export function addendumByFixedPoint(teeth: number, leaves: number): number {
  const ratio = teeth / leaves;
  const k = 1 + 2 * ratio;
  let t = 1;
  for (let round = 0; round < 10_000; round++) {
    const b = Math.atan2(Math.sin(t), k - Math.cos(t));
    const next = Math.PI / leaves + 2 * ratio * b;
    if (Math.abs(next - t) < 1e-15) break;
    t = next;
  }
  return (leaves / 4) * (1 - k + Math.sqrt(1 + k * k - 2 * k * Math.cos(t)));
}
