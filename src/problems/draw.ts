import { InputError } from '../diagnostics/errors.js';
import { NoValueError } from '../formula/formula.js';
import { factsOf } from '../kit/facts.js';
import type { Kit } from '../kit/schema.js';
import type { UnitSystem } from '../units/format.js';
import { askedOf } from './asked.js';
import { type Chance, chanceFrom } from './chance.js';
import { spoilt } from './error.js';
import { Fault, placed } from './fault.js';
import type { ProblemKind } from './kind.js';
import { linesOf } from './lines.js';
import { Names, namesIn } from './names.js';
import { type AnsweredPart, answerPart, partWithKey, sideOfAnswers, type WrittenPart } from './part.js';
import { Patience } from './patience.js';
import type { Problem } from './problem.js';
import { holds } from './relation.js';
import type { ProblemDeclaration, WorkingDeclaration } from './schema.js';
import type { Shown } from './shown.js';
import { told } from './tell.js';
import { type Side, Unfair, WrongSide } from './unfair.js';
import { BARE, runWorkings, type Workings } from './workings.js';

/** Draws before a problem is given up. */
const MOST_DRAWS = 2000;
/** Seconds of the processor's work for one problem. */
const LONGEST = 2;
/** Draws that wait for the wanted side of a mix. */
const MIX_DRAWS = 200;
/** Draws that wait for answers which the neighbour cannot have; where there are none, two may share one. */
const NEIGHBOUR_DRAWS = 40;

/** Where a problem is asked. */
export interface Setting {
  readonly kit: Kit;
  readonly units: UnitSystem;
}

/** Which of its variants would be liked; where there are none such, another is drawn. */
export interface Wish {
  /** The half of the answers; none where any answer will do. */
  readonly half?: Side | undefined;
  /** Problems on the same sheet, whose numbers it should not have. */
  readonly unlike?: readonly Problem[];
}

/**
 * One problem with the numbers of a variant; the same seed, wish, kit and units give the same problem.
 *
 * @param seed the variant code and the lesson
 * @throws {Fault} a declaration that cannot be worked, or that no drawn values satisfy
 */
export function drawProblem(
  kind: ProblemKind,
  seed: string,
  { kit, units }: Setting,
  wish: Wish = {},
): Problem {
  const { declared } = kind;
  const chance = chanceFrom(`${seed}/${kind.name}`);
  const reasons = new Map<string, number>();
  const side = declared.mix === undefined ? undefined : chance.below(2) === 1;
  const patience = new Patience(LONGEST, 'to find values for this problem');
  let waited = 0;

  for (let draw = 0; draw < MOST_DRAWS; draw++) {
    try {
      const worked = workingsFor(kind, drawnValues(kind, units, chance), { kit, units }, patience);
      if (declared.mix !== undefined && draw < MIX_DRAWS) {
        const { mix } = declared;
        if (placed(['mix'], () => holds([mix], worked.names)) !== side) throw new Unfair('mix');
      }
      return asked(kind, worked, { kit, units }, waited < NEIGHBOUR_DRAWS ? wish : {}, chance);
    } catch (error) {
      if (!makesNoProblem(error)) throw error;
      if (error instanceof WrongSide) waited++;
      reasons.set(error.message, (reasons.get(error.message) ?? 0) + 1);
    }
  }
  const [[commonest = ''] = []] = [...reasons].sort((a, b) => b[1] - a[1]);
  throw new Fault(
    `no values within vary make a fair problem, in ${MOST_DRAWS} draws`,
    ['vary'],
    '',
    [`Mostly because of this: ${commonest}.`],
    'problem/no-solution',
  );
}

/** Values of a kind, each drawn from its range. */
export function drawnValues(
  { declared }: ProblemKind,
  units: UnitSystem,
  chance: Chance,
): Readonly<Record<string, unknown>> {
  return Object.fromEntries(
    Object.entries(declared.vary).map(([name, range]) => [name, pick(range[units], chance)]),
  );
}

/** Whether such values make a fair problem. @throws {Fault} a declaration that cannot be worked */
export function isFair(
  kind: ProblemKind,
  values: Readonly<Record<string, unknown>>,
  setting: Setting,
  chance: Chance,
  patience: Patience,
): boolean {
  try {
    asked(kind, workingsFor(kind, values, setting, patience), setting, {}, chance);
    return true;
  } catch (error) {
    if (makesNoProblem(error)) return false;
    throw error;
  }
}

