import { exampleKey, type Lesson } from '../lesson/lesson.js';
import type { ProblemKind } from '../problems/kind.js';
import { counted } from '../units/words.js';
import { checkViews } from './check-view.js';
import { figureBlock } from './figure-block.js';
import type { Blocks } from './fill.js';
import type { SheetStyle } from './model.js';
import type { Numbering } from './numbering.js';
import { render } from './templates.js';
import { equals, isTooWide, stepView, valueView } from './working-view.js';

/** What a lesson's text asks for: its workings, its figures, numbered as they come, and where its problems are. */
export function handoutBlocks(
  lesson: Lesson,
  style: SheetStyle,
  {
    numbering,
    problemsAt = 'on the problem sheet',
  }: { readonly numbering: Numbering; readonly problemsAt?: string | undefined },
): Blocks {
  const chapter = chapterOf(lesson);
  return {
    worked: (name, show, fail) => {
      const working = lesson.workings.get(exampleKey(name, show));
      if (!working)
        return fail(
          `there is no working called "${name}"`,
          `Known here: ${[...lesson.workings.keys()].join(', ') || 'none'}.`,
        );
      return render('worked', {
        title: working.title,
        given: working.given.map((value) => ({ ...valueView(value), short: value.value.length <= SHORT })),
        stacked: isTooWide(working.steps, style),
        steps: working.steps.map((step) => stepView(step)),
        found: working.found.map(valueView),
        many: working.found.length > 5,
        checks: checkViews(working.checks),
        equals: equals(),
      });
    },
    figure: (name, { label, ...given }, fail) => {
      const numbered = numbering.figure(name, typeof label === 'string' ? label : undefined);
      return figureBlock(name, given, { numbered, style, fail });
    },
    problems: () =>
      lesson.problems.length === 0
        ? ''
        : render('problems-box', {
            at: problemsAt,
            first: `${chapter}.1`,
            last: lesson.problems.length > 1 ? `${chapter}.${lesson.problems.length}` : '',
            marks: counted(
              lesson.problems.reduce((sum, kind) => sum + marksOf(kind), 0),
              'mark',
            ),
          }),
  };
}

/** Letters of a value that stays on one line with its name; a list of circles takes several. */
const SHORT = 40;

/** What the numbers of a lesson's figures and problems start with. */
export const chapterOf = ({ number }: Lesson): number => number ?? 1;

/** All the marks of a kind: an estimate, and which line is wrong, have one of their own. */
function marksOf({ declared }: ProblemKind): number {
  return (declared.parts ?? [declared]).reduce(
    (sum, { marks, estimate }) =>
      sum + marks.method + marks.accuracy + marks.independent + (estimate === undefined ? 0 : 1),
    declared.errors === undefined ? 0 : 1,
  );
}
