import type { Lesson } from '../../lesson/lesson.js';
import type { Problem } from '../../problems/problem.js';
import type { Shown } from '../../problems/shown.js';
import type { Faults } from '../../sheets/fault.js';
import type { SheetStyle } from '../../sheets/model.js';
import { type FigurePlace, type PortableProblem, portableProblem } from '../../sheets/portable.js';
import { shownBlocks } from './shown.js';

/** The words of an item. */
export interface ItemWords extends PortableProblem {
  /** Of the same problem with other numbers, which stands before it with its working. */
  readonly example?: PortableProblem;
}

/**
 * The words of a problem and of its example, with what is printed under its questions.
 *
 * @param faults gathers what is wrong with the words
 */
export function itemWords(
  lesson: Lesson,
  problem: Problem,
  { style, place }: { readonly style: SheetStyle; readonly place: FigurePlace },
  faults: Faults,
): ItemWords {
  const { example } = problem;
  const words = wordsOf(lesson, problem, { style, place }, faults);
  if (!example) return words;
  const own = { ...place, name: `${place.name}-example` };
  return { ...words, example: wordsOf(lesson, example, { style, place: own }, faults) };
}

function wordsOf(
  lesson: Lesson,
  problem: Problem,
  setting: { readonly style: SheetStyle; readonly place: FigurePlace },
  faults: Faults,
): PortableProblem {
  const { ask, parts } = portableProblem(lesson, problem, setting, faults);
  return {
    ask: withShown(ask, problem.shown),
    parts: parts.map((part, at) => withShown(part, problem.parts[at]?.shown)),
  };
}

function withShown<T extends { readonly xhtml: string }>(text: T, shown: Shown | undefined): T {
  const blocks = shown ? shownBlocks(shown).map(({ xml }) => xml) : [];
  return { ...text, xhtml: [text.xhtml, ...blocks].join('\n').trim() };
}
