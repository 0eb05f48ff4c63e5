import type { SheetStyle } from './model.js';
import { paperOf } from './paper.js';

/** A sheet for the instructor lies on its side; sizes in mm. */
export interface ClassSetting {
  /** As CSS has it. */
  readonly paper: string;
  readonly margin: string;
  /** Room for a table. */
  readonly width: number;
  /** Size of what stands in a table. */
  readonly letters: number;
  /** Room at the right of a cell. */
  readonly gap: number;
  /** Widest that a name may stand on one line, and an answer. */
  readonly name: number;
  readonly answer: number;
  /** Least width of a box for one mark. */
  readonly box: number;
}

const SIDES = 14;
const MM_PER_POINT = 25.4 / 72;
const PRINTS = {
  plain: { points: 9.5, gap: 3, name: 52, answer: 64, box: 7 },
  large: { points: 16, gap: 4, name: 74, answer: 100, box: 11 },
} as const;

/** The page, and the room on it. */
export function classSettingOf({ paper, print }: Pick<SheetStyle, 'paper' | 'print'>): ClassSetting {
  const { points, ...sizes } = PRINTS[print];
  const { name, width } = paperOf(paper, true);
  return {
    ...sizes,
    paper: name,
    margin: `18mm ${SIDES}mm 15mm`,
    width: width - 2 * SIDES,
    letters: points * MM_PER_POINT,
  };
}
