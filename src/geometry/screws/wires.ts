import type { Path } from '../curves/path.js';
import { distance, type Point } from '../curves/point.js';
import { clearOf, flankOf, levelOnFlank, reach } from './measure.js';
import { type ThreadShape, threadGroove } from './profile.js';

/** Wires for a thread, diameters in mm. */
export interface WireSizes {
  /** Touches the flanks on the pitch line, where an error of the angle does least. */
  readonly best: number;
  /** Its top is level with the crests, or it touches the flanks at their feet: no smaller one can be measured over. */
  readonly smallest: number;
  /** Touches the flanks at their tops. */
  readonly largest: number;
}

/** The wires that rest on the flanks of a thread and stand above its crests. */
export function wiresFor(shape: ThreadShape): WireSizes {
  const groove = threadGroove(shape);
  const { highest } = reach(groove);
  const flank = flankOf(groove);
  const pitchPoint = { x: shape.pitch / 4, y: levelOnFlank(flank, shape.pitch / 4) };
  const deepest = touchingAt(flank, flank.foot);
  const largest = touchingAt(flank, flank.top);
  const proud = bisect(deepest, largest, (wire) => centreIn(groove, wire) + wire / 2 >= highest);
  return { best: touchingAt(flank, pitchPoint), smallest: proud, largest };
}

/**
 * Size over three wires laid in the grooves of a straight-flanked thread, mm, square to the axis; the slope of the
 * helix is left out, as the published rules do.
 *
 * @param diameter over the crests, mm
 */
export function overWires(diameter: number, shape: ThreadShape, wire: number): number {
  const groove = threadGroove(shape);
  const crest = reach(groove).highest;
  return diameter + 2 * (centreIn(groove, wire) - crest) + wire;
}

/** Diameter of the wire that touches a flank at a place of it: square to the flank from there to the groove’s middle. */
function touchingAt({ foot, top }: ReturnType<typeof flankOf>, at: Point): number {
  const slope = (top.x - foot.x) / (top.y - foot.y);
  return 2 * distance(at, { x: 0, y: at.y + at.x * slope });
}

/** How high a wire’s centre lies when it has sunk into the groove as far as it goes. */
function centreIn(groove: Path, wire: number): number {
  const { highest, lowest } = reach(groove);
  return bisect(lowest, highest + wire, (y) => clearOf(groove, { x: 0, y }) >= wire / 2);
}

/** The least value at which something holds that holds from there on; to the last bit. */
function bisect(from: number, to: number, holds: (value: number) => boolean): number {
  if (holds(from)) return from;
  let [low, high] = [from, to];
  for (;;) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) return high;
    if (holds(middle)) high = middle;
    else low = middle;
  }
}
