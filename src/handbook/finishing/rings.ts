import { type CrossedWheel, edgeAt, windowByRolling } from './window.js';

/** Rings to either side of the middle of a stretch, and their spacing; closer to its ends they grow thinner. */
const RINGS = 110;
const SPACING = 1 / 32;

/**
 * A wheel's windows cut into thin rings about the axis and added up: area, mm², and area times the square of its
 * distance from the axis, mm⁴. Nothing where the windows are closed.
 */
export function windowsByRings(wheel: CrossedWheel): { area: number; moment: number } | undefined {
  const window = windowByRolling(wheel);
  if (!window) return undefined;
  const { hub, rim, half } = window;
  const stretches: [number, number][] = [
    [hub.circle, hub.leaves],
    [hub.leaves, rim.leaves],
    [rim.leaves, rim.circle],
  ];
  const ring = (distance: number): number =>
    2 * wheel.arms * distance * (half - edgeAt(window, distance, wheel.filletRadius));
  const total = (of: (distance: number) => number): number =>
    stretches.reduce((sum, [from, to]) => sum + added(of, from, to), 0);
  return { area: total(ring), moment: total((distance) => distance ** 2 * ring(distance)) };
}

/** A sum over a stretch, by the double exponential rule, which minds no corner at its ends. */
function added(of: (distance: number) => number, from: number, to: number): number {
  let sum = 0;
  for (let k = -RINGS; k <= RINGS; k++) {
    const t = k * SPACING;
    const u = (Math.PI / 2) * Math.sinh(t);
    const weight = ((Math.PI / 2) * Math.cosh(t)) / Math.cosh(u) ** 2;
    sum += weight * of((from + to) / 2 + ((to - from) / 2) * Math.tanh(u));
  }
  return (sum * SPACING * (to - from)) / 2;
}
