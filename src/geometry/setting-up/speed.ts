/** Spindle speed at which a rim of this diameter (mm) moves so many metres a minute, rev/min. */
export function turnsForSpeed(metresPerMinute: number, diameter: number): number {
  const rim = (Math.PI * diameter) / 1000;
  return metresPerMinute / rim;
}

/** Speed of a rim of this diameter (mm) at so many turns a minute, m/min. */
export function speedOfRim(revPerMin: number, diameter: number): number {
  const rim = (Math.PI * diameter) / 1000;
  return revPerMin * rim;
}

/** Feed of the work under a cutter that takes so much at each of its teeth, mm/min. */
export function feedOfWork(revPerMin: number, cutterTeeth: number, feedPerTooth: number): number {
  const perTurn = cutterTeeth * feedPerTooth;
  return revPerMin * perTurn;
}

/** How often a tooth of the cutter strikes the work, 1/s. */
export function strikesPerSecond(revPerMin: number, cutterTeeth: number): number {
  const turnsPerSecond = revPerMin / 60;
  return turnsPerSecond * cutterTeeth;
}
