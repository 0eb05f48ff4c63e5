import { describe, expect, it } from 'vitest';
import type { Kit } from '../../../src/kit/schema.js';
import { keyOf } from '../../../src/problems/kind.js';
import { lessons, sourceOf } from '../lessons.js';
import { tryVariants } from './try.js';

/**
 * Sheets that `npm test` looks at, of all lessons and both workshops. `npm run soak` looks at many more; both routes
 * are worked for 2,000 variants of each kind in `test/problems/routes.test.ts`.
 */
const SHEETS = 1000;

/** Variants of each problem for each of two workshops, so that all lessons together take no longer than they may. */
export const FEW = Math.ceil(SHEETS / 2 / lessons.length);

/**
 * For every lesson: so many variants of each of its problems are drawn for a workshop, with both routes agreeing; each
 * is printed whole; the answer is right in every way to write it; each slip is told what it is, and never right.
 */
export function variantsOf(kit: Kit, variants: number): void {
  describe.each(lessons)(`${kit.kit}, %s`, (lesson) => {
    it(`${variants} variants of each problem, printed and judged`, () => {
      const source = sourceOf(lesson);
      const { faults, answers, judged } = tryVariants(source, kit, variants);
      for (const [problem, fault] of faults) expect.soft(fault, problem).toBe('');
      // A problem whose answer never changes is not one.
      for (const [problem, different] of answers) expect(different.size, problem).toBeGreaterThan(1);
      expect(new Set([...answers.keys()].map((name) => keyOf({ name })))).toEqual(
        new Set(Object.keys(source.matter.problems)),
      );
      expect(judged.right).toBeGreaterThan(1000);
      expect(judged.slips).toBeGreaterThan(100);
      expect(judged.outside).toBeGreaterThan(100);
    }, 3_600_000);
  });
}
