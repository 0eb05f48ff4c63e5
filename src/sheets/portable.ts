import { InputError } from '../diagnostics/errors.js';
import { drawFigure } from '../figures/index.js';
import type { Lesson } from '../lesson/lesson.js';
import type { Problem } from '../problems/problem.js';
import type { Shown } from '../problems/shown.js';
import type { Faults, Written } from './fault.js';
import { type Blocks, fillTemplate } from './fill.js';
import { lessonMarkdown, mathsContext } from './markdown.js';
import type { SheetStyle } from './model.js';
import { plainText } from './plain-text.js';
import { shownRows } from './portable-shown.js';
import { aboutOf, noteProblemGlyphs } from './problem-view.js';
import { settingOf } from './setting.js';

/** An author's text for another program. */
export interface PortableText {
  /** XHTML blocks; formulas are MathML, and a figure is `<img src="…">`. */
  readonly xhtml: string;
  /** No marks of any kind; a formula is TeX between `$` signs, and a figure is told in words. */
  readonly plain: string;
  readonly figures: readonly PortableFigure[];
}

/** A drawing that goes along as a file. */
export interface PortableFigure {
  readonly file: string;
  readonly svg: string;
}

/** The words of a problem and of its parts, in their order, each with what is printed under it. */
export interface PortableProblem {
  readonly ask: PortableText;
  readonly parts: readonly PortablePart[];
}

export interface PortablePart extends PortableText {
  /** What there is to choose from or to put in order. */
  readonly options: readonly PortableOption[];
}

export interface PortableOption extends PortableText {
  readonly letter: string;
}

/** Where the figures of a problem go. */
export interface FigurePlace {
  /** The folder, as a document names it: `../figures/`. */
  readonly folder: string;
  /** The start of each file's name, unlike that of any other problem. */
  readonly name: string;
}

const markdown = lessonMarkdown('mathml');
const { escapeHtml } = markdown.utils;
/** How a column is aligned is the other program's affair. */
markdown.renderer.rules.th_open = () => '<th scope="col">';
markdown.renderer.rules.td_open = () => '<td>';

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
  const { values } = problem;
  const set = (text: string): PortableText => {
    const figures: (PortableFigure & { readonly label: string })[] = [];
    const blocks: Blocks = {
      figure: (name, { caption: _, ...given }, fail) => {
        try {
          const { svg, label } = drawFigure(name, given, settingOf(style));
          const file = `${place.name}-${++drawn}.svg`;
          figures.push({ file, svg, label });
          return `<p><img src="${escapeHtml(place.folder + file)}" alt="${escapeHtml(label)}"/></p>`;
        } catch (error) {
          if (!(error instanceof InputError)) throw error;
          return fail(error.message, 'Change the values given to the figure.', 'figure');
        }
      },
      worked: (_, __, fail) => fail('a problem may not show a working', 'Ask for it.'),
      problems: (fail) => fail('problems stand in the lesson', 'Take it out.'),
    };
    const written: Written = { ...aboutOf(lesson, problem), text, line: undefined };
    const filled = fillTemplate(written, values, style, { blocks, faults });
    const maths = mathsContext(written, { values, style, faults });
    const env = { blocks: filled.blocks, maths };
    const tokens = markdown.parse(filled.text, env);
    return {
      xhtml: markdown.renderer.render(tokens, markdown.options, env).trim(),
      plain: plainText(tokens, (place) => figures[place]?.label ?? '', maths),
      figures: figures.map(({ file, svg }) => ({ file, svg })),
    };
  };
  return {
    ask: withShown(set(problem.ask), problem.shown),
    parts: problem.parts.map(({ ask, shown, options = [] }) => ({
      ...withShown(set(ask), shown),
      options: options.map(({ letter, text }) => ({ letter, ...set(text) })),
    })),
  };
}

/** A text, and under it what is printed of a working or a table. */
function withShown(text: PortableText, shown: Shown | undefined): PortableText {
  if (!shown) return text;
  const rows = shownRows(shown);
  const plain = [text.plain, ...rows.map((cells) => cells.join('; '))]
    .filter((line) => line !== '')
    .join('\n');
  const [heads = [], ...more] = rows.map((cells) => cells.map(escapeHtml));
  const xhtml =
    shown.kind === 'table'
      ? `<table><thead>${row('th', heads)}</thead><tbody>${more.map((cells) => row('td', cells)).join('')}</tbody></table>`
      : [heads, ...more].map((cells) => `<p>${cells.join('')}</p>`).join('\n');
  return { ...text, plain, xhtml: `${text.xhtml}\n${xhtml}`.trim() };
}

const row = (cell: string, cells: readonly string[]): string =>
  `<tr>${cells.map((text) => `<${cell}>${text}</${cell}>`).join('')}</tr>`;