const makesNoProblem = (error: unknown): error is { readonly message: string } =>
  error instanceof Unfair || error instanceof InputError || error instanceof NoValueError;

/** The workings of a kind with such values. @throws what makes no problem, and {Fault} */
export function workingsFor(
  { declared }: ProblemKind,
  values: Readonly<Record<string, unknown>>,
  { kit }: Setting,
  patience?: Patience,
): Workings {
  const ranges = Object.entries(declared.vary);
  const lengths = new Set(ranges.filter(([, range]) => range.lengths).map(([name]) => name));
  const keeps = new Keeps(declared.keep);
  keeps.demand(new Names(values));
  const worked = runWorkings(workingsOf(declared), values, kit, {
    lengths,
    patience,
    after: (names) => keeps.demand(names),
  });
  keeps.demandAll(worked.names);
  return worked;
}

function workingsOf(declared: ProblemDeclaration): Record<string, WorkingDeclaration> {
  const { calculation, works } = declared;
  return calculation === undefined
    ? { ...works }
    : { [BARE]: { calculation, ...declared.with } as WorkingDeclaration, ...works };
}

function pick<T>(values: readonly T[], chance: Chance): T | undefined {
  return values[chance.below(values.length)];
}

/** The relations of `keep`, each looked at as soon as all it names is known: most draws end there. */
class Keeps {
  #waiting: readonly string[];

  constructor(relations: readonly string[]) {
    this.#waiting = relations;
  }

  demand(names: Names): void {
    const known = (relation: string) => namesIn(relation).every((name) => names.find(name) !== undefined);
    this.#waiting = this.#waiting.filter((relation) => !known(relation) || !this.#holds(relation, names));
  }

  demandAll(names: Names): void {
    for (const relation of this.#waiting) this.#holds(relation, names);
  }

  #holds(relation: string, names: Names): true {
    if (placed(['keep'], () => holds([relation], names))) return true;
    throw new Unfair(`keep does not hold: ${relation}`);
  }
}

function asked(
  { name, declared, fade = 'bare' }: ProblemKind,
  workings: Workings,
  { kit, units }: Setting,
  { half, unlike = [] }: Wish,
  chance: Chance,
): Problem {
  const wrong = declared.errors ? spoilt(declared, workings, units, chance) : undefined;
  const questions = wrong ? [{ asked: wrong.right, path: [] }] : askedOf(declared, workings, chance);
  // All answers first: a draw that is not fair is given up before any key is written.
  const answered = questions.map(({ asked, path }) =>
    placed(path, () => answerPart(asked, workings, units, { chance, half })),
  );
  if (half !== undefined && half === otherSide(wrong?.side ?? sideOfAnswers(answered)))
    throw new WrongSide('the answer is one that a neighbour may have');
  const asTold = told(declared.tell, workings, units);
  const values = { kit: factsOf(kit), ...asTold.names.values };
  const drawn = workings.names.values;
  const same = (one: Problem) => Object.keys(declared.vary).every((key) => one.drawn[key] === drawn[key]);
  if (unlike.some(same)) throw new WrongSide('these numbers stand on the sheet already');
  const tell = Object.keys(declared.tell).filter((key) => !Object.hasOwn(declared.vary, key));
  const written: WrittenPart[] = [];
  for (const [place, part] of answered.entries())
    placed(questions[place]?.path ?? [], () =>
      written.push(partWithKey(part, { workings, told: asTold, tell, units, earlier: [...written], fade })),
    );
  const shown = wrong?.shown ?? shownOf(declared, answered, asTold, units);
  const parts = written.map(({ part }) => part);
  return {
    name,
    level: declared.level,
    ask: declared.ask,
    values,
    drawn,
    ...(shown ? { shown } : {}),
    parts: wrong ? [wrong.which, ...parts] : parts,
  };
}

/** The lines of a problem, with a blank for each that is asked for. */
function shownOf(
  { lines }: ProblemDeclaration,
  answered: readonly AnsweredPart[],
  workings: Workings,
  units: UnitSystem,
): Shown | undefined {
  if (lines === undefined) return undefined;
  const blanks = answered.map(({ asked }) => [asked.find, 'blank'] as const);
  return linesOf(lines, workings, units, new Map(blanks), false);
}

const otherSide = (side: Side | undefined): Side | undefined =>
  side === undefined ? undefined : side === 0 ? 1 : 0;
