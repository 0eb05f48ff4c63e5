import { counted } from '../../units/words.js';

/** A wheel that was meant, the circle it was cut on, and what was seen of it. */
export interface Meant {
  readonly divisions: number;
  readonly ratio: number;
  readonly circle: number;
  readonly intendedHoles: number;
  readonly teethCut?: number | undefined;
  readonly closingGapAngle?: number | undefined;
}

/** What was moved, steadily and at one slip, and the whole teeth it makes. */
interface Moved {
  readonly holesMoved: number;
  readonly onceSpaces: number;
  readonly teethCut: number;
}

/** What went wrong, in the words of the shop; a sentence without its full stop. */
export function reasonFor(moved: Moved, meant: Meant): string {
  const steady = steadySlip(moved.holesMoved, meant);
  const once = moved.onceSpaces;
  const single = `one move was ${counted(Math.abs(once), 'space')} ${once < 0 ? 'short' : 'over'} and never put back`;
  if (once === 0)
    return [isSmallGap(moved, meant) ? SMALL_GAP : steady, ...thinTooth(moved, meant)].join('; ');
  return moved.holesMoved === meant.intendedHoles
    ? `the move was right, but ${single}`
    : `${steady}; and ${single}`;
}

const SMALL_GAP =
  'the gap is less than half a space: no slip of whole spaces; look for backlash or the plate';

/** Whether the moves are as meant and only a gap too small for a space is left to explain. */
function isSmallGap({ holesMoved }: Moved, meant: Meant): boolean {
  const gap = Math.abs(meant.closingGapAngle ?? 0) * meant.ratio * meant.circle;
  return holesMoved === meant.intendedHoles && gap > 0 && gap < 180;
}

/** Why fewer teeth are found than were counted. */
function thinTooth({ teethCut }: Moved, { teethCut: seen }: Meant): string[] {
  return seen === teethCut + 1 ? [`${teethCut} whole teeth and a thin one, counted as number ${seen}`] : [];
}

function steadySlip(holes: number, { divisions, ratio, circle, intendedHoles }: Meant): string {
  const full = ratio * circle;
  const off = holes - intendedHoles;
  const teeth = full / holes;
  if (off === 0)
    return full === divisions * holes
      ? 'the move was the right one every time'
      : `the move was made as meant, but it is not exact: this circle does not make ${divisions}`;
  const cause = causes(off, circle);
  return Number.isInteger(teeth) && teeth !== divisions
    ? `${cause}; ${teeth} teeth come out even, so the last tooth could give no warning`
    : cause;
}

function causes(off: number, circle: number): string {
  const size = counted(Math.abs(off), 'space');
  if (off === -1) return 'one space short each time: the hole the pin stood in was counted as the first';
  if (off === 1) return 'one space over each time: the arms held one hole too many';
  if (Math.abs(off) === circle) return `a whole turn ${off < 0 ? 'left out' : 'too many'} each time`;
  return `${size} ${off < 0 ? 'short' : 'over'} each time`;
}
