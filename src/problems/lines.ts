import { systemOf, type WorkingStep } from '../calculations/working.js';
import type { UnitSystem } from '../units/format.js';
import { Fault, placed } from './fault.js';
import { methodOf } from './method.js';
import { namesIn } from './names.js';
import { headOf, type SeriesRun } from './run.js';
import { inWords } from './show.js';
import type { Shown, ShownLine } from './shown.js';
import { subjectOf } from './subject.js';
import type { Workings } from './workings.js';

/** A line that is printed otherwise than it comes out: left blank, or with these words and that result in it. */
export type Changed = ReadonlyMap<string, 'blank' | WorkingStep>;

/**
 * The lines of a working, one for each name, or the table of a series.
 *
 * @param names as the problem's `lines` has them
 * @param changed by name; a row of a series is `readings.3`, counted from 0
 * @throws {Fault} an unknown name, or a series among others
 */
export function linesOf(
  names: readonly string[],
  workings: Workings,
  units: UnitSystem,
  changed: Changed,
  numbered: boolean,
): Shown {
  const series = seriesAmong(names, workings);
  if (series) return tableOf(names[0] ?? '', series, units, changed);
  const blanks = [...changed].filter(([, change]) => change === 'blank').map(([name]) => name);
  return {
    kind: 'working',
    numbered,
    lines: names.map((name): ShownLine => {
      const change = changed.get(name);
      const own = () => placed(['lines'], () => lineOf(name, workings, units));
      const step = change === undefined || change === 'blank' ? own() : change;
      if ('say' in step)
        return change === 'blank'
          ? { say: step.say.replace(/: [^:]*$/, ':'), blank: true }
          : { say: step.say, blank: false };
      const left = step.formula.includes('=') ? step.formula.slice(0, step.formula.indexOf('=')).trim() : '';
      if (change === 'blank') return { left };
      const { formula, numbers, result } = step;
      // A line worked from the one that is missing would tell it.
      return blanks.some((blank) => isNamedBy(name, blank, workings))
        ? { left, formula, result }
        : { left, formula, numbers, result };
    }),
  };
}

/** The names of all lines in their order; a series has one for each row. */
export function namesOfLines(names: readonly string[], workings: Workings): string[] {
  const series = seriesAmong(names, workings);
  return series ? series.rows.map((_, at) => `${names[0]}.${at}`) : [...names];
}

/** The last step of a value's working, or the value with its name. */
function lineOf(name: string, workings: Workings, units: UnitSystem): WorkingStep {
  const subject = subjectOf(name, workings);
  const system = systemOf(subject.symbol, units);
  const last = methodOf(subject, undefined, workings, system).at(-1);
  return last && !('say' in last)
    ? last
    : {
        say: `${subject.title.replace(/^./, (c) => c.toUpperCase())}: ${inWords(subject.value, subject.unit, system)}`,
      };
}

function seriesAmong(names: readonly string[], workings: Workings): SeriesRun | undefined {
  const all = names.map((name) => workings.runs.get(name));
  const series = all.find((run) => run?.kind === 'series');
  if (series && names.length > 1)
    throw new Fault('a series is a table of its own: name nothing beside it', ['lines']);
  return series;
}

function tableOf(name: string, { declared, rows }: SeriesRun, units: UnitSystem, changed: Changed): Shown {
  const { title, unit, symbol } = declared;
  const system = systemOf(symbol ?? '', units);
  const capital = (words: string): string => words.replace(/^./, (c) => c.toUpperCase());
  return {
    kind: 'table',
    heads: [capital(headOf(declared)), capital(title ?? name)],
    rows: rows.map(({ head, value }, at) => {
      const change = changed.get(`${name}.${at}`);
      const shown = change === undefined || change === 'blank' || 'say' in change ? undefined : change.result;
      return {
        head: inWords(head, '', system),
        ...(change === 'blank' ? {} : { value: shown ?? inWords(value, unit, system) }),
      };
    }),
  };
}

/** Whether a line's own formula names a value. */
function isNamedBy(line: string, name: string, workings: Workings): boolean {
  const { from } = subjectOf(line, workings);
  if (from.kind === 'run' && from.run.kind === 'formula')
    return namesIn(from.run.declared.formula).includes(name);
  return false;
}
