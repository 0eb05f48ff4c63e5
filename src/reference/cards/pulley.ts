import type { Kit } from '../../kit/schema.js';

/** The next pulley down, or one that is within a twentieth above; none where the kit has none so slow. */
export const pulleyFor = (revPerMin: number, { spindleSpeeds }: Kit): number | undefined =>
  spindleSpeeds.filter((one) => one <= 1.05 * revPerMin).sort((a, b) => b - a)[0];
