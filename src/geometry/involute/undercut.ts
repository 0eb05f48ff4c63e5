/**
 * Teeth, not a whole number, at which a rack first leaves the flank whole. The rack's flank meets the line of action
 * beyond the foot of the wheel's own radius on it when the count is smaller, and cuts there into what it has made.
 * From the pitch point along the line of action, the rack's corner lies addendum/sin off, the foot radius × sin.
 *
 * @param pressureAngle radians
 * @param addendumFactor depth of the rack's straight flank below its pitch line, in modules
 */
export function undercutLimit(pressureAngle: number, addendumFactor: number): number {
  const corner = addendumFactor / Math.sin(pressureAngle);
  const footPerTooth = Math.sin(pressureAngle) / 2;
  return corner / footPerTooth;
}
