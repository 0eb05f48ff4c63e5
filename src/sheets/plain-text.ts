import type { Token } from 'markdown-it';
import { type MathsContext, withValues } from './maths-rule.js';

/**
 * Markdown that has been read, as plain text: a paragraph, an item or a row of a table is a line. A formula stays TeX
 * between `$` signs.
 *
 * @param figure the words for a figure, by its place among those of the text
 */
export function plainText(
  tokens: readonly Token[],
  figure: (place: number) => string,
  maths: MathsContext,
): string {
  const one = (token: Token): string => {
    switch (token.type) {
      case 'inline':
        return (token.children ?? []).map(one).join('');
      case 'text':
      case 'code_inline':
      case 'code_block':
      case 'fence':
        return token.content;
      case 'softbreak':
        return ' ';
      case 'maths_inline':
      case 'maths_block':
        return `$${withValues(token.content, (name, call) => maths.value(name) ?? call)}$${token.block ? '\n' : ''}`;
      case 'placeholder':
        return `[${figure(Number(token.content))}]\n`;
      case 'list_item_open':
        return token.info === '' ? '– ' : `${token.info}${token.markup} `;
      case 'th_close':
      case 'td_close':
        return '; ';
      case 'hardbreak':
      case 'paragraph_close':
      case 'heading_close':
      case 'tr_close':
        return '\n';
      default:
        return '';
    }
  };
  const lines = tokens.map(one).join('').split('\n');
  return lines
    .map((line) => line.replace(/; $/, '').trim())
    .filter((line) => line !== '')
    .join('\n');
}
