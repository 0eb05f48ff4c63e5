import { InputError } from '../diagnostics/errors.js';
import { NoValueError } from '../formula/formula.js';
import { factsOf } from '../kit/facts.js';
import type { Kit } from '../kit/schema.js';
import type { UnitSystem } from '../units/format.js';
import { type Chance, chanceFrom } from './chance.js';
import { Fault, placed } from './fault.js';
import { Names, namesIn } from './names.js';
import { type Asked, answerPart, partWithKey, type Side, sideOfAnswers, Unfair, WrongSide } from './part.js';
import type { Problem } from './problem.js';
import { holds } from './relation.js';
import type { ProblemDeclaration, ProblemKind, WorkingDeclaration } from './schema.js';
import { told } from './tell.js';
import { BARE, runWorkings, type Workings } from './workings.js';

/** Draws before a problem is given up. */
const MOST_DRAWS = 2000;
/** Draws that wait for the wanted side of a mix. */
const MIX_DRAWS = 200;
/** Draws that wait for answers which the neighbour cannot have; where there are none, two may share one. */
const NEIGHBOUR_DRAWS = 40;

/** Where a problem is asked. */
export interface Setting {
  readonly kit: Kit;
  readonly units: UnitSystem;
}

/**
 * One problem with the numbers of a variant; the same seed, side, kit and units give the same problem.
 *
 * @param seed the variant code and the lesson
 * @param half none where any answer will do
 * @throws {Fault} a declaration that cannot be worked, or that no drawn values satisfy
 */
export function drawProblem(kind: ProblemKind, seed: string, { kit, units }: Setting, half?: Side): Problem {
  const { declared } = kind;
  const chance = chanceFrom(`${seed}/${kind.name}`);
  const ranges = Object.entries(declared.vary);
  const workings = workingsOf(declared);
  const lengths = new Set(ranges.filter(([, range]) => range.lengths).map(([name]) => name));
  const reasons = new Map<string, number>();
  const side = declared.mix === undefined ? undefined : chance.below(2) === 1;
  let waited = 0;

  for (let draw = 0; draw < MOST_DRAWS; draw++) {
    const values = Object.fromEntries(ranges.map(([name, range]) => [name, pick(range[units], chance)]));
    try {
      const keeps = new Keeps(declared.keep);
      keeps.demand(new Names(values));
      const worked = runWorkings(workings, values, kit, { lengths, after: (names) => keeps.demand(names) });
      keeps.demandAll(worked.names);
      if (declared.mix !== undefined && draw < MIX_DRAWS) {
        const { mix } = declared;
        if (placed(['mix'], () => holds([mix], worked.names)) !== side) throw new Unfair('mix');
      }
      return asked(kind, worked, { kit, units }, waited < NEIGHBOUR_DRAWS ? half : undefined);
    } catch (error) {
      if (!(error instanceof Unfair || error instanceof InputError || error instanceof NoValueError))
        throw error;
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
  { name, declared }: ProblemKind,
  workings: Workings,
  { kit, units }: Setting,
  half: Side | undefined,
): Problem {
  const { parts, find, answer, method, marks, slips, room } = declared;
  const one: Asked = {
    find: find ?? '',
    answer,
    marks,
    slips,
    ...(method === undefined ? {} : { method }),
    ...(room === undefined ? {} : { room }),
  };
  // All answers first: a draw that is not fair is given up before any key is written.
  const at = (place: number) => (parts ? ['parts', place] : []);
  const answered = (parts ?? [one]).map((part, place) =>
    placed(at(place), () => answerPart(part, workings, units)),
  );
  if (half !== undefined && half === otherSide(sideOfAnswers(answered)))
    throw new WrongSide('the answer is one that a neighbour may have');
  const asTold = told(declared.tell, workings, units);
  const tell = Object.keys(declared.tell).filter((key) => !(key in declared.vary));
  return {
    name,
    level: declared.level,
    ask: declared.ask,
    values: { kit: factsOf(kit), ...asTold.names.values },
    parts: answered.map((part, place) =>
      placed(at(place), () => partWithKey(part, { workings, told: asTold, tell, units })),
    ),
  };
}

const otherSide = (side: Side | undefined): Side | undefined =>
  side === undefined ? undefined : side === 0 ? 1 : 0;
