import { formatAngle } from '../units/angle.js';
import { formatLength, formatNumber } from '../units/format.js';
import { listInWords } from '../units/words.js';
import type { Blocks, Fail } from './fill.js';
import type { SheetStyle } from './model.js';
import { crankInWords } from './moves.js';
import { inWords } from './words.js';

/** A stretch of a template. */
interface Place {
  readonly start: { readonly line: number; readonly column: number };
  readonly end: { readonly line: number; readonly column: number };
}

/** What a text is being filled with. */
export interface Filling {
  readonly style: SheetStyle;
  fail(place: Place, ...rest: Parameters<Fail>): string;
  /** Keeps what is made, and gives the placeholder for it. */
  block(place: Place, make: (blocks: Blocks) => string): string;
  /** Keeps a reference until the whole text is set, and gives the mark for it. */
  reference(place: Place, to: string): string;
}

interface Options {
  readonly hash: Readonly<Record<string, unknown>>;
  readonly data: { readonly filling: Filling };
  readonly loc: Place;
}

type Helper = (...args: unknown[]) => string;

/** A helper of one value; a value of the wrong kind is a fault of the text. */
function of<T>(
  kind: string,
  is: (value: unknown) => value is T,
  show: (value: T, style: SheetStyle, places: number | undefined) => string,
): Helper {
  return (...args) => {
    const options = args.at(-1) as Options;
    const { filling } = options.data;
    const [value] = args.length > 1 ? args : [undefined];
    const { places } = options.hash;
    if (!is(value))
      return filling.fail(options.loc, `this is ${told(value)}, not ${kind}`, 'Name another value here.');
    if (places !== undefined && !(Number.isInteger(places) && Number(places) >= 0 && Number(places) <= 9))
      return filling.fail(options.loc, 'places is not 0 to 9', 'Write a whole number, as in places=3.');
    return show(value, filling.style, places as number | undefined);
  };
}

const isNumber = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value);
const isNumbers = (value: unknown): value is number | readonly number[] =>
  isNumber(value) || (Array.isArray(value) && value.every(isNumber));
const isPrintable = (value: unknown): value is number | string | boolean | readonly unknown[] =>
  isNumber(value) || ['string', 'boolean'].includes(typeof value) || isList(value);
const isList = (value: unknown): value is readonly (number | string)[] =>
  Array.isArray(value) && value.every((one) => isNumber(one) || typeof one === 'string');
const isMoves = (value: unknown): value is Parameters<typeof crankInWords>[0] =>
  typeof value === 'object' && value !== null && 'possible' in value && 'settings' in value;

const lengths = (value: number | readonly number[], say: (mm: number) => string): string =>
  listInWords([value].flat().map(say));

/** All that may stand in `{{…}}`. */
export const helpers: Readonly<Record<string, Helper>> = {
  /** Not for authors: what a bare name becomes. */
  shown: of('a word or a number', isPrintable, (value) => inWords(value)),
  mm: of('a length', isNumbers, (value, _, places) =>
    lengths(value, (mm) =>
      places === undefined ? `${inWords(mm)}\u202Fmm` : formatLength(mm, 'mm', places),
    ),
  ),
  length: of('a length', isNumbers, (value, { units }, places = 2) =>
    lengths(value, (mm) => formatLength(mm, units, places)),
  ),
  number: of('a number', isNumber, (value, _, places) =>
    places === undefined ? inWords(value) : formatNumber(value, places),
  ),
  angle: of('an angle', isNumber, (value, _, places = 0) =>
    formatAngle(value, places).replaceAll(' ', '\u00A0'),
  ),
  list: of('a list', isList, (value) => listInWords(value.map(inWords))),
  moves: of('a working of dividing.simple', isMoves, (value) => crankInWords(value)),
  worked: (name, options) => {
    const { show = '' } = (options as Options).hash;
    return block(options, (blocks, fail) => blocks.worked(String(name), String(show), fail));
  },
  figure: (name, options) =>
    block(options, (blocks, fail) => blocks.figure(String(name), { ...(options as Options).hash }, fail)),
  ref: (to, options) => {
    const { data, loc } = options as Options;
    return data.filling.reference(loc, String(to));
  },
  problems: (options) => block(options, (blocks, fail) => blocks.problems(fail)),
};

function block(options: unknown, make: (blocks: Blocks, fail: Fail) => string): string {
  const { data, loc } = options as Options;
  return data.filling.block(loc, (blocks) => make(blocks, (...fault) => data.filling.fail(loc, ...fault)));
}

function told(value: unknown): string {
  if (value === undefined || value === null) return 'nothing';
  return Array.isArray(value) ? 'a list' : typeof value === 'object' ? 'a working' : `a ${typeof value}`;
}
