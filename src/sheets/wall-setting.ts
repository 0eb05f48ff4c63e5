import type { SheetStyle } from './model.js';
import { paperOf } from './paper.js';

/** A sheet for the wall: the paper, its margins as CSS has them, and the room between them in mm. */
export interface WallSetting {
  readonly paper: string;
  readonly margin: string;
  readonly width: number;
  readonly height: number;
}

/** Wider at the left: a wall sheet is punched or bound there. */
const LEFT = 20;
const RIGHT = 12;
const BOTTOM = 18;

/** The page of a wall sheet, upright or turned on its side. */
export function wallSettingOf(
  { paper, print }: Pick<SheetStyle, 'paper' | 'print'>,
  turned: boolean,
): WallSetting {
  const { name, width, height } = paperOf(paper, turned);
  const top = print === 'large' ? 24 : 22;
  return {
    paper: name,
    margin: `${top}mm ${RIGHT}mm ${BOTTOM}mm ${LEFT}mm`,
    width: width - LEFT - RIGHT,
    height: height - top - BOTTOM,
  };
}
