import { intervalsAt, leftOver, type Setting, wallOf } from './wheel.js';

/** Rings the cut part of a wheel is divided into. */
const RINGS = 240;

/**
 * Metal left of a blank after all cuts, mm²: solid up to the bottom of the cuts, and from there ring by ring what no
 * cut takes and the blank has. The slant of a bottom that is off centre is levelled, which moves no area to speak of.
 */
export function metalLeft(setting: Setting): number {
  const { blankRadius, eccentricity, rootRadius, offset } = setting;
  const wall = wallOf(setting);
  const bottom = Math.hypot(rootRadius, offset);
  const top = blankRadius + Math.abs(eccentricity);
  let sum = Math.PI * bottom * bottom;
  for (let i = 0; i < RINGS; i++) {
    // Rings are thinner near the bottom, where a corner leaves it steeply.
    const [u, v] = [i / RINGS, (i + 1) / RINGS];
    const [inner, outer] = [bottom + (top - bottom) * u * u, bottom + (top - bottom) * v * v];
    const radius = (inner + outer) / 2;
    const left = leftOver(intervalsAt(setting, wall, radius, 0));
    const half = blankHalf(blankRadius, eccentricity, radius);
    const angle = left.reduce((total, [from, to]) => total + within(from, to, half), 0);
    sum += (angle / 360) * Math.PI * (outer * outer - inner * inner);
  }
  return sum;
}

/** Half the angle about the first cut in which the blank reaches a radius, degrees. */
function blankHalf(blankRadius: number, eccentricity: number, radius: number): number {
  if (radius <= blankRadius - eccentricity) return 180;
  const cosine = (radius ** 2 + eccentricity ** 2 - blankRadius ** 2) / (2 * radius * eccentricity);
  return (Math.acos(Math.max(-1, Math.min(1, cosine))) * 180) / Math.PI;
}

/** How much of an interval lies within so much of 0 on either hand, or of any whole turn on. */
function within(from: number, to: number, half: number): number {
  if (half === 180) return to - from;
  let sum = 0;
  for (const turn of [-360, 0, 360, 720])
    sum += Math.max(0, Math.min(to, turn + half) - Math.max(from, turn - half));
  return sum;
}
