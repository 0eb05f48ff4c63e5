/** ISO 54 series I and II with the fine modules of clock work, mm (from memory), rising. */
export const standardModules: readonly number[] = [
  0.07, 0.08, 0.09, 0.1, 0.12, 0.15, 0.2, 0.25, 0.3, 0.35, 0.4, 0.45, 0.5, 0.55, 0.6, 0.65, 0.7, 0.75, 0.8,
  0.85, 0.9, 0.95, 1, 1.125, 1.25, 1.375, 1.5, 1.75, 2, 2.25, 2.5, 2.75, 3, 3.5, 4, 4.5, 5, 5.5, 6, 7, 8, 9,
  10, 11, 12, 14, 16, 18, 20,
];

/** The standard module nearest to one measured, by walking up the list past the midpoints; the smaller at a tie. */
export function nearestModule(module: number): number {
  let at = 0;
  for (; at < standardModules.length - 1; at++)
    if (module <= ((standardModules[at] ?? 0) + (standardModules[at + 1] ?? 0)) / 2) break;
  return standardModules[at] ?? 0;
}

/** How large a tooth is, in whichever of the three ways it was told. */
interface ToldSize {
  readonly module?: number | undefined;
  readonly diametralPitch?: number | undefined;
  readonly circularPitch?: number | undefined;
}

/** Module by a wheel of 120 teeth: its circumference, from the pitch, over pi, is its diameter; shared between the teeth. */
export function moduleByWheel({ module, diametralPitch, circularPitch }: ToldSize): number {
  if (module !== undefined) return module;
  // As many teeth as the diametral pitch stand round a circle of one inch.
  const pitch = circularPitch ?? (Math.PI * 25.4) / (diametralPitch ?? Number.NaN);
  return (120 * pitch) / Math.PI / 120;
}
