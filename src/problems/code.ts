import { CommandError } from '../diagnostics/errors.js';
import { hash32 } from './chance.js';

/** Crockford's base 32: no I, L, O or U, which are misread. */
const SYMBOLS = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
const DATA = 6;
const SPACE = 32 ** DATA;
/** The check symbol is the remainder by 37; codes whose remainder has no letter or figure are not issued. */
const CHECK = 37;

/** The variant code of a number: six symbols and a check symbol, `7KQ-2M4-X`. */
function encode(number: number): string {
  let value = number;
  while (value % CHECK >= SYMBOLS.length) value = (value + 1) % SPACE;
  let text = '';
  for (let rest = value, place = 0; place < DATA; place++, rest = Math.floor(rest / 32))
    text = (SYMBOLS[rest % 32] ?? '') + text;
  return `${text.slice(0, 3)}-${text.slice(3)}-${SYMBOLS[value % CHECK]}`;
}

/** The variant code that belongs to a text, such as a class's code and a learner's name. */
export function codeFor(text: string): string {
  return encode(hash32(text) % SPACE);
}

/** A variant code that nobody has had: for fresh numbers. */
export function freshCode(): string {
  return codeFor(String(globalThis.crypto.getRandomValues(new Uint32Array(4))));
}

/**
 * Reads a variant code as people write it: either case, with or without hyphens or spaces, O for 0, I or L for 1.
 *
 * @returns the code as it is printed
 * @throws {CommandError} when it is not one, or a symbol of it is wrong
 */
export function readCode(typed: string): string {
  const text = typed.toUpperCase().replace(/[\s-]/g, '').replace(/O/g, '0').replace(/[IL]/g, '1');
  const wrong = (why: string, hint: string) =>
    new CommandError(`${JSON.stringify(typed.slice(0, 40))} is not a variant code: ${why}`, [hint]);
  if (text.length !== DATA + 1 || [...text].some((symbol) => !SYMBOLS.includes(symbol)))
    throw wrong(
      `it has ${DATA + 1} letters and figures, such as ${encode(0)}`,
      'Copy it from the foot of the sheet.',
    );
  const value = [...text.slice(0, DATA)].reduce((sum, symbol) => sum * 32 + SYMBOLS.indexOf(symbol), 0);
  if (SYMBOLS[value % CHECK] !== text[DATA])
    throw wrong('a symbol of it is wrong', 'Compare it with the sheet once more.');
  return encode(value);
}
