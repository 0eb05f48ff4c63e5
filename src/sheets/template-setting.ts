import type { SheetStyle } from './model.js';
import { paperOf } from './paper.js';

/** A page of a template: the paper, its margins as CSS has them, and the room for the drawing; mm. */
export interface TemplateSetting {
  readonly paper: string;
  readonly margin: string;
  readonly width: number;
  readonly height: number;
  readonly labelSize: number;
}

/** Narrower than other sheets’: every mm of the paper is wanted. Few printers reach nearer to the edge than this. */
const SIDES = 12;
const PRINTS = {
  plain: {
    top: 20,
    bottom: 16,
    labelSize: 2.8,
    title: 10.5,
    banner: 9,
    heading: { size: 4.94, line: 6.6, white: 4 },
  },
  large: {
    top: 22,
    bottom: 18,
    labelSize: 6,
    title: 13,
    banner: 24,
    heading: { size: 7.06, line: 9.2, white: 5 },
  },
};
/** A letter of a heading is no wider than this on the whole, as a share of its size. */
const LETTER = 0.55;

/** The page of a template, upright or turned on its side. */
export function templateSettingOf(
  { paper, print }: Pick<SheetStyle, 'paper' | 'print'>,
  turned: boolean,
): TemplateSetting {
  const { name, width, height } = paperOf(paper, turned);
  const { top, bottom, labelSize } = PRINTS[print];
  return {
    paper: name,
    margin: `${top}mm ${SIDES}mm ${bottom}mm`,
    width: width - 2 * SIDES,
    height: height - top - bottom,
    labelSize,
  };
}

/** How much of a page’s height stands over the drawing: the sheet’s title, and so many letters. */
export function headingsOf(print: SheetStyle['print'], letters: number, width: number): number {
  const { title, heading } = PRINTS[print];
  const lines = Math.ceil((letters * LETTER * heading.size) / width);
  return title + lines * heading.line + heading.white;
}
