import type { Kit } from '../../src/kit/schema.js';
import { prepareLesson } from '../../src/lesson/prepare.js';
import { keyOf, type ProblemKind } from '../../src/problems/kind.js';
import type { UnitSystem } from '../../src/units/format.js';
import { sourceOf } from '../lesson/lessons.js';
import { bothRoutes, type Routes } from './routes.js';

/** What came of one kind of problem of one lesson. */
export interface RoutesOfKind extends Routes {
  readonly kind: string;
}

/** Variants of every kind of problem of a lesson, for a workshop and a system of units. */
export function routesOfKinds(lesson: string, kit: Kit, units: UnitSystem, most: number): RoutesOfKind[] {
  const setting = { kit, units };
  const { problems } = prepareLesson(sourceOf(lesson), setting).lesson;
  // One that is asked several times is one kind.
  const kinds = new Map(problems.map((kind): [string, ProblemKind] => [keyOf(kind), kind]));
  return [...kinds].map(([key, kind]) => ({
    kind: `${lesson.slice(0, 2)} ${key}`,
    ...bothRoutes(kind, setting, most),
  }));
}
