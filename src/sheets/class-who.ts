import type { ClassLine } from './class-model.js';
import type { ClassSetting } from './class-setting.js';
import { textWidth } from './text-width.js';

/** Who a line of a class is: the first cells of every row. */
export interface Who {
  readonly place: string;
  readonly seat: string;
  readonly version: string;
  readonly learner: string;
}

/** One line of a mark sheet: somebody's, or one to spare. */
export type MarkRow = Who & Pick<ClassLine, 'variant'>;

/** Which of those cells there are, and how wide, in mm. */
export interface WhoColumns {
  readonly place: number;
  /** None where no line has one. */
  readonly seat: number;
  readonly version: number;
  readonly learner: number;
  /** Of all of them. */
  readonly width: number;
}

export function whoOf({ seat, version, learner }: ClassLine, place: number): Who {
  return { place: String(place + 1), seat, version, learner };
}

/** Columns that hold every line of a class; a long name goes over two lines. */
export function whoColumns(lines: readonly ClassLine[], setting: ClassSetting): WhoColumns {
  const { letters, gap, name } = setting;
  const fit = (texts: readonly string[], head: string): number => {
    const widest = Math.max(0, ...texts.map((text) => textWidth(text, letters, 600)));
    return widest === 0 ? 0 : Math.max(widest, textWidth(head, letters, 600)) + gap;
  };
  const place = fit([String(Math.max(10, lines.length))], 'No.');
  const seat = fit(
    lines.map((line) => line.seat),
    'Seat',
  );
  const version = fit(
    lines.map((line) => line.version),
    'Version',
  );
  const widest = Math.max(0, ...lines.map((line) => textWidth(line.learner, letters)));
  const learner = Math.min(name, Math.max(name / 2, widest)) + gap;
  return { place, seat, version, learner, width: place + seat + version + learner };
}
