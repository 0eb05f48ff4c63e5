import { isMoves, type Move, movesInWords, spacesInWords } from '../calculations/moves.js';
import type { UnitSystem } from '../units/format.js';
import { roundTo } from '../units/format.js';
import type { Expected, ExpectedNumber } from './expected.js';
import { Fault } from './fault.js';
import { takesNumber } from './judge.js';
import type { PartDeclaration } from './schema.js';
import { angleInWords, inWords, measureOf, placesOf } from './show.js';
import { parseStep, type Step } from './step.js';
import type { Subject } from './subject.js';

/** How one answer is printed and what is taken as right. */
export interface Answer {
  readonly text: string;
  readonly accepted: string;
  /** What stands beside the answer box. */
  readonly unit: string;
  /** Whether it is a whole count, which nothing is rounded to. */
  readonly exact: boolean;
  /** Whether the last figure could fairly be rounded either way. */
  readonly ambiguous: boolean;
  /** Whether a number would be taken as right once it is rounded as asked; in the value's own unit. */
  takes(value: number): boolean;
  /** A number as a learner would write it down. */
  write(value: number): string;
  /** The same as data. */
  readonly expects: Expected;
}

/** Of a step: what binary arithmetic leaves of nought. */
const DUST = 1e-6;

/** Nearer to halfway than this share of a step, rounding is ambiguous. */
const NEAR_HALF = 0.02;

/**
 * The answer that a value makes.
 *
 * @throws {Fault} a rule that cannot be read, or a number that is not whole and has no rule
 */
export function answerOf(
  subject: Subject,
  rule: PartDeclaration['answer'],
  system: UnitSystem,
  words?: readonly [string, string],
): Answer {
  const { value, unit } = subject;
  if (typeof value === 'number') return numberAnswer(value, unit, rule, system);
  if (typeof value === 'boolean') {
    const [yes, no] = words ?? ['possible', 'not possible'];
    const [word, other] = value ? [yes, no] : [no, yes];
    return wordAnswer(word, { kind: 'word', word, other });
  }
  if (Array.isArray(value)) {
    if (subject.from.kind === 'run' && subject.from.run.kind === 'among') {
      const expects: Expected = { kind: 'set', items: value.map((one) => inWords(one, unit, system)) };
      return value.length === 0
        ? wordAnswer('none of them', expects)
        : wordAnswer(inWords(value, unit, system), expects, 'all of these and no others, in any order');
    }
    if (value.length === 0 || isMoves(value)) return movesAnswer(subject, value);
    return listAnswer(value, unit, rule, system);
  }
  return wordAnswer(String(value), { kind: 'word', word: String(value) });
}

function wordAnswer(text: string, expects: Expected, accepted = 'only this'): Answer {
  const takes = () => false;
  return { text, accepted, unit: '', exact: false, ambiguous: false, takes, write: String, expects };
}

/** The crank's movements: any that serves is right, and so is any other way to say the same fraction of a turn. */
function movesAnswer(subject: Subject, moves: readonly Move[]): Answer {
  const found = subject.from.kind === 'found' ? subject.from.full.found : {};
  const turns = typeof found.turns === 'number' ? found.turns : 0;
  const [first] = moves;
  return {
    text: first ? movesInWords(turns, moves) : 'not possible on these plates',
    accepted: moves.length > 1 ? 'any one of these' : 'only this',
    unit: '',
    exact: false,
    ambiguous: false,
    takes: (count) => count === first?.holes,
    write: (count) => `${spacesInWords(turns, count)} on the ${first?.circle}-hole circle`,
    expects: { kind: 'moves', turns, moves },
  };
}

function numberAnswer(
  value: number,
  unit: string,
  rule: PartDeclaration['answer'],
  system: UnitSystem,
): Answer & { readonly expects: ExpectedNumber } {
  const measure = measureOf(unit, system);
  if (rule.to === undefined) {
    if (Math.abs(value - Math.round(value)) > 1e-9)
      throw new Fault('this answer is not a whole number: say how it is rounded', ['answer'], '', [
        'Write for instance answer: { to: 0.01 mm, accept: 0.01 mm }.',
      ]);
    const whole = Math.round(measure.shown(value));
    return {
      text: measure.words(measure.shown(value), 0),
      accepted: 'only this',
      unit: measure.label,
      exact: true,
      ambiguous: false,
      takes: (other) => Math.abs(other - value) < 1e-6,
      write: (other) => inWords(other, unit, system),
      expects: { kind: 'number', value: whole, unit: measure.label, step: 0, within: 0 },
    };
  }
  const to = stepOf(rule.to, 'to', unit, system);
  const within = rule.accept === undefined ? to : stepOf(rule.accept, 'accept', unit, system);
  const words = (shown: number): string =>
    to.kind === 'minute' || to.kind === 'second'
      ? angleInWords(shown, to.kind)
      : measure.words(shown, placesOf(to.size));
  const rounded = (shown: number) => roundTo(shown / to.size, 0) * to.size;
  const exact = measure.shown(value);
  const right = rounded(exact);
  const slack = within.kind === 'percent' ? (Math.abs(right) * within.size) / 100 : within.size;
  const share = Math.abs(exact / to.size) % 1;
  // Inward, so that both ends are taken: 15 % of 9.5 is no whole number of halves.
  const [low, high] = [
    words(Math.ceil((right - slack) / to.size - DUST) * to.size),
    words(Math.floor((right + slack) / to.size + DUST) * to.size),
  ];
  const expects: ExpectedNumber = {
    kind: 'number',
    value: Number(right.toPrecision(12)),
    unit: measure.label,
    step: to.size,
    within: slack,
    ...(to.kind === 'minute' || to.kind === 'second' ? { angle: to.kind } : {}),
  };
  return {
    text: words(right),
    accepted: low === high ? 'only this' : `${low} to ${high}`,
    unit: to.kind === 'plain' ? measure.label : '',
    exact: false,
    ambiguous: Math.abs(share - 0.5) < NEAR_HALF,
    takes: (other) => takesNumber(expects, measure.shown(other)),
    write: (other) => words(rounded(measure.shown(other))),
    expects,
  };
}

/** Several lengths, such as the passes of a cut: each is judged as one would be. */
function listAnswer(
  values: readonly unknown[],
  unit: string,
  rule: PartDeclaration['answer'],
  system: UnitSystem,
): Answer {
  const each = values.map((value) => numberAnswer(Number(value), unit, rule, system));
  const { label } = measureOf(unit, system);
  const within = each[0]?.accepted ?? '';
  return {
    text: each.map((one) => one.text).join(', '),
    accepted:
      values.length === 1
        ? within
        : `${values.length} in this order; the first ${within}, the others as near`,
    unit: label,
    exact: false,
    ambiguous: each.some((one) => one.ambiguous),
    takes: () => false,
    write: (other) => inWords(other, unit, system),
    expects: { kind: 'numbers', each: each.map((one) => one.expects) },
  };
}

function stepOf(text: string, key: string, unit: string, system: UnitSystem): Step {
  const step = parseStep(text, unit, system);
  if (step) return step;
  throw new Fault(
    `cannot read the step ${JSON.stringify(text)} for a value in ${unit || 'counts'}`,
    ['answer', key],
    '',
    ['Write for instance 0.01 mm or 0.001 in, 1 minute, 5 %, or 0.5.'],
  );
}
