/** Two moves on one plate. */
interface Moves {
  readonly turns: number;
  readonly holes1: number;
  readonly circle1: number;
  readonly sense: 'forward' | 'back';
  readonly holes2: number;
  readonly circle2: number;
}

/**
 * How many settings there are, found by trial: each hole of one circle is taken in turn, and what is left of the movement
 * must be whole spaces of the other. Forward and forward, each pair of circles once; forward and back, both ways round.
 */
export function compoundCountByTrial(
  divisions: number,
  ratio: number,
  plates: readonly (readonly number[])[],
): number {
  let count = 0;
  for (const plate of plates) {
    const circles = [...new Set(plate)];
    for (const one of circles)
      for (const other of circles) {
        if (one === other) continue;
        for (let hole = 1; hole < one; hole++) {
          // What is left is part/(divisions × one) of a turn.
          const part = ratio * one - divisions * hole;
          const spaces = part * other;
          if (spaces % (divisions * one) !== 0) continue;
          const left = spaces / (divisions * one);
          if (left % other === 0) continue;
          // Forward on the other circle, after as many whole turns as go in.
          if (one < other && left > 0) count++;
          // Back on the other circle: whole turns can always be found that pass what is left.
          count++;
        }
      }
  }
  return count;
}

/** What two moves come to, `top/bottom` of a turn of the crank in lowest terms. */
export function movesComeTo({ turns, holes1, circle1, sense, holes2, circle2 }: Moves): string {
  const second = sense === 'forward' ? holes2 : -holes2;
  let top = turns * circle1 * circle2 + holes1 * circle2 + second * circle1;
  let bottom = circle1 * circle2;
  // No prime of the bottom is larger than the larger circle.
  for (let factor = 2; factor <= Math.max(circle1, circle2); factor++)
    while (top % factor === 0 && bottom % factor === 0) {
      top /= factor;
      bottom /= factor;
    }
  return `${top}/${bottom}`;
}

/** A fraction brought to lowest terms by dividing out every factor in turn. */
export function inLowestTerms(top: number, bottom: number): string {
  for (let factor = Math.min(top, bottom); factor > 1; factor--)
    if (top % factor === 0 && bottom % factor === 0) return `${top / factor}/${bottom / factor}`;
  return `${top}/${bottom}`;
}
