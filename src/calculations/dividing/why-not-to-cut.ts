import { counted } from '../../units/words.js';

interface Head {
  readonly divisions: number;
  readonly ratio: number;
}

interface Movement {
  readonly turns: number;
  readonly holes: number;
  readonly circle: number;
  readonly closingErrorArcSeconds: number;
}

/** Why a wheel must not be cut by the nearest movement, when that closes more than half a pitch out. */
export function whyNotToCut(movement: Movement, { divisions, ratio }: Head): string | undefined {
  const pitches = Math.abs(movement.closingErrorArcSeconds * divisions) / 1_296_000;
  if (pitches <= 0.5) return undefined;
  const { turns, holes, circle } = movement;
  const made = (ratio * circle) / (turns * circle + holes);
  const few = Math.floor(made);
  const makes = Number.isInteger(made)
    ? `this move makes ${counted(made, 'division')}`
    : `this move makes between ${few} and ${few + 1} divisions`;
  return `closes ${pitchesInWords(pitches)} out: ${makes}; do not cut`;
}

/** `nearly 3 pitches`, `a little over 2 pitches`, `2 pitches`. */
function pitchesInWords(pitches: number): string {
  if (pitches < 0.9) return `${pitches.toFixed(1)} of a pitch`;
  const nearest = Math.round(pitches);
  const off = pitches - nearest;
  const words = counted(nearest, 'pitch', 'pitches');
  if (Math.abs(off) < 0.005) return words;
  if (Math.abs(off) > 0.25) return `about ${pitches.toFixed(1)} pitches`;
  return off < 0 ? `nearly ${words}` : `a little over ${words}`;
}
