import { endOf, joined, type Path, shifted } from '../../../geometry/curves/path.js';
import { type ThreadShape, threadGroove } from '../../../geometry/screws/profile.js';

/** So many ridges of a thread in section, from the middle of one groove to the middle of another; x 0 at the left. */
export function threadRow(shape: ThreadShape, ridges: number): Path {
  const groove = threadGroove(shape);
  const middle = groove.segments.length / 2;
  const leftSide: Path = { start: groove.start, segments: groove.segments.slice(0, middle) };
  const rightSide: Path = { start: endOf(leftSide), segments: groove.segments.slice(middle) };
  const grooves = Array.from({ length: ridges - 1 }, (_, i) => ({ x: (i + 1) * shape.pitch, y: 0 }));
  return joined(
    rightSide,
    ...grooves.map((place) => shifted(groove, place)),
    shifted(leftSide, { x: ridges * shape.pitch, y: 0 }),
  );
}
