import type { Lesson } from '../lesson/lesson.js';
import type { Mark, Option, Part, Problem } from '../problems/problem.js';
import type { Faults, Written } from './fault.js';
import { figureBlock } from './figure-block.js';
import type { Blocks } from './fill.js';
import { noteGlyphsIn } from './glyphs.js';
import { setText } from './markdown.js';
import type { SheetStyle } from './model.js';

/** What a learner is told of a problem's kind; the plain ones need no word. */
export const LEVELS = { a: '', b: '', c: 'two steps', d: 'think first' } as const;

/** `M1` is one mark. */
export function marksIn(marks: readonly Mark[]): number {
  return marks.reduce((sum, { code }) => sum + Number(/\d+$/.exec(code)?.[0] ?? 1), 0);
}

/** All the marks of a problem. */
export function marksOf({ parts }: Problem): number {
  return parts.reduce((sum, part) => sum + marksIn(part.marks), 0);
}

/** `(a)` before a part of several. */
export function letterOf(place: number, { parts }: Problem): string {
  return parts.length > 1 ? `(${String.fromCharCode(97 + place)})` : '';
}

/** A part with its words as HTML. */
export interface AskedPart {
  readonly part: Part;
  readonly asked: string;
  readonly options: readonly Option[];
}

/** The words of a problem, and of its parts, as HTML. */
export function askedOf(
  lesson: Lesson,
  problem: Problem,
  style: SheetStyle,
  faults: Faults,
): { readonly ask: string; readonly parts: readonly AskedPart[] } {
  // What is printed here and no more: the key has words of its own, which are not written until they are wanted.
  const { ask, shown, parts, values } = problem;
  const texts = [ask, shown, ...parts.map(({ ask, unit, options, shown }) => [ask, unit, options, shown])];
  noteGlyphsIn([texts, Object.values(values).filter(isText)], aboutOf(lesson, problem), faults);
  const set = setterOf(lesson, problem, style, faults);
  return {
    ask: set(ask),
    parts: parts.map((part) => ({
      part,
      asked: set(part.ask),
      options: (part.options ?? []).map(({ letter, text }) => ({ letter, text: set(text) })),
    })),
  };
}

/** Sets the texts of a problem, its values in. */
export function setterOf(
  lesson: Lesson,
  problem: Problem,
  style: SheetStyle,
  faults: Faults,
): (text: string) => string {
  return (text) => {
    const written: Written = { ...aboutOf(lesson, problem), text, line: undefined };
    return text && setText(written, { values: problem.values, style, blocks: blocksFor(style), faults });
  };
}

const isText = (value: unknown): boolean => typeof value === 'string';

/** Gathers the characters of a problem that cannot be printed. */
export function noteProblemGlyphs(lesson: Lesson, problem: Problem, faults: Faults): void {
  noteGlyphsIn(problem, aboutOf(lesson, problem), faults);
}

/** Whose words they are, for a message. */
export function aboutOf({ file }: Lesson, { name }: Problem): Pick<Written, 'file' | 'about'> {
  return { file, about: `problem ${name}` };
}

/** A problem may have a figure; what is worked or numbered belongs in the lesson. */
function blocksFor(style: SheetStyle): Blocks {
  return {
    figure: (name, given, fail) => figureBlock(name, given, { number: '', style, fail }),
    worked: (_, __, fail) =>
      fail('a problem may not show a working', 'Ask for it, or show it in the lesson.'),
    problems: (fail) => fail('problems stand in the lesson', 'Take it out.'),
  };
}
