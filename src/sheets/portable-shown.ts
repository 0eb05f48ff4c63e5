import { plainFormula, withNumbers } from '../formula/formula.js';
import type { Shown, ShownLine } from '../problems/shown.js';
import { readable } from './portable-step.js';

/** What stands where the learner is to write. */
const BLANK = '____';

/** What is printed under a question, line by line; of a table, cell by cell. */
export function shownRows(shown: Shown): readonly (readonly string[])[] {
  if (shown.kind === 'table')
    return [shown.heads, ...shown.rows.map(({ head, value = BLANK }) => [head, value])];
  return shown.lines.map((line, at) => [`${shown.numbered ? `${at + 1}. ` : ''}${lineOf(line)}`]);
}

function lineOf(line: ShownLine): string {
  if ('say' in line) return line.blank ? `${line.say} ${BLANK}` : line.say;
  const { left, formula, numbers, result } = line;
  const start = formula === undefined ? left : plainFormula(formula);
  const sides = [start, ...workedOf(formula, numbers, result)].filter(
    (side) => side !== '' && side !== result,
  );
  return [...sides.map(readable), result ?? BLANK].join(' = ');
}

/** A formula with its numbers; a blank for them where the result is left out as well. */
function workedOf(
  formula: string | undefined,
  numbers: Readonly<Record<string, string>> | undefined,
  result: string | undefined,
): string[] {
  if (formula === undefined) return [];
  if (numbers !== undefined) return [withNumbers(formula, numbers)];
  return result === undefined ? [BLANK] : [];
}
