// The workbook that classes are measured with: the problem sheets of three sample lessons, 13 pages with some 90
// formulas and 3 figures for each learner, no two alike.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { choose } from '../../dist/pack/choose.js';
import { planOf } from '../../dist/pack/plan.js';

export const LESSONS = ['01-sizes-on-the-bench', '04-trains-and-beats', '06-blank-and-pinion-sizes'];

/** The list of a class, as a file in a folder. */
export function classOf(count, folder) {
  const file = join(folder, `class-${count}.csv`);
  writeFileSync(file, ['name', ...Array.from({ length: count }, (_, i) => `Learner ${i + 1}`)].join('\n'));
  return file;
}

/** The plan of a class's workbooks. */
export function planOfClass(learners) {
  const { course, kit } = choose(LESSONS);
  return planOf({ course, kit, paper: 'a4', print: 'plain', learners, only: new Set(['problems']) });
}
