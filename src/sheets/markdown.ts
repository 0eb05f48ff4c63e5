import type { Values } from '../problems/problem.js';
import type { Faults, Written } from './fault.js';
import { type Blocks, type Filled, fillTemplate, MARKS } from './fill.js';
import { lessonMarkdown, mathsContext } from './lesson-markdown.js';
import type { SheetStyle } from './model.js';
import type { Numbered, Numbering } from './numbering.js';
import { textTemplates } from './text-templates.js';

/** What a text is set with. */
export interface TextContext {
  readonly values: Values;
  readonly style: SheetStyle;
  readonly blocks?: Blocks;
  /** Of what the text may refer to; none for a problem. */
  readonly numbering?: Numbering;
  readonly faults: Faults;
}

const markdown = lessonMarkdown('html');
markdown.renderer.rules.th_open = (tokens, at, options, _, renderer) => {
  tokens[at]?.attrSet('scope', 'col');
  return renderer.renderToken(tokens, at, options);
};
/** `12–13` stays on its line. */
markdown.renderer.rules.text = (tokens, at) =>
  markdown.utils.escapeHtml(tokens[at]?.content ?? '').replace(/\d+–\d+/g, '<span class="range">$&</span>');

/** An author's text as HTML: values first, then Markdown, and blocks and references put in for their marks. */
export function setText(written: Written, context: TextContext): string {
  const { numbering } = context;
  const { text, blocks, references } = fillTemplate(written, context.values, context.style, {
    ...context,
    templates: textTemplates,
  });
  const maths = mathsContext(written, context);
  const number = numbering && ((label: string) => numbering.equation(label));
  const html = markdown.render(text, { blocks, maths: number ? { ...maths, number } : maths });
  return references.length === 0 ? html : withReferences(html, references, numbering);
}

const MARK = new RegExp(`${MARKS.open}ref(\\d+)${MARKS.close}`, 'g');

/** What a text refers to may come after it, so its number is put in last. */
function withReferences(
  html: string,
  references: Filled['references'],
  numbering: Numbering | undefined,
): string {
  return html.replace(MARK, (_, place: string) => {
    const { to, fail } = references[Number(place)] as Filled['references'][number];
    const found = numbering?.find(to);
    return found
      ? linkTo(found)
      : fail(NOT_THERE(to), 'Take it out, or name a figure that is there.', 'reference');
  });
}

const NOT_THERE = (to: string): string => `there is no figure or formula called ${JSON.stringify(to)} here`;

const linkTo = ({ anchor, said }: Numbered): string =>
  `<a href="#${anchor}">${said.replace(' ', '\u00A0')}</a>`;
