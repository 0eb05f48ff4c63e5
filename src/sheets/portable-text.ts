import { InputError } from '../diagnostics/errors.js';
import { drawFigure, type Figure } from '../figures/index.js';
import type { Values } from '../problems/problem.js';
import type { Faults, Written } from './fault.js';
import { type Blocks, fillTemplate, type Templates } from './fill.js';
import { lessonMarkdown, mathsContext } from './lesson-markdown.js';
import type { SheetStyle } from './model.js';
import { plainText } from './plain-text.js';
import { settingOf } from './setting.js';

/** An author's text for another program. */
export interface PortableText {
  /** XHTML blocks; formulas are MathML. */
  readonly xhtml: string;
  /** No marks of any kind; a formula is TeX between `$` signs, and a figure is told in words. */
  readonly plain: string;
}

/** What the texts of a problem are set with. */
export interface PortableContext {
  readonly values: Values;
  readonly style: SheetStyle;
  readonly templates: Templates;
  readonly faults: Faults;
  /** XHTML for a figure that was drawn. */
  figure(drawn: Figure): string;
}

const markdown = lessonMarkdown('mathml');
/** How a column is aligned is the other program's affair. */
markdown.renderer.rules.th_open = () => '<th scope="col">';
markdown.renderer.rules.td_open = () => '<td>';

/** Text with the signs that XML keeps for itself written otherwise. */
export const { escapeHtml } = markdown.utils;

/** An author's text with its values in, for another program. */
export function portableText(written: Written, context: PortableContext): PortableText {
  const { values, style, faults } = context;
  const labels: string[] = [];
  const blocks: Blocks = {
    figure: (name, { caption: _, ...given }, fail) => {
      try {
        const drawn = drawFigure(name, given, settingOf(style));
        labels.push(drawn.label);
        return context.figure(drawn);
      } catch (error) {
        if (!(error instanceof InputError)) throw error;
        return fail(error.message, 'Change the values given to the figure.', 'figure');
      }
    },
    worked: (_, __, fail) => fail('a problem may not show a working', 'Ask for it.'),
    problems: (fail) => fail('problems stand in the lesson', 'Take it out.'),
  };
  const filled = fillTemplate(written, values, style, { ...context, blocks });
  const maths = mathsContext(written, { values, faults });
  const env = { blocks: filled.blocks, maths };
  const tokens = markdown.parse(filled.text, env);
  return {
    xhtml: markdown.renderer.render(tokens, markdown.options, env).trim(),
    plain: plainText(tokens, (place) => labels[place] ?? '', maths),
  };
}
