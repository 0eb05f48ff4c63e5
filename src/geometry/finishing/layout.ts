import { distance, type Point, polar } from '../curves/point.js';
import { type Arm, angleOf, armSide } from './arm.js';

const DEGREES = 180 / Math.PI;

/** What is marked out before the windows: lengths mm, angles degrees. */
export function markingOut(arms: number, arm: Arm) {
  const step = (2 * Math.PI) / arms;
  const { atHub, atRim } = armSide(arm);
  const first: Point = polar(arm.rimRadius, 0);
  // The next arm's nearer side meets the hub as far below that arm as this one's does above its own.
  const next = polar(arm.hubRadius, step - angleOf(atHub));
  const overlap = angleOf(atHub) > step / 2 ? -1 : 1;
  return {
    chord: distance(first, polar(arm.rimRadius, step)),
    halfAngleAtRim: angleOf(atRim) * DEGREES,
    halfAngleAtHub: angleOf(atHub) * DEGREES,
    openingAtHub: overlap * distance(atHub, next),
  };
}
