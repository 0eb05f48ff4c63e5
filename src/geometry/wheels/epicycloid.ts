/**
 * Addendum of a cycloidal wheel tooth in modules, before any shortening: the height above the pitch circle at
 * which the epicycloid faces of a tooth half a circular pitch thick meet on its centre line. The generating
 * circle rolls outside the wheel's pitch circle and has half the pinion's pitch diameter, so that the pinion's
 * flanks are radial lines.
 *
 * Found by bisection on the roll angle: the traced point's polar angle grows steadily from 0, and is wanted at
 * a quarter of the angular pitch, pi/(2z).
 *
 * @param teeth wheel teeth, z
 * @param leaves pinion leaves, n; not more than z
 * @returns dimensionless, times the module
 */
export function theoreticalAddendum(teeth: number, leaves: number): number {
  const pitchRadius = teeth / 2;
  const roller = leaves / 4;
  const centre = pitchRadius + roller;
  const trace = (roll: number) => {
    const spin = (centre * roll) / roller;
    return {
      x: centre * Math.cos(roll) - roller * Math.cos(spin),
      y: centre * Math.sin(roll) - roller * Math.sin(spin),
    };
  };
  const wanted = Math.PI / (2 * teeth);
  let low = 0;
  let high = (Math.PI * roller) / pitchRadius;
  for (let step = 0; step < 200 && high - low > Number.EPSILON; step++) {
    const middle = (low + high) / 2;
    const { x, y } = trace(middle);
    if (Math.atan2(y, x) < wanted) low = middle;
    else high = middle;
  }
  const { x, y } = trace((low + high) / 2);
  return Math.hypot(x, y) - pitchRadius;
}
