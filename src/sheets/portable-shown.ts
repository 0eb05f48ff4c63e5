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
  const { left, formula, numbers, result = BLANK } = line;
  const start = formula === undefined ? left : plainFormula(formula);
  const worked = formula === undefined || numbers === undefined ? [] : [withNumbers(formula, numbers)];
  return [...[start, ...worked].filter((side) => side !== '').map(readable), result].join(' = ');
}
