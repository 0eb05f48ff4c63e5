import { inFigures } from './spelt.js';
import { conclusion } from './tidy.js';
import { signToken, type Token, tokensOf } from './tokens.js';
import { type Unit, unitAsked, unitOf } from './units.js';
import { numberAtStart } from './written-number.js';

/** One way to read an answer that is one number. */
export interface Reading {
  /** In the unit that is asked for; not a number where the unit measures something else. */
  readonly value: number;
  /** The number as it was written. */
  readonly own: number;
  /** Half of one in the last place that was written, in the unit that is asked for; 0 for a fraction. */
  readonly half: number;
  readonly ambiguous: boolean;
  /** The unit that was written, if one was. */
  readonly unit?: Unit;
  /** Degrees in decimals, which might be meant for minutes. */
  readonly decimal?: true;
}

/** Words and signs beside a number that tell nothing. */
const IDLE = new Set(
  `about approx approximately around roughly circa c ca nearly almost just exactly say is are it its equals equal to be
  the of get got make makes answer ans result size diameter dia length depth width travel speed deep thick across high
  apart exact on od outside overall total ø ~ #`.split(/\s+/),
);
/** Words that turn the meaning of a number round. */
const TURNING = new Set('not or less more than between under over minus plus if no'.split(' '));

/**
 * The ways to read an answer that is one number: a decimal or a fraction, with or without its unit.
 *
 * @param text tidied
 * @param label of the unit that is asked for, as `mm`; empty for a count, which may have any word beside it
 * @returns none when it cannot be read
 */
export function quantitiesOf(text: string, label: string): Reading[] {
  const bare = conclusion(text);
  for (const one of bracketless(bare)) {
    const readings = read(inFigures(tokensOf(one)), label);
    if (readings.length > 0) return readings;
  }
  return [];
}

/** Without its brackets, and without what is in them. */
function bracketless(text: string): string[] {
  if (!/[()[\]]/.test(text)) return [text];
  return [text.replace(/[()[\]]/g, ' '), text.replace(/\([^()]*\)|\[[^[\]]*\]/g, ' ')];
}

const SIGNS: ReadonlyMap<string, number> = new Map([
  ['-', -1],
  ['+', 1],
]);

function read(all: readonly Token[], label: string): Reading[] {
  const tokens = withoutIdle(all, label);
  const sign = SIGNS.get(tokens[0]?.text ?? '');
  const start = tokens.findIndex(({ kind }) => kind === 'number');
  const before = tokens.slice(sign === undefined ? 0 : 1, start);
  const { numerals, length } = numberAtStart(tokens.slice(start));
  const unit = unitWritten([...before, ...tokens.slice(start + length)], label);
  if (start < 0 || unit === undefined || (sign !== undefined && before.length > 0)) return [];
  const asked = unitAsked(label);
  const scale = unit === 'none' ? 1 : unit.measure === asked.measure ? unit.size / asked.size : Number.NaN;
  return numerals.map(({ value, half, ambiguous }) => {
    const own = value * (sign ?? 1);
    const reading = { value: own * scale, own, half: half * scale, ambiguous };
    return unit === 'none' ? reading : { ...reading, unit };
  });
}

function withoutIdle(tokens: readonly Token[], label: string): Token[] {
  return tokens.flatMap((token, at): Token[] => {
    const next = tokens.slice(at + 1, at + 3).some(({ kind }) => kind === 'number');
    const number = token.text === 'number' || (token.text === 'no' && label === '' && next);
    const stop = token.text === '.' && tokens[at - 1]?.kind !== 'number';
    if (IDLE.has(token.text) || number || stop) return [];
    return [at === 0 && token.text === 'minus' ? signToken('-') : token];
  });
}

/** The unit that the rest of an answer says; undefined when it says something else. */
function unitWritten(rest: readonly Token[], label: string): Unit | 'none' | undefined {
  const words = rest.map(({ text }) => text);
  while (/^(?:each|only)$/.test(words.at(-1) ?? '')) words.pop();
  if (words.length === 0) return 'none';
  const text = words
    .join(' ')
    .replace(/ (?:per|a|an) | ?\/ ?/g, '/')
    .replace(/^(?:a|an) /, '')
    .replace(/^per /, '/')
    .replaceAll(' ', '');
  // What is counted may be shortened: `11 h` for holes.
  if (isCount(label) && label.startsWith(text)) return 'none';
  const unit = unitOf(text, unitAsked(label).measure);
  if (unit) return unit;
  const counted =
    rest.every(({ kind, text: word }) => kind === 'word' && !TURNING.has(word)) && rest.length <= 3;
  return counted && isCount(label) ? 'none' : undefined;
}

/** Whether what is asked for is counted and not measured. */
const isCount = (label: string): boolean => label === '' || /^[a-z]{4,}$/.test(label);
