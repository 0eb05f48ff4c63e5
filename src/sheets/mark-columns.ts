import type { ClassLine } from './class-model.js';
import type { ClassSetting } from './class-setting.js';
import { MARK_LETTERS, type MarkLetter } from './mark-count.js';

/** The boxes for one problem. */
export interface MarkGroup {
  /** `16.3` */
  readonly number: string;
  /** Only letters that the problem has marks for. */
  readonly boxes: readonly { readonly letter: MarkLetter; readonly possible: number }[];
  /** All marks of the problem; what follows through is among those for accuracy. */
  readonly possible: number;
  /** In mm. */
  readonly width: number;
}

/** The boxes of one lesson: the most that any learner can have, should they differ. */
export function markGroups(
  lines: readonly ClassLine[],
  lesson: number,
  { box }: Pick<ClassSetting, 'box'>,
): MarkGroup[] {
  const asked = lines.map(({ lessons }) => lessons[lesson] ?? []);
  const numbers = [...new Set(asked.flatMap((problems) => problems.map(({ number }) => number)))];
  return numbers.map((number) => {
    const same = asked.flatMap((problems) => problems.filter((problem) => problem.number === number));
    const most = (of: (marks: (typeof same)[number]['marks']) => number) =>
      Math.max(...same.map(({ marks }) => of(marks)));
    const boxes = MARK_LETTERS.map((letter) => ({ letter, possible: most((marks) => marks[letter]) })).filter(
      ({ possible }) => possible > 0,
    );
    return {
      number,
      boxes,
      possible: most(({ M, A, B }) => M + A + B),
      width: Math.max(boxes.length, 2) * box,
    };
  });
}

/** All the marks of a lesson. */
export function possibleIn(groups: readonly MarkGroup[]): number {
  return groups.reduce((sum, { possible }) => sum + possible, 0);
}
