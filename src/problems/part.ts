import { systemOf } from '../calculations/working.js';
import { NoValueError } from '../formula/formula.js';
import type { UnitSystem } from '../units/format.js';
import { type Answer, answerOf } from './answer.js';
import { agreement, checksOf } from './checks.js';
import { faded } from './fading.js';
import { Fault, placed } from './fault.js';
import { followsOf } from './follow.js';
import type { FadeStage } from './kind.js';
import { later } from './later.js';
import { methodOf } from './method.js';
import { choice, type Lettered, type Lettering, ordered } from './options.js';
import type { CheckLine, Mark, Part } from './problem.js';
import type { PartDeclaration } from './schema.js';
import { inWords } from './show.js';
import { slipsOf, type WorkedSlip } from './slips.js';
import { type Subject, subjectOf, wordsOf } from './subject.js';
import { type Side, Unfair } from './unfair.js';
import type { Workings } from './workings.js';

/** What a part declares; a problem with one question declares it without words of its own. */
export interface Asked extends Omit<PartDeclaration, 'ask'> {
  readonly ask?: string;
  /** Whether it is the estimate of what the next part asks. */
  readonly rough?: true;
}

/** What a part is made from. */
export interface Asking {
  /** With the values as they are. */
  readonly workings: Workings;
  /** The same, with the values rounded as the learner is told them. */
  readonly told: Workings;
  /** The names of those values. */
  readonly tell: readonly string[];
  readonly units: UnitSystem;
  /** The parts before it, in their order. */
  readonly earlier: readonly WrittenPart[];
  readonly fade: FadeStage;
}

/** A part whose answer is known and fair; its key is yet to be written. */
export interface AnsweredPart {
  readonly asked: Asked;
  readonly subject: Subject;
  readonly answer: Answer;
  /** The same where it is answered by letters. */
  readonly lettered?: Lettered;
}

/** A part with its key, and what those after it want to know of it. */
export interface WrittenPart extends AnsweredPart {
  readonly part: Part;
  readonly worked: readonly WorkedSlip[];
}

/**
 * The answer of one part.
 *
 * @throws {Unfair} rounding that could go either way; {Fault} a declaration that cannot be worked
 */
export function answerPart(
  asked: Asked,
  workings: Workings,
  units: UnitSystem,
  lettering: Lettering,
): AnsweredPart {
  const subject = placed(['find'], () => subjectOf(asked.find, workings));
  if (subject.from.kind === 'drawn' && asked.method === undefined)
    throw new Fault(`${asked.find} is told by no calculation: a method must say how it is worked back`, [
      'find',
    ]);
  const system = systemOf(subject.symbol, units);
  const answer = answerOf(subject, asked.answer, system, wordsOf(subject));
  if (answer.ambiguous && !asked.rough) throw new Unfair('rounding could go either way');
  if (asked.rough && answer.expects.kind === 'number' && answer.expects.within < answer.expects.step)
    throw new Unfair('the band of the estimate is narrower than a step of it');
  if (subject.from.kind === 'run' && subject.from.run.kind === 'ranking')
    return { asked, subject, answer, lettered: ordered(subject, lettering) };
  if (asked.choose === undefined) return { asked, subject, answer };
  return {
    asked,
    subject,
    answer,
    lettered: choice(subject, answer, asked.choose, { ...lettering, system }),
  };
}

/**
 * A part with its key.
 *
 * @throws {Unfair} a slip within the accepted range, or figures told too roughly for the method to lead to the
 *   answer; {Fault} a declaration that cannot be worked
 */
export function partWithKey(answered: AnsweredPart, asking: Asking): WrittenPart {
  const { asked, subject, answer, lettered } = answered;
  const { workings, told, tell, units, earlier, fade } = asking;
  const system = systemOf(subject.symbol, units);
  const row = subject.from.kind === 'run' && subject.from.run.kind === 'row' ? subject.from.run : undefined;
  const all = slipsOf(subject, answer, asked.slips, row?.names ?? told.names, system);
  const landing = all.filter((slip) => answer.takes(slip.value));
  // An estimate takes many a slip as near enough.
  if (landing[0] && !asked.rough) throw new Unfair(`the slip ${landing[0].id} lands on the right answer`);
  const worked = all.filter((slip) => !landing.includes(slip));
  const finished = lettered?.finish(worked);
  const back = asked.method === undefined ? [] : [workedBack(asked.method, answered, told, system)];
  // A class set wants the sheets of many and the keys of few: what only a key prints is written when it is asked for.
  const method = later(() => methodOf(subject, asked.method, told, units));
  const lines = later(
    () => finished?.slips ?? [...new Map(worked.map(({ line }) => [line.gives, line])).values()],
  );
  const checks = later(() => [...back, ...checksOf(subject, workings, system, tell)]);
  const follows = later(() => (asked.rough || lettered ? [] : followsOf(answered, asking)));
  const expected = [...earlier.map(({ part }) => part), answer].map(({ expects }) => expects);
  const shown =
    fade === 'bare' || asked.rough || lettered ? undefined : faded(fade, method(), subject.from, expected);
  const part: Part = {
    ask: asked.ask ?? '',
    unit: lettered ? '' : answer.unit,
    ...(finished ? { options: finished.options } : {}),
    ...(shown ? { shown } : {}),
    room: asked.room ?? defaultRoom(asked.marks),
    answer: lettered?.text ?? answer.text,
    accepted: lettered ? 'only this' : answer.accepted,
    expects: lettered?.expects ?? answer.expects,
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
    get follows() {
      return follows();
    },
  };
  return { ...answered, part, worked };
}

/**
 * The side of a problem's answers: by the sum of figures of the first that is in figures, so that the next count is
 * on the other side. Yes or no, possible or not, is on neither: half the class has to share them.
 */
export function sideOfAnswers(parts: readonly AnsweredPart[]): Side | undefined {
  for (const { asked, answer, lettered } of parts) {
    if (lettered) return lettered.side;
    const figures = asked.rough ? null : answer.text.match(/\d/g);
    if (figures) return figures.reduce((sum, figure) => sum + Number(figure), 0) % 2 === 0 ? 0 : 1;
  }
  return undefined;
}

/** The lesson's method with the figures told must lead to the answer. */
function workedBack(
  method: string,
  { asked, subject, answer }: AnsweredPart,
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
  const leads =
    asked.rough || answer.write(result) === answer.text || (answer.exact && Math.round(result) === value);
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

export function marksOf({ method, accuracy, independent }: PartDeclaration['marks']): Mark[] {
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
