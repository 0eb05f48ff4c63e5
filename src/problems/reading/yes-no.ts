import { isSpelt } from './spelling.js';
import { tokensOf } from './tokens.js';

const words = (text: string): ReadonlySet<string> => new Set(text.split(/\s+/));

const YES = words('yes y yep yeah ok okay true');
const NO = words('no n nope nay false');
/** Words that deny wherever they stand. */
const DENIES = words('no not none never impossible');
/** Words that say yes where nothing denies. */
const ASSERTS = words('possible can could will');
/** After `no` these make one thing with it: no circle, no way. */
const OF_NO = words('way circle circles plate plates head');
const NEUTRAL = words(
  'it is would does do one be done did its work the this that these those our on with by at all hole holes you we in any have made set cut indexed divided of them there',
);
const SPELT = ['possible', 'impossible'];

/** A tidied answer with every way to say not said as `not`: `can't be done` is `can not be done`. */
export function withNot(text: string): string {
  return text
    .replace(/\bcan ?not\b|\bcan'?t\b/g, 'can not')
    .replace(/\bwon'?t\b/g, 'will not')
    .replace(/\b(does|do|is|are|did|would|could)n'?t\b/g, '$1 not')
    .replace(/\bnotpossible\b|\bnon-?possible\b/g, 'not possible')
    .replace(/\bit'll\b/g, 'it will')
    .replace(/\bit's\b/g, 'it is');
}

/**
 * Whether an answer is a yes or a no and nothing else: `yes`, `it can be done`, `no, it can't`, `impossible`.
 *
 * @param text tidied
 * @returns undefined where it is neither, or both
 */
export function yesOrNo(text: string): 'yes' | 'no' | undefined {
  const said = tokensOf(withNot(text))
    .filter(({ text: one }) => !/^[,.;-]$/.test(one))
    .map(({ text: one }) => SPELT.find((word) => isSpelt(one, word, 5)) ?? one);
  const known = [YES, NO, DENIES, ASSERTS, OF_NO, NEUTRAL];
  if (!said.every((word) => known.some((set) => set.has(word)))) return undefined;
  const [first = '', second = ''] = said;
  const lead = YES.has(first) ? 'yes' : NO.has(first) && !OF_NO.has(second) ? 'no' : undefined;
  const rest = sideOf(lead ? said.slice(1) : said);
  return lead && rest && lead !== rest ? undefined : (lead ?? rest);
}

function sideOf(said: readonly string[]): 'yes' | 'no' | undefined {
  if (/not (?:\w+ )?impossible/.test(said.join(' '))) return undefined;
  if (said.some((word) => DENIES.has(word) || NO.has(word))) return 'no';
  return said.some((word) => ASSERTS.has(word) || YES.has(word)) ? 'yes' : undefined;
}

/** Whether an answer says that it cannot be done. */
export const saysNo = (text: string): boolean => yesOrNo(text) === 'no';
