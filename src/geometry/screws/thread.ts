import { flankOf, levelOnFlank, reach } from './measure.js';
import { type ThreadShape, threadGroove } from './profile.js';

/** A thread measured on its drawn profile, mm. */
export interface ThreadSizes {
  readonly pitchDiameter: number;
  /** Across the bottoms of the groove. */
  readonly rootDiameter: number;
  /** From crest to bottom. */
  readonly depth: number;
  /** Of the triangle before its corners are taken off. */
  readonly sharpHeight: number;
}

/**
 * Draws the groove of a thread and measures it.
 *
 * @param diameter over the crests, mm, more than twice the depth
 */
export function threadSizes(diameter: number, shape: ThreadShape): ThreadSizes {
  const groove = threadGroove(shape);
  const { highest, lowest } = reach(groove);
  const flank = flankOf(groove);
  // On the pitch line the groove is as wide as the ridge: half a pitch.
  const pitchLine = levelOnFlank(flank, shape.pitch / 4);
  return {
    pitchDiameter: diameter - 2 * (highest - pitchLine),
    rootDiameter: diameter - 2 * (highest - lowest),
    depth: highest - lowest,
    sharpHeight: levelOnFlank(flank, shape.pitch / 2) - levelOnFlank(flank, 0),
  };
}
