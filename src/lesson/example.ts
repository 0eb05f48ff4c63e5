import type { FoundQuantity, Step } from '../calculations/calculation.js';
import { isMoves, movesInWords } from '../calculations/moves.js';
import type { FullWork } from '../calculations/work.js';
import { showStep, stepsTo, systemOf } from '../calculations/working.js';
import { symbolsOf } from '../formula/formula.js';
import { checksOf } from '../problems/checks.js';
import { Fault } from '../problems/fault.js';
import { methodOf } from '../problems/method.js';
import { angleInWords, inWords } from '../problems/show.js';
import { subjectOf } from '../problems/subject.js';
import { BARE, type Workings } from '../problems/workings.js';
import { formatLength, type UnitSystem } from '../units/format.js';
import type { WorkedExample } from './lesson.js';

/**
 * A working set out as a handout prints it.
 *
 * @param show the found values that it is about, with commas between; empty for all
 * @throws {Fault} when the working does not find one of them
 */
export function workedExample(
  name: string,
  show: string,
  workings: Workings,
  system: UnitSystem,
): WorkedExample {
  const run = workings.runs.get(name);
  if (run?.kind !== 'calculation') {
    const subject = subjectOf(name, workings);
    const { title, symbol, unit, value } = subject;
    const own = systemOf(symbol, system);
    return {
      title,
      given: [],
      steps: methodOf(subject, undefined, workings, system),
      found: [{ name: title, symbol, value: bench(value, unit, own) }],
      checks: checksOf(subject, workings, own),
    };
  }
  const { full } = run;
  const { calculation, values, found, symbols } = full;
  const keys = keysShown(full, show);
  const steps = show === '' ? full.steps : stepsShown(full, keys);
  const used = new Set(steps.flatMap((step) => (typeof step === 'string' ? symbolsOf(step) : [])));
  return {
    title: calculation.title,
    given: Object.entries(calculation.given)
      .filter(
        ([key, { symbol }]) => values[key] !== undefined && (show === '' || !symbol || used.has(symbol)),
      )
      .map(([key, { symbol = '', name: said, unit }]) => ({
        name: said,
        symbol,
        value: inWords(values[key], unit, systemOf(symbol, system)),
      })),
    steps: steps.map((step) => showStep(step, { values: symbols, units: workings.units }, system)),
    found: keys.map((key) => {
      const { symbol = '', name: said, unit } = calculation.found[key] as FoundQuantity;
      const moves = isMoves(found[key]) ? movesInWords(Number(found.turns), found[key]) : undefined;
      return { name: said, symbol, value: moves ?? bench(found[key], unit, systemOf(symbol, system)) };
    }),
    checks: keys.flatMap((key) =>
      checksOf(
        subjectOf(name === BARE ? key : `${name}.${key}`, workings),
        workings,
        systemOf(calculation.found[key]?.symbol ?? '', system),
      ),
    ),
  };
}

function keysShown({ calculation, found }: FullWork, show: string): string[] {
  const keys = Object.keys(calculation.found);
  // The whole turns are told with the spaces.
  const moves = keys.filter((key) => isMoves(found[key]));
  if (show === '') return moves.length > 0 ? moves : keys.filter((key) => isShown(found[key]));
  return show.split(',').map((word) => {
    const key = word.trim();
    if (keys.includes(key)) return key;
    throw new Fault(`${calculation.name} does not find ${key}`, [], '', [`It finds ${keys.join(', ')}.`]);
  });
}

/** The formulas that lead to what is shown, in their order. */
function stepsShown({ calculation, steps }: FullWork, keys: readonly string[]): Step[] {
  const wanted = new Set(keys.flatMap((key) => stepsTo(calculation.found[key]?.symbol ?? key, steps)));
  return wanted.size === 0 ? [...steps] : steps.filter((step) => wanted.has(step));
}

const isShown = (value: unknown): boolean =>
  typeof value === 'number' || (Array.isArray(value) && typeof value[0] === 'number');

/** As it is used at the bench: lengths to 0.01 mm or 0.001 in, angles to the second. */
function bench(value: unknown, unit: string, system: UnitSystem): string {
  if (Array.isArray(value)) return value.map((one) => bench(one, unit, system)).join(', ');
  if (typeof value !== 'number') return inWords(value, unit, system);
  if (unit === 'mm') return formatLength(value, system);
  return unit === '°' ? angleInWords(value, 'second') : inWords(value, unit, system);
}
