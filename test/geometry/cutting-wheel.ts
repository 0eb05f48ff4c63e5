import { cutAngles, type Indexing } from '../../src/geometry/cutting/indexing.js';
import { measureWheel } from '../../src/geometry/cutting/measure.js';
import { cutWheel, type Job } from '../../src/geometry/cutting/simulate.js';
import { spaceOf } from '../../src/geometry/cutting/space.js';

/** The class wheel: 60 teeth, module 0.8, trade allowance and full depth 2.95; a pinion of 8. */
export const parts = { addendum: 1.38, dedendum: 1.57, corner: 0.25 };
export const space = spaceOf(60, 8, 0.8, parts);
export const pitchRadius = 24;
export const pitch = 0.8 * Math.PI;

/** One space of the 18-hole circle on a 40:1 head, arc seconds. */
export const HOLE = (360 * 3600) / 40 / 18;

/** Moves of the class wheel, with what went wrong. */
export const moves = (change: Partial<Indexing> = {}): number[] =>
  cutAngles({ teeth: 60, steps: 60, stepError: 0, ...change });

/** Cuts the class wheel with something changed, and measures it. */
export function cutClassWheel(change: Partial<Job> = {}) {
  const job: Job = {
    space,
    cuts: moves(),
    tipAt: space.rootRadius,
    offset: 0,
    blankRadius: space.rimRadius,
    eccentricity: 0,
    ...change,
  };
  const outlines = cutWheel(job);
  return { job, outlines, ...measureWheel(outlines, job, 60, pitchRadius) };
}

/** What the measured teeth may be out by: two chords' straying of the metal, mm. */
export const WITHIN = 0.001;
