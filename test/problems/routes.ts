import type { FullWork } from '../../src/calculations/work.js';
import { InputError } from '../../src/diagnostics/errors.js';
import { NoValueError } from '../../src/formula/formula.js';
import { chanceFrom } from '../../src/problems/chance.js';
import { drawnValues, type Setting, workingsFor } from '../../src/problems/draw.js';
import type { ProblemKind } from '../../src/problems/kind.js';
import type { Names } from '../../src/problems/names.js';
import { numbersOfSides } from '../../src/problems/relation.js';
import type { Run } from '../../src/problems/run.js';
import { Unfair } from '../../src/problems/unfair.js';

/** Two numbers that should be one, and how far apart they may lie. */
export interface Disagreement {
  readonly of: string;
  readonly apart: number;
  readonly allowed: number;
  /** The drawn values. */
  readonly with: Readonly<Record<string, unknown>>;
}

/** What came of many variants of one kind of problem, worked by both routes. */
export interface Routes {
  readonly variants: number;
  /** Whether these are all that there are. */
  readonly all: boolean;
  /** Values that were held against a second route. */
  readonly compared: number;
  /** The one that came nearest to its allowance; none where all were exact. */
  readonly largest?: Disagreement;
}

type Values = Readonly<Record<string, unknown>>;

/**
 * Works variants of a kind by both routes: every one there is, or so many that are drawn.
 *
 * @throws {DisagreementError}, {Fault} for the first that does not agree
 */
export function bothRoutes(kind: ProblemKind, setting: Setting, most: number): Routes {
  const space = Object.values(kind.declared.vary).reduce(
    (all, range) => all * range[setting.units].length,
    1,
  );
  const all = space <= most;
  let variants = 0;
  let compared = 0;
  let largest: Disagreement | undefined;
  for (const values of all ? everyOne(kind, setting) : drawn(kind, setting)) {
    const worked = workedIfFair(kind, values, setting);
    if (!worked) continue;
    variants++;
    for (const [name, run] of worked.runs)
      for (const one of disagreements(name, run, worked.names)) {
        compared++;
        if (one.apart === 0) continue;
        if (!largest || one.apart / one.allowed > largest.apart / largest.allowed)
          largest = { ...one, with: values };
      }
    if (variants === most) break;
  }
  return { variants, all, compared, ...(largest ? { largest } : {}) };
}

function* everyOne({ declared }: ProblemKind, { units }: Setting): Generator<Values> {
  const ranges = Object.entries(declared.vary).map(([name, range]) => [name, range[units]] as const);
  const space = ranges.reduce((all, [, values]) => all * values.length, 1);
  for (let place = 0; place < space; place++) {
    let rest = place;
    yield Object.fromEntries(
      ranges.map(([name, values]) => {
        const value = values[rest % values.length];
        rest = Math.floor(rest / values.length);
        return [name, value];
      }),
    );
  }
}

function* drawn(kind: ProblemKind, { kit, units }: Setting): Generator<Values> {
  const chance = chanceFrom(`routes/${kit.kit}/${units}/${kind.name}`);
  for (;;) yield drawnValues(kind, units, chance);
}

function workedIfFair(kind: ProblemKind, values: Values, setting: Setting) {
  try {
    return workingsFor(kind, values, setting);
  } catch (error) {
    // No problem is made of such values, as when a sheet is drawn.
    if ([Unfair, InputError, NoValueError].some((one) => error instanceof one)) return undefined;
    throw error;
  }
}

type Compared = Omit<Disagreement, 'with'>;

function disagreements(name: string, run: Run, names: Names): Compared[] {
  switch (run.kind) {
    case 'calculation':
      return ofCalculation(run.full);
    case 'among':
      return run.tried.flatMap(({ full }) => ofCalculation(full));
    case 'formula':
      return ofRelations(name, run.declared.check, names);
    case 'series':
      return run.rows.flatMap((row) => ofRelations(name, row.declared.check, row.names));
    case 'decision':
    case 'cases':
    case 'ranking':
      return []; // true or false, which `workingsFor` has demanded
  }
}

const ofCalculation = ({ calculation, checks, found }: FullWork): Compared[] =>
  checks.map(({ of, measured, ours, value, within }) => ({
    of: `${calculation.name} ${measured ?? of}`,
    apart: apart(measured === undefined ? found[of] : ours, value),
    allowed: within,
  }));

/** The two sides of each `=` of a lesson's own check, and what `=` allows there. */
function ofRelations(name: string, relations: readonly string[], names: Names): Compared[] {
  return relations
    .flatMap((relation) => relation.split(/\sand\s/))
    .filter((relation) => /[^<>!]=/.test(relation))
    .map((relation) => {
      const [left = Number.NaN, right = Number.NaN] = numbersOfSides(relation, names);
      return {
        of: name,
        apart: Math.abs(left - right),
        allowed: 1e-9 * Math.max(1, Math.abs(left), Math.abs(right)),
      };
    });
}

/** The most that numbers at the same place of two values lie apart. */
function apart(a: unknown, b: unknown): number {
  if (typeof a === 'number' && typeof b === 'number') return Object.is(a, b) ? 0 : Math.abs(a - b);
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null)
    return a === b ? 0 : Number.POSITIVE_INFINITY;
  const keys = [...new Set([...Object.keys(a), ...Object.keys(b)])];
  return Math.max(0, ...keys.map((key) => apart((a as Values)[key], (b as Values)[key])));
}
