import type { Lesson } from '../lesson/lesson.js';
import type { Option, Part, Problem } from '../problems/problem.js';
import type { Faults, Written } from './fault.js';
import { figureBlock } from './figure-block.js';
import type { Blocks } from './fill.js';
import { noteGlyphsIn } from './glyphs.js';
import { setText } from './markdown.js';
import type { SheetStyle } from './model.js';

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
    ask: withBlanks(set(ask)),
    parts: parts.map((part) => ({
      part,
      asked: withBlanks(set(part.ask)),
      options: (part.options ?? []).map(({ letter, text }) => ({ letter, text: set(text) })),
    })),
  };
}

const BLANK = '<span class="blank gap" role="img" aria-label="blank"></span>';

/** Four low lines in a text are a gap to be filled: it is made wide enough to write in. */
function withBlanks(html: string): string {
  return html.replace(/(= |\()?_{4,}/g, (_, before) =>
    before ? `<span class="whole">${before}${BLANK}</span>` : BLANK,
  );
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

/** Width of the column for a problem's number, in ems: its figures stand beside that. */
const NUMBERED = 3.2;

/** A problem may have a figure; what is worked or numbered belongs in the lesson. */
function blocksFor(style: SheetStyle): Blocks {
  return {
    figure: (name, given, fail) => figureBlock(name, given, { style, fail, inset: NUMBERED }),
    worked: (_, __, fail) =>
      fail('a problem may not show a working', 'Ask for it, or show it in the lesson.'),
    problems: (fail) => fail('problems stand in the lesson', 'Take it out.'),
  };
}
