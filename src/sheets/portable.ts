import type { Lesson } from '../lesson/lesson.js';
import type { Problem } from '../problems/problem.js';
import type { Shown } from '../problems/shown.js';
import type { Faults } from './fault.js';
import type { SheetStyle } from './model.js';
import { shownRows } from './portable-shown.js';
import { escapeHtml, type PortableText, portableText } from './portable-text.js';
import { aboutOf, noteProblemGlyphs } from './problem-view.js';
import { textTemplates } from './text-templates.js';

/** An author's text, and the drawings that go along with it; in the XHTML each is `<img src="…">`. */
export interface IllustratedText extends PortableText {
  readonly figures: readonly PortableFigure[];
}

/** A drawing that goes along as a file. */
export interface PortableFigure {
  readonly file: string;
  readonly svg: string;
}

/** The words of a problem and of its parts, in their order, each with what is printed under it in the plain text. */
export interface PortableProblem {
  readonly ask: IllustratedText;
  readonly parts: readonly PortablePart[];
}

export interface PortablePart extends IllustratedText {
  /** What there is to choose from or to put in order. */
  readonly options: readonly PortableOption[];
}

export interface PortableOption extends IllustratedText {
  readonly letter: string;
}

/** Where the figures of a problem go. */
export interface FigurePlace {
  /** The folder, as a document names it: `../figures/`. */
  readonly folder: string;
  /** The start of each file's name, unlike that of any other problem. */
  readonly name: string;
}

/**
 * A problem's words with its values in, for another program.
 *
 * @param faults gathers what is wrong with the words
 */
export function portableProblem(
  lesson: Lesson,
  problem: Problem,
  { style, place }: { readonly style: SheetStyle; readonly place: FigurePlace },
  faults: Faults,
): PortableProblem {
  noteProblemGlyphs(lesson, problem, faults);
  let drawn = 0;
  const set = (text: string): IllustratedText => {
    const figures: PortableFigure[] = [];
    const words = portableText(
      { ...aboutOf(lesson, problem), text, line: undefined },
      {
        values: problem.values,
        style,
        templates: textTemplates,
        faults,
        figure: ({ svg, label }) => {
          const file = `${place.name}-${++drawn}.svg`;
          figures.push({ file, svg });
          return `<p><img src="${escapeHtml(place.folder + file)}" alt="${escapeHtml(label)}"/></p>`;
        },
      },
    );
    return { ...words, figures };
  };
  return {
    ask: withShown(set(problem.ask), problem.shown),
    parts: problem.parts.map(({ ask, shown, options = [] }) => ({
      ...withShown(set(ask), shown),
      options: options.map(({ letter, text }) => ({ letter, ...set(text) })),
    })),
  };
}

/** A text, and under it in plain what is printed of a working or a table. */
function withShown(text: IllustratedText, shown: Shown | undefined): IllustratedText {
  if (!shown) return text;
  const rows = shownRows(shown).map((cells) => cells.join('; '));
  return { ...text, plain: [text.plain, ...rows].filter((line) => line !== '').join('\n') };
}
