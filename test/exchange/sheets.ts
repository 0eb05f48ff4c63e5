import { openKits } from '../../src/kit/open.js';
import type { Kit } from '../../src/kit/schema.js';
import { problemsOf } from '../../src/lesson/class-set.js';
import { choose } from '../../src/pack/choose.js';
import { Gathering, openLessons } from '../../src/pack/lessons.js';
import type { ProblemSheet, SheetStyle } from '../../src/sheets/model.js';

export const KITS = ['harrow-lane', 'mill-yard'] as const;
export const UNITS = ['mm', 'inch'] as const;
export const VARIANT = '7KQ-2M4-X';

export const styleIn = (units: SheetStyle['units']): SheetStyle => ({ paper: 'a4', print: 'plain', units });

/** Draws sheets of the sample course for a workshop, one for each variant. */
export function sheetsFor(
  kitName: string,
  units: SheetStyle['units'],
): (variant: string, learner?: string) => ProblemSheet {
  const [kit] = openKits([`lessons/kits/${kitName}.yaml`]) as [Kit];
  const gathering = new Gathering();
  const setting = { kit, units };
  const { course } = choose([]);
  const lessons = openLessons(course.lessons, setting, gathering);
  gathering.demandNone();
  return (variant, learner) => ({
    head: { course: course.title, club: course.club, kit: kit.kit },
    variant,
    ...(learner === undefined ? {} : { learner }),
    lessons: lessons.map((one) => ({ lesson: one.lesson, problems: problemsOf(one, variant, setting) })),
  });
}

/** The sample course's problems as they are drawn for a workshop. */
export function sampleSheet(
  kitName: string,
  units: SheetStyle['units'],
  variant = VARIANT,
  learner?: string,
): ProblemSheet {
  return sheetsFor(kitName, units)(variant, learner);
}

/** The file of a problem in a package. */
export const itemFile = (lesson: number, problem: { readonly name: string }, variant: string): string =>
  `items/lesson_${lesson + 1}_${problem.name.replace('.', '_')}_${variant}.xml`;
