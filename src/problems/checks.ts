import { isMoves } from '../calculations/moves.js';
import type { Check } from '../calculations/work.js';
import { decimals } from '../calculations/working.js';
import type { UnitSystem } from '../units/format.js';
import { numbersOf, relationInWords } from './method.js';
import type { CheckLine } from './problem.js';
import { inWords, measureOf } from './show.js';
import { type Subject, subjectOf } from './subject.js';
import { BARE, type Workings } from './workings.js';

/**
 * The second route's word on a value, for the key.
 *
 * @param told names of the figures told, which prove a value that was drawn and is asked back
 */
export function checksOf(
  subject: Subject,
  workings: Workings,
  system: UnitSystem,
  told: readonly string[] = [],
): CheckLine[] {
  const { from, unit, value } = subject;
  switch (from.kind) {
    case 'found':
      return from.full.checks
        .filter((check) => check.of === from.key)
        .map((check) =>
          check.measured === undefined ? lineOf(check, value, unit, system) : measuredLine(check),
        );
    case 'run':
      return runChecks(from.run, workings, system);
    case 'drawn':
      return told.length > 0
        ? told.flatMap((name) => checksOf(subjectOf(name, workings), workings, system))
        : [...workings.runs.keys()].flatMap((name) => firstCheck(name, workings, system));
  }
}

function lineOf(check: Check, found: unknown, unit: string, system: UnitSystem): CheckLine {
  return {
    source: check.source,
    value: checkedValue(check.value, unit, system),
    agreement: agreement(found, check.value, unit, system),
  };
}

/** Where a measure of what was found is compared: it names its own unit, which is that of no sheet. */
function measuredLine({ source, measured, ours, value }: Check): CheckLine {
  return {
    source,
    value: `${measured}: ${inWords(value, '', 'mm')}`,
    agreement: agreement(ours, value, '', 'mm'),
  };
}

/** Where nothing that was told is found by a working: what proves the first value of each. */
function firstCheck(name: string, workings: Workings, system: UnitSystem): CheckLine[] {
  const run = workings.runs.get(name);
  if (run?.kind !== 'calculation') return checksOf(subjectOf(name, workings), workings, system);
  const [key = ''] = Object.keys(run.full.found);
  return checksOf(subjectOf(name === BARE ? key : `${name}.${key}`, workings), workings, system);
}

function runChecks(
  run: Extract<Subject['from'], { kind: 'run' }>['run'],
  workings: Workings,
  system: UnitSystem,
): CheckLine[] {
  if (run.kind === 'among') {
    const [first] = run.tried;
    const [check] = first?.full.checks ?? [];
    return [
      {
        source: check?.source ?? '',
        value: run.tried.map(({ serves }) => (serves ? 'yes' : 'no')).join(', '),
        agreement: 'exactly',
      },
    ];
  }
  if (run.kind === 'ranking')
    return [
      {
        source: `Put back: each is ${run.declared.from === 'least' ? 'less' : 'more'} than the next`,
        value: run.ranked
          .map(({ value }) => decimals(value, 4))
          .join(run.declared.from === 'least' ? ' < ' : ' > '),
        agreement: 'holds',
      },
      ...run.ranked
        .map(({ name }) => subjectOf(name, workings))
        .filter(({ from }) => from.kind !== 'drawn')
        .flatMap((one) => checksOf(one, workings, system)),
    ];
  if (run.kind === 'series') return run.rows.flatMap((row) => runChecks(row, workings, system));
  const { check } = run.kind === 'cases' ? (run.declared.cases[run.value] ?? { check: [] }) : run.declared;
  const names = run.kind === 'row' ? run.names : workings.names;
  return check.map((relation) => ({
    source: `Put back: ${relationInWords(relation)}`,
    value: numbersOf(relation, workings, system, names),
    agreement: run.kind === 'decision' ? (run.value ? 'true, as found' : 'false, as found') : 'holds',
  }));
}

function checkedValue(value: unknown, unit: string, system: UnitSystem): string {
  if (isMoves(value) && value.every(({ holes }) => holes === 0)) return 'no spaces, on any circle';
  if (isMoves(value)) return value.map(({ holes, circle }) => `${holes} on ${circle}`).join(', ');
  if (Array.isArray(value) && value.length === 0) return 'none';
  return inWords(value, unit, system);
}

/** How near two routes are: `exactly`, or the power of ten they differ by less than. */
export function agreement(a: unknown, b: unknown, unit: string, system: UnitSystem): string {
  if (typeof a !== 'number' || typeof b !== 'number') return 'exactly';
  const { shown, label } = measureOf(unit, system);
  const apart = Math.abs(shown(a) - shown(b));
  // Binary dust is no difference.
  if (apart <= 1e-12 * Math.max(1, Math.abs(shown(a)))) return 'exactly';
  const places = Math.min(9, Math.max(0, Math.floor(-Math.log10(apart))));
  const within = places === 0 ? decimals(apart, 2) : `0.${'0'.repeat(places - 1)}1`;
  return label === '' ? `to ${within}` : `to ${within}\u202F${label}`;
}
