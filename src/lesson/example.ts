import { showStep, systemOf } from '../calculations/working.js';
import { checksOf } from '../problems/checks.js';
import { methodOf } from '../problems/method.js';
import { angleInWords, inWords } from '../problems/show.js';
import { subjectOf } from '../problems/subject.js';
import type { Workings } from '../problems/workings.js';
import { formatLength, type UnitSystem } from '../units/format.js';
import type { WorkedExample } from './lesson.js';

/** A working set out as a handout prints it. */
export function workedExample(name: string, workings: Workings, system: UnitSystem): WorkedExample {
  const run = workings.runs.get(name);
  if (run?.kind !== 'calculation') {
    const subject = subjectOf(name, workings);
    const { title, symbol, unit, value } = subject;
    return {
      title,
      given: [],
      steps: methodOf(subject, undefined, workings, system),
      found: [{ name: title, symbol, value: bench(value, unit, system) }],
      checks: checksOf(subject, workings, system),
    };
  }
  const { full } = run;
  const { calculation, values, found, symbols } = full;
  const numbers = Object.entries(calculation.found).filter(([key]) => isShown(found[key]));
  return {
    title: calculation.title,
    given: Object.entries(calculation.given)
      .filter(([key]) => values[key] !== undefined)
      .map(([key, { symbol = '', name: said, unit }]) => ({
        name: said,
        symbol,
        value: inWords(values[key], unit, systemOf(symbol, system)),
      })),
    steps: full.steps.map((step) => showStep(step, { values: symbols, units: workings.units }, system)),
    found: numbers.map(([key, { symbol = '', name: said, unit }]) => ({
      name: said,
      symbol,
      value: bench(found[key], unit, systemOf(symbol, system)),
    })),
    checks: numbers.flatMap(([key, { symbol = '' }]) =>
      checksOf(
        subjectOf(name === 'it' ? key : `${name}.${key}`, workings),
        workings,
        systemOf(symbol, system),
      ),
    ),
  };
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
