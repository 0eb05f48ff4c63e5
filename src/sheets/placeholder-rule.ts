import type { MarkdownIt, StateBlock } from 'markdown-it';
import { MARKS } from './fill.js';

const PLACEHOLDER = new RegExp(`^\\s*${MARKS.open}(\\d+)${MARKS.close}\\s*$`);

/** Puts figures and worked examples in for their placeholders: what is in them never passes through Markdown. */
export function placeholderRule(md: MarkdownIt): void {
  md.block.ruler.before('table', 'placeholder', placeholder, {
    alt: ['paragraph', 'blockquote', 'list', 'table', 'reference'],
  });
  md.renderer.rules.placeholder = (tokens, at, _, env) => {
    const blocks = (env?.blocks ?? []) as readonly string[];
    return `${blocks[Number(tokens[at]?.content)] ?? ''}\n`;
  };
}

function placeholder(state: StateBlock, first: number, _last: number, silent: boolean): boolean {
  const [, number] = PLACEHOLDER.exec(state.src.slice(state.bMarks[first], state.eMarks[first])) ?? [];
  if (number === undefined) return false;
  if (silent) return true;
  const token = state.push('placeholder', '', 0);
  token.content = number;
  token.map = [first, first + 1];
  state.line = first + 1;
  return true;
}
