import type { FigureStyle } from '../figures/index.js';
import type { SheetStyle } from './model.js';
import { paperOf } from './paper.js';

/** What a page of a paper and a size of print has room for, in mm. */
export interface Setting extends FigureStyle {
  /** Tallest a figure may be, its caption allowed for. */
  readonly maxHeight: number;
  /** Size of the text. */
  readonly textSize: number;
  /** As CSS has it. */
  readonly margin: string;
}

const PRINTS = {
  plain: { sides: 24, top: 26, bottom: 22, caption: 18, labelSize: 2.8, points: 11.25 },
  large: { sides: 18, top: 24, bottom: 21, caption: 36, labelSize: 6, points: 18 },
} as const;

/** The page, and the room on it. */
export function settingOf({ paper, print, units }: SheetStyle): Setting {
  const { width, height } = paperOf(paper);
  const { sides, top, bottom, caption, labelSize, points } = PRINTS[print];
  return {
    labelSize,
    units,
    maxWidth: width - 2 * sides,
    maxHeight: height - top - bottom - caption,
    textSize: (points * 25.4) / 72,
    margin: `${top}mm ${sides}mm ${bottom}mm`,
  };
}
