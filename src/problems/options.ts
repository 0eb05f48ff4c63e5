import { isMoves } from '../calculations/moves.js';
import type { UnitSystem } from '../units/format.js';
import type { Answer } from './answer.js';
import type { Chance } from './chance.js';
import type { Expected } from './expected.js';
import { Fault } from './fault.js';
import type { Option, SlipLine } from './problem.js';
import type { PartDeclaration } from './schema.js';
import { inWords } from './show.js';
import type { WorkedSlip } from './slips.js';
import type { Subject } from './subject.js';
import { type Side, Unfair } from './unfair.js';

/** An answer by letters. */
export interface Lettered {
  /** As it is printed on the key, and as data. */
  readonly text: string;
  readonly expects: Expected;
  readonly side: Side | undefined;
  /**
   * What is printed with the letters, and what the wrong ones say.
   *
   * @throws {Unfair} too few, or two that print the same
   */
  finish(slips: readonly WorkedSlip[]): { readonly options: readonly Option[]; readonly slips: SlipLine[] };
}

/** How letters are given out. */
export interface Lettering {
  readonly chance: Chance;
  /** Neighbours have letters of different halves: A, C and E, or B and D. */
  readonly half: Side | undefined;
}

const LETTERS = 'ABCDEFGH';

/** More options than this make a problem of reading. */
const MOST = 5;

/** What there is to choose from besides the right one. */
interface Other {
  readonly text: string;
  readonly says?: string | undefined;
}

/** The right one, the others, how many there are in all, and the one that stands last whatever else is drawn. */
interface Field {
  readonly right: string;
  readonly others: (slips: readonly WorkedSlip[]) => readonly Other[];
  readonly options: number;
  readonly last?: string;
}

/**
 * One to choose: its letter is drawn at once, and the others when they are known.
 *
 * @throws {Fault} where there is nothing else to choose; {Unfair} where several are right
 */
export function choice(
  subject: Subject,
  answer: Answer,
  choose: NonNullable<PartDeclaration['choose']>,
  { chance, half, system }: Lettering & { readonly system: UnitSystem },
): Lettered {
  const { right, others, options, last } = fieldOf(subject, answer, choose, system);
  const letters = [...LETTERS.slice(0, options)];
  const isLast = right === last;
  const place = isLast ? options - 1 : placeFor(last === undefined ? options : options - 1, chance, half);
  const letter = letters[place] ?? '';
  return {
    text: letter,
    expects: { kind: 'choice', letter, letters },
    // There is one place only for none of them.
    side: isLast ? undefined : sideOf(place),
    finish: (slips) => {
      const unlike = new Map(others(slips).map((one) => [one.text, one]));
      unlike.delete(right);
      const ending = last === undefined || isLast ? [] : [unlike.get(last) ?? { text: last }];
      if (last !== undefined) unlike.delete(last);
      const chosen = [
        ...shuffled([...unlike.values()], chance).slice(0, options - 1 - ending.length),
        ...ending,
      ];
      if (chosen.length < options - 1)
        throw new Unfair(`there are not enough wrong ways for ${options} options`);
      const all: Other[] = [...chosen.slice(0, place), { text: right }, ...chosen.slice(place)];
      return {
        options: all.map(({ text }, at) => ({ letter: letters[at] ?? '', text })),
        slips: all.flatMap(({ says }, at) =>
          says === undefined ? [] : [{ gives: letters[at] ?? '', says }],
        ),
      };
    },
  };
}

/**
 * Several to put in order, with letters that tell nothing of it.
 *
 * @throws {Unfair} two that are too near one another to tell apart
 */
export function ordered(subject: Subject, { chance, half }: Lettering): Lettered {
  if (subject.from.kind !== 'run' || subject.from.run.kind !== 'ranking')
    throw new Fault(`${subject.name} is no ranking`, ['find'], subject.name);
  const { ranked } = subject.from.run;
  ranked.forEach(({ value }, at) => {
    const next = ranked[at + 1]?.value ?? Number.POSITIVE_INFINITY;
    if (Math.abs(next - value) < APART * Math.max(Math.abs(next), Math.abs(value)))
      throw new Unfair('two of the values are too near one another to put in order');
  });
  const [first, ...rest] = ranked;
  const printed = shuffled(rest, chance);
  if (first) printed.splice(placeFor(ranked.length, chance, half), 0, first);
  const letters = ranked.map((one) => LETTERS[printed.indexOf(one)] ?? '');
  const options = printed.map(({ label }, at) => ({ letter: LETTERS[at] ?? '', text: label }));
  const back = [...letters].reverse().join(', ');
  return {
    text: letters.join(', '),
    expects: { kind: 'order', letters },
    side: sideOf(LETTERS.indexOf(letters[0] ?? '')),
    finish: () => ({ options, slips: [{ gives: back, says: 'You began at the wrong end.' }] }),
  };
}

/** Of values in an order each differs from the next by this share, or it could not be told without a long sum. */
const APART = 0.01;

/** One of so many places, each of the half as likely as any other. */
function placeFor(places: number, chance: Chance, half: Side | undefined): number {
  const fitting = Array.from({ length: places }, (_, place) => place).filter(
    (place) => half === undefined || sideOf(place) === half,
  );
  return fitting[chance.below(fitting.length)] ?? 0;
}

const sideOf = (place: number): Side => (place % 2 === 0 ? 0 : 1);

function fieldOf(
  { value, unit, from, name }: Subject,
  answer: Answer,
  choose: NonNullable<PartDeclaration['choose']>,
  system: UnitSystem,
): Field {
  const declared = (choose.others ?? []).map((text): Other => ({ text }));
  const run = from.kind === 'run' ? from.run : undefined;
  if (run?.kind === 'among') {
    const none = choose.none ?? 'none of them';
    const say = (one: unknown): string => inWords(one, unit, system);
    if (run.value.length > 1) throw new Unfair('more than one of them serves');
    return {
      right: run.value.length === 0 ? none : say(run.value[0]),
      others: () => run.tried.map(({ tried }) => ({ text: say(tried) })),
      options: run.tried.length + 1,
      last: none,
    };
  }
  if (choose.none !== undefined)
    throw new Fault('none is an option only where several values are tried, by among', ['choose', 'none']);
  if (run?.kind === 'cases') {
    const cases = Object.entries(run.declared.cases);
    return {
      right: run.value,
      others: () => [...cases.map(([text, { says }]) => ({ text, says })), ...declared],
      options: choose.options ?? Math.min(MOST, cases.length + declared.length),
    };
  }
  if (Array.isArray(value) && value.length === 0) throw new Unfair('there is none to choose');
  if (typeof value === 'number' || isMoves(value))
    return {
      right: isMoves(value) ? answer.write(value[0]?.holes ?? 0) : answer.text,
      others: (slips) => [...slips.map(({ line }) => ({ text: line.gives, says: line.says })), ...declared],
      options: choose.options ?? 4,
    };
  const other = answer.expects.kind === 'word' ? answer.expects.other : undefined;
  const words = [...(other === undefined ? [] : [{ text: other }]), ...declared];
  if (words.length === 0)
    throw new Fault(`there is nothing to choose from besides ${name}`, ['choose'], '', [
      'Write the others: choose: { others: [every move was short, one move slipped] }.',
    ]);
  return {
    right: answer.text,
    others: () => words,
    options: choose.options ?? Math.min(MOST, words.length + 1),
  };
}

/** In an order that chance has drawn, each as likely as any other. */
function shuffled<T>(values: readonly T[], chance: Chance): T[] {
  const rest = [...values];
  return values.flatMap(() => rest.splice(chance.below(rest.length), 1));
}
