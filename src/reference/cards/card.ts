import type { Kit } from '../../kit/schema.js';
import type { CautionName } from '../../lesson/cautions.js';
import type { Desk } from '../desk.js';
import type { Figure, Need, Table, WheelJob } from '../sheet.js';

/** A wheel that the class is going to cut, and how. Lengths mm, speeds m/min. */
export interface CutJob extends WheelJob {
  readonly module: number;
  readonly leaves?: number | undefined;
  readonly convention: 'leaves' | '2.76';
  readonly depthForm: '2.95' | '3.38' | '2.45' | '3.00';
  readonly cuttingSpeed: number;
}

/** A sentence; its figures are each by two routes. */
export type Told = readonly (string | Figure)[];

/** A sentence with figures in it, or words that come from elsewhere. */
export const told = (words: TemplateStringsArray, ...figures: readonly (Figure | string)[]): Told =>
  words.flatMap((piece, at) => [piece, ...figures.slice(at, at + 1)]).filter((piece) => piece !== '');

/** The words of a sentence, and its figures as they are printed. */
export const textOf = (said: Told): string =>
  said.map((piece) => (typeof piece === 'string' ? piece : piece.text)).join('');

/** A number to be read from where one stands. */
export interface CardNumber {
  readonly label: string;
  readonly value: Told;
  readonly note?: Told;
}

/** One of the figures, and what it is given. */
export interface Picture {
  readonly figure: string;
  readonly given: Readonly<Record<string, unknown>>;
  readonly caption?: string;
  /** Across the whole card, over the words. */
  readonly wide?: true;
  /** Only where it is so low that the big numbers have room under it; else the words do without it. */
  readonly low?: true;
}

/** A few sentences under a head: to be read, to be done in turn, or to be ticked. */
export interface Passage {
  readonly head?: string;
  readonly kind: 'words' | 'steps' | 'ticks';
  readonly lines: readonly Told[];
}

/** Boxes to tick, in rows that end with the count so far. */
export interface BoxRow {
  /** Of its last box. */
  readonly count: number;
  /** Each box, with the quarter of the way round that ends with it or within the next, such as `½`. */
  readonly boxes: readonly string[];
}

/** One card, to be cut out and laminated. */
export interface Card {
  readonly title: string;
  /** What its numbers are for; none where they hold for any. */
  readonly about?: string;
  readonly picture?: Picture;
  readonly numbers?: readonly CardNumber[];
  readonly passages?: readonly Passage[];
  readonly table?: Table;
  readonly boxes?: readonly BoxRow[];
  readonly caution?: CautionName;
  /** To be read from further off: little is said, and that is larger. */
  readonly loud?: true;
}

/** A family of cards that can be made. */
export interface CardKind {
  /** Such as `sector-arms`. */
  readonly name: string;
  readonly title: string;
  /** What it is for, in a line. */
  readonly line: string;
  /** The equipment that it is made from; none where it serves any workshop. */
  readonly needs?: Need;
  /** What holds for all its cards: whose rules the numbers keep. */
  readonly conventions: readonly string[];
  make(desk: Desk, kit: Kit, jobs: readonly CutJob[]): readonly Card[];
}

/** Sentences to be read. */
export const words = (head: string, ...lines: readonly Told[]): Passage => ({ head, kind: 'words', lines });

/** Things to do, in turn. */
export const steps = (...lines: readonly Told[]): Passage => ({ kind: 'steps', lines });

/** Things to tick. */
export const ticks = (head: string, ...lines: readonly Told[]): Passage => ({ head, kind: 'ticks', lines });
