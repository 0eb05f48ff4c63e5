import type { ExpectedSet } from '../../problems/expected.js';
import { answerLine, box, type Entry, isMapped, mappedDeclaration, responseDeclaration } from './entry.js';
import { all, isLike } from './expressions.js';
import { element } from './xml.js';

const LENGTH = 40;
const NONE = ['none', 'none of them', 'no', 'nothing'];
/** Between two of a list: a comma, a semicolon, `and`, or a space alone. */
const BETWEEN = String.raw`(\s*[,;&]\s*(and\s+)?|\s+(and\s+)?)`;

/** All of several, in any order and with nothing else. */
export function setEntry({ items }: ExpectedSet, id: string): Entry {
  const body = [
    answerLine(box(id, LENGTH)),
    element('p', {}, 'Write all that serve, with commas between, in any order; or write: none.'),
  ];
  const slip = () => undefined;
  if (items.length === 0)
    return { declarations: [mappedDeclaration(id, 'none', NONE)], body, right: isMapped(id), slip };
  const patterns = items.map(patternOf);
  const one = `(${patterns.join('|')})`;
  return {
    declarations: [responseDeclaration(id, 'string', items.map(typed).join(', '))],
    body,
    // Each stands somewhere in a list of nothing but these.
    right: all(
      patterns.map((pattern) =>
        isLike(id, String.raw`\s*(${one}${BETWEEN})*${pattern}(${BETWEEN}${one})*\s*`),
      ),
    ),
    slip,
  };
}

/** Spaces as a keyboard has them, and a minus. */
const typed = (item: string): string => item.replace(/\s+/g, ' ').replace('−', '-');

/** One of the list, in capitals or not: of a measure the unit may be left out, and the nought before its point. */
function patternOf(item: string): string {
  const [, number, unit] = /^(-?\d+(?:\.\d+)?) (\S+)$/.exec(typed(item)) ?? [];
  const text = literal(number ?? typed(item)).replace(/^(-?)0\\\./, '$10?\\.');
  return unit === undefined ? text : `${text}(\\s*${literal(unit)})?`;
}

/** Text as a regular expression that XML Schema and other dialects read alike: not all let `$` or `-` be escaped. */
function literal(text: string): string {
  return text
    .replace(/[\\.^*+?()[\]{}|]/g, '\\$&')
    .replace(/\$/g, '[$]')
    .replace(/ /g, '\\s+')
    .replace(/(?<!\\)\p{L}/gu, (letter) => `[${letter.toLowerCase()}${letter.toUpperCase()}]`);
}
