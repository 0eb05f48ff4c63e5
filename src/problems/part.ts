import { systemOf } from '../calculations/working.js';
import { NoValueError } from '../formula/formula.js';
import type { UnitSystem } from '../units/format.js';
import { type Answer, answerOf } from './answer.js';
import { agreement, checksOf } from './checks.js';
import { Fault, placed } from './fault.js';
import { later } from './later.js';
import { methodOf } from './method.js';
import type { CheckLine, Mark, Part } from './problem.js';
import type { PartDeclaration } from './schema.js';
import { inWords } from './show.js';
import { slipsOf } from './slips.js';
import { type Subject, subjectOf } from './subject.js';
import type { Workings } from './workings.js';

/** Values that make no fair problem; others are drawn. No bug, so it looks for no place in the code. */
export class Unfair {
  constructor(readonly message: string) {}
}

/** An answer that the neighbour may have. */
export class WrongSide extends Unfair {}

/** What a part declares; a problem with one question declares it without words of its own. */
export type Asked = Omit<PartDeclaration, 'ask'> & { readonly ask?: string };

/** What a part is made from. */
export interface Asking {
  /** With the values as they are. */
  readonly workings: Workings;
  /** The same, with the values rounded as the learner is told them. */
  readonly told: Workings;
  /** The names of those values. */
  readonly tell: readonly string[];
  readonly units: UnitSystem;
}

/** A part whose answer is known and fair; its key is yet to be written. */
export interface AnsweredPart {
  readonly asked: Asked;
  readonly subject: Subject;
  readonly answer: Answer;
}

/**
 * The answer of one part.
 *
 * @throws {Unfair} rounding that could go either way; {Fault} a declaration that cannot be worked
 */
export function answerPart(asked: Asked, workings: Workings, units: UnitSystem): AnsweredPart {
  const subject = placed(['find'], () => subjectOf(asked.find, workings));
  if (subject.from.kind === 'drawn' && asked.method === undefined)
    throw new Fault(`${asked.find} is told by no calculation: a method must say how it is worked back`, [
      'find',
    ]);
  const answer = answerOf(subject, asked.answer, systemOf(subject.symbol, units), wordsOf(subject));
  if (answer.ambiguous) throw new Unfair('rounding could go either way');
  return { asked, subject, answer };
}

/**
 * A part with its key.
 *
 * @throws {Unfair} a slip within the accepted range, or figures told too roughly for the method to lead to the
 *   answer; {Fault} a declaration that cannot be worked
 */
export function partWithKey(
  { asked, subject, answer }: AnsweredPart,
  { workings, told, tell, units }: Asking,
): Part {
  const system = systemOf(subject.symbol, units);
  const slips = slipsOf(subject, answer, asked.slips, told.names, system);
  const landing = slips.find((slip) => answer.takes(slip.value));
  if (landing) throw new Unfair(`the slip ${landing.id} lands on the right answer`);
  const back = asked.method === undefined ? [] : [workedBack(asked.method, subject, answer, told, system)];
  // A class set wants the sheets of many and the keys of few: what only a key prints is written when it is asked for.
  const method = later(() => methodOf(subject, asked.method, told, units));
  const lines = later(() => [...new Map(slips.map(({ line }) => [line.gives, line])).values()]);
  const checks = later(() => [...back, ...checksOf(subject, workings, system, tell)]);
  return {
    ask: asked.ask ?? '',
    unit: answer.unit,
    room: asked.room ?? defaultRoom(asked.marks),
    answer: answer.text,
    accepted: answer.accepted,
    expects: answer.expects,
    marks: marksOf(asked.marks),
    get method() {
      return method();
    },
    get slips() {
      return lines();
    },
    get checks() {
      return checks();
    },
  };
}

/** Which half of the answers a variant draws from: neighbours sit on different sides, and so share none. */
export type Side = 0 | 1;

/**
 * The side of a problem's answers: by the sum of figures of the first that is in figures, so that the next count is
 * on the other side. Yes or no, possible or not, is on neither: half the class has to share them.
 */
export function sideOfAnswers(parts: readonly AnsweredPart[]): Side | undefined {
  for (const { answer } of parts) {
    const figures = answer.text.match(/\d/g);
    if (figures) return figures.reduce((sum, figure) => sum + Number(figure), 0) % 2 === 0 ? 0 : 1;
  }
  return undefined;
}

function wordsOf({ from }: Subject): readonly [string, string] | undefined {
  return from.kind === 'run' && from.run.kind === 'decision' ? from.run.declared.words : undefined;
}

/** The lesson's method with the figures told must lead to the answer. */
function workedBack(
  method: string,
  subject: Subject,
  answer: Answer,
  told: Workings,
  system: UnitSystem,
): CheckLine {
  const { value, unit } = subject;
  if (typeof value !== 'number') throw new Fault('a method leads to a number, and this is none', ['method']);
  let result: number;
  try {
    result = placed(['method'], () => told.names.evaluate(method));
  } catch (error) {
    if (error instanceof NoValueError) throw new Unfair('the method comes to no number');
    throw error;
  }
  // Worked from the figures told it must print as the answer does, or the key would contradict itself.
  const leads = answer.write(result) === answer.text || (answer.exact && Math.round(result) === value);
  if (!leads)
    throw new Unfair(
      `the method gives ${inWords(result, unit, system)} where the answer is ${inWords(value, unit, system)}`,
    );
  return {
    source: 'The method, with the figures told',
    value: inWords(result, unit, system),
    agreement: agreement(value, result, unit, system),
  };
}

function marksOf({ method, accuracy, independent }: PartDeclaration['marks']): Mark[] {
  const kinds = [
    ['M', method, 'method'],
    ['A', accuracy, 'accuracy'],
    ['B', independent, 'independent'],
  ] as const;
  return kinds
    .filter(([, count]) => count > 0)
    .map(([letter, count, what]) => ({ code: `${letter}${count}`, for: what }));
}

function defaultRoom({ method, accuracy }: PartDeclaration['marks']): number {
  return 1 + Math.min(4, method + accuracy);
}
