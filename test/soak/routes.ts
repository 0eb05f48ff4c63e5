import { describe, expect, it } from 'vitest';
import type { Kit } from '../../src/kit/schema.js';
import type { UnitSystem } from '../../src/units/format.js';
import { lessons } from '../lesson/lessons.js';
import { type RoutesOfKind, routesOfKinds } from '../problems/routes-of-kinds.js';

/** Of each kind, shared between two workshops and two systems of units: `ROUTES=1000000 npm run soak` for more. */
const VARIANTS = Number(process.env.ROUTES ?? 100_000) / 4;
const bothUnits: readonly UnitSystem[] = ['mm', 'inch'];

/** Works a workshop's share of the variants of every kind of problem by both routes, and reports how near they came. */
export function routesFor(kit: Kit): void {
  describe.each(lessons)(`${kit.kit}, %s`, (lesson) => {
    it('agrees by both routes', () => {
      const done = bothUnits.flatMap((units) =>
        routesOfKinds(lesson, kit, units, VARIANTS).map((one) => ({ ...one, units })),
      );
      for (const { kind, all, variants } of done)
        expect(all ? variants > 1 : variants === VARIANTS, kind).toBe(true);
      console.log([`${kit.kit}, ${lesson}`, ...done.map(line)].join('\n'));
    }, 3_600_000);
  });
}

/** `08 over, mm: 25000 drawn, 75000 compared; largest 2.1e-14 of 1e-9 allowed, mesh.depth gap`. */
function line({
  kind,
  units,
  variants,
  all,
  compared,
  largest,
}: RoutesOfKind & { units: UnitSystem }): string {
  const most = largest
    ? `largest ${largest.apart.toPrecision(2)} of ${largest.allowed.toPrecision(2)} allowed, ${largest.of}, with ${JSON.stringify(largest.with)}`
    : 'all exact';
  return `  ${kind}, ${units}: ${variants} ${all ? 'are all' : 'drawn'}, ${compared} compared; ${most}`;
}
