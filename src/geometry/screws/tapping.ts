/** Hole that leaves so much of a full thread, mm. @param engagement percent of `fullDepth`, the depth on one side, mm */
export function holeFor(diameter: number, fullDepth: number, engagement: number): number {
  return diameter - 2 * fullDepth * (engagement / 100);
}

/** Percent of the full thread that a hole leaves. */
export function engagementOf(diameter: number, fullDepth: number, hole: number): number {
  return ((diameter - hole) / 2 / fullDepth) * 100;
}

/** Difference below which two drills are as good as each other, mm. */
const ALIKE = 1e-5;

/** The drill nearest to a size; of two as near, the larger, which spares the tap. At least one drill. */
export function nearestDrill(drills: readonly number[], wanted: number): number {
  const gap = (drill: number): number => Math.abs(drill - wanted);
  const least = Math.min(...drills.map(gap));
  return Math.max(...drills.filter((drill) => gap(drill) <= least + ALIKE));
}
