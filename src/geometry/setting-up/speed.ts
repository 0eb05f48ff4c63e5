/** Spindle speed at which a rim of this diameter (mm) moves so many metres a minute, rev/min. */
export function turnsForSpeed(metresPerMinute: number, diameter: number): number {
  const rim = (Math.PI * diameter) / 1000;
  return metresPerMinute / rim;
}
