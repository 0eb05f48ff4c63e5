/** Pieces an arc is parted into; the rule's error falls with the fourth power of their number. */
const PIECES = 1024;

/**
 * Length of an arc from chords alone, after Huygens: eight times the chord of half an arc, less the chord of the
 * whole, divided by three; taken over many small pieces.
 *
 * @param angle at the centre, degrees up to 360
 */
export function arcByChords(diameter: number, angle: number): number {
  const piece = (angle / PIECES) * (Math.PI / 180);
  const chord = (turn: number): number => diameter * Math.sin(turn / 2);
  return (PIECES * (8 * chord(piece / 2) - chord(piece))) / 3;
}

/** Halvings after which chord and arc are the same to the last figure. */
const HALVINGS = 28;

/**
 * Length of a chord without a sine: the angle halved until its arc is as good as straight, and that chord doubled
 * back by Archimedes' rule, from the chord of an angle to that of twice as much.
 *
 * @param angle at the centre, degrees up to 360
 */
export function chordByHalving(diameter: number, angle: number): number {
  let share = ((angle / 2 ** HALVINGS) * Math.PI) / 360;
  for (let step = 0; step < HALVINGS; step++) share *= 2 * Math.sqrt((1 - share) * (1 + share));
  return diameter * share;
}
