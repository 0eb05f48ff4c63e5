import type { Values } from '../problems/problem.js';
import type { Faults, Written } from './fault.js';
import { type Blocks, fillTemplate } from './fill.js';
import { lessonMarkdown, mathsContext } from './lesson-markdown.js';
import type { SheetStyle } from './model.js';
import { textTemplates } from './text-templates.js';

/** What a text is set with. */
export interface TextContext {
  readonly values: Values;
  readonly style: SheetStyle;
  readonly blocks?: Blocks;
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

/** An author's text as HTML: values first, then Markdown, and blocks put in for their placeholders. */
export function setText(written: Written, context: TextContext): string {
  const { text, blocks } = fillTemplate(written, context.values, context.style, {
    ...context,
    templates: textTemplates,
  });
  return markdown.render(text, { blocks, maths: mathsContext(written, context) });
}
