import { systemOf, type WorkingStep } from '../calculations/working.js';
import { NoValueError } from '../formula/formula.js';
import type { UnitSystem } from '../units/format.js';
import { answerOf } from './answer.js';
import type { Chance } from './chance.js';
import { checksOf } from './checks.js';
import { Fault, placed } from './fault.js';
import { type Changed, linesOf, namesOfLines } from './lines.js';
import { formulaStep } from './method.js';
import { Names, namesIn } from './names.js';
import type { Asked } from './part.js';
import type { Part } from './problem.js';
import type { ProblemDeclaration } from './schema.js';
import { inWords } from './show.js';
import type { Shown } from './shown.js';
import { type Subject, subjectOf } from './subject.js';
import { type Side, Unfair } from './unfair.js';
import type { Workings } from './workings.js';

/** What is printed with one line wrong, and what is asked of it. */
export interface Spoilt {
  readonly shown: Shown;
  /** Which line is wrong. */
  readonly which: Part;
  /** What it should say. */
  readonly right: Asked;
  /** By which line is wrong; none where there is one only that can be. */
  readonly side: Side | undefined;
}

/** What the right value of a line is called in the formula of its error. */
const RIGHT = 'it';

/**
 * A working or table with one line wrong, by an error that chance has drawn. The lines below a wrong line of a
 * working follow from it, as they would on paper.
 *
 * @throws {Unfair} an error that prints as the right line would, or is taken as right; {Fault} a declaration that
 *   cannot be worked
 */
export function spoilt(
  declared: ProblemDeclaration,
  workings: Workings,
  units: UnitSystem,
  chance: Chance,
): Spoilt {
  const lines = declared.lines ?? [];
  const names = namesOfLines(lines, workings);
  const errors = Object.entries(declared.errors ?? {});
  const [id = '', error] = errors[chance.below(errors.length)] ?? [];
  if (!error) throw new Fault('there are no errors', ['errors']);
  const among = names.filter((name) => name === error.of || name.startsWith(`${error.of}.`));
  if (among.length === 0)
    throw new Fault(`${error.of} is not one of the lines`, ['errors', id, 'of'], error.of, [
      `The lines are ${lines.join(', ')}.`,
    ]);
  // The first row of a table starts the others: it is given.
  const name = among[among.length > 1 ? 1 + chance.below(among.length - 1) : 0] ?? '';
  const subject = subjectOf(name, workings);
  const system = systemOf(subject.symbol, units);
  const value = placed(['errors', id], () => wrongValue(error.formula, subject, workings));
  const answer = answerOf(subject, declared.answer, system);
  const wrong = inWords(value, subject.unit, system);
  if (answer.takes(value) || wrong === inWords(subject.value, subject.unit, system))
    throw new Unfair(`the error ${id} prints as the right line would`);

  const place = names.indexOf(name);
  const isRow = among.length > 1;
  const astray = isRow ? workings : workings.again(new Map([[name, value]]));
  const changed: Changed = new Map([[name, stepOf(error.formula, subject, wrong, workings, units)]]);
  const carried = isRow ? [] : names.slice(place + 1).filter((one) => differs(one, workings, astray));
  const row = subject.from.kind === 'run' && subject.from.run.kind === 'row' ? subject.from.run : undefined;
  const mark = row?.head ?? place + 1;
  const several = isRow || new Set(errors.map(([, { of }]) => of)).size > 1;
  return {
    side: several ? (place % 2 === 0 ? 0 : 1) : undefined,
    shown: linesOf(lines, astray, units, changed, true),
    which: {
      ask: isRow ? 'Which row is wrong? Write the number at its head.' : 'Which line is wrong?',
      unit: '',
      room: 1,
      answer: isRow ? inWords(mark, '', units) : `line ${mark}`,
      accepted: 'only this',
      expects: { kind: 'number', value: mark, unit: '', step: 0, within: 0 },
      marks: [{ code: 'B1', for: 'independent' }],
      method: [{ say: error.says }],
      slips: carried.map((one) => ({
        gives: `line ${names.indexOf(one) + 1}`,
        says: 'That line is right for what stands above it: it only carries the error on.',
        shown: names.indexOf(one) + 1,
      })),
      checks: checksOf(subject, workings, system),
    },
    right: {
      ask: 'What should it say?',
      find: name,
      answer: declared.answer,
      marks: declared.marks,
      slips: {},
      room: declared.room ?? 2,
    },
  };
}

function wrongValue(formula: string, { value, from }: Subject, { names }: Workings): number {
  const row = from.kind === 'run' && from.run.kind === 'row' ? from.run.names : names;
  try {
    return new Names({ ...row.values, [RIGHT]: value }, row.symbols, row.absent).evaluate(formula);
  } catch (error) {
    if (error instanceof NoValueError) throw new Unfair('the error has no value');
    throw error;
  }
}

/**
 * The wrong line: by its own wrong rule, or by the right rule wrongly worked, where the error is told from the right
 * value.
 */
function stepOf(
  formula: string,
  { from, symbol, name, unit, title }: Subject,
  wrong: string,
  workings: Workings,
  units: UnitSystem,
): WorkingStep {
  const run = from.kind === 'run' ? from.run : undefined;
  const own = run?.kind === 'formula' || run?.kind === 'row' ? run.declared.formula : undefined;
  const rule = namesIn(formula).includes(RIGHT) ? own : formula;
  if (rule === undefined) return { say: `${title}: ${wrong}` };
  const within = run?.kind === 'row' ? { ...workings, names: run.names } : workings;
  return {
    ...formulaStep(rule, symbol || (name.split('.')[0] ?? name), unit, within, systemOf(symbol, units)),
    result: wrong,
  };
}

const differs = (name: string, a: Workings, b: Workings): boolean =>
  subjectOf(name, a).value !== subjectOf(name, b).value;
