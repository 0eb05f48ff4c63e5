const RADIAN = 180 / Math.PI;

/** Two readings nearer than this, in modules, are one. */
const ALIKE = 1e-8;

/**
 * Teeth to span, by trying one count after another: the base tangent is to be as near as may be to the chord that
 * touches the base circle and ends on the pitch circle, d·sin α. At a tie the larger count; 2 at the least.
 *
 * @param pressureAngle degrees
 */
export function spanByTrial(teeth: number, pressureAngle: number): number {
  const angle = pressureAngle / RADIAN;
  const wanted = teeth * Math.sin(angle);
  const off = (spanned: number): number => {
    const oneTooth = Math.PI / 2 + teeth * (Math.tan(angle) - angle);
    return Math.abs((oneTooth + (spanned - 1) * Math.PI) * Math.cos(angle) - wanted);
  };
  let best = 2;
  while (off(best + 1) <= off(best) + ALIKE) best++;
  return best;
}

/**
 * Fewest teeth that a rack does not undercut, one count after another: the foot of the line of action must lie as
 * deep below the pitch circle as the rack's straight flank reaches.
 *
 * @param pressureAngle degrees
 * @param addendumFactor modules
 */
export function leastTeethByTrial(pressureAngle: number, addendumFactor: number): number {
  let teeth = 1;
  while ((teeth / 2) * (1 - Math.cos(pressureAngle / RADIAN) ** 2) < addendumFactor - ALIKE) teeth++;
  return teeth;
}
