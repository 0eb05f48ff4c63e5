import { describe, expect, it } from 'vitest';
import { kits, lessons } from '../lesson/lessons.js';
import { routesOfKinds } from './routes-of-kinds.js';

/** Of each kind for each of two workshops on sheets in each of two units; all, where there are no more. */
const VARIANTS = 500;

describe.each(lessons)('every kind of problem of %s', (lesson) => {
  it(`agrees by both routes, ${4 * VARIANTS} variants of each`, () => {
    for (const kit of kits)
      for (const units of ['mm', 'inch'] as const)
        for (const { kind, variants, all, largest } of routesOfKinds(lesson, kit, units, VARIANTS)) {
          expect(all ? variants > 1 : variants === VARIANTS, kind).toBe(true);
          if (largest) expect(largest.apart, kind).toBeLessThanOrEqual(largest.allowed);
        }
  });
});
