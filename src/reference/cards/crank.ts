import type { Move } from '../../calculations/moves.js';
import type { Kit } from '../../kit/schema.js';
import type { Desk, Worked } from '../desk.js';
import { safestMove } from '../dividing/safest-move.js';

/** How the crank of the first head is moved for a count of teeth. */
export interface Crank {
  readonly head: string;
  readonly ratio: number;
  readonly circles: readonly number[];
  /** None where no circle serves. */
  readonly move?: Move & { readonly turns: number };
  readonly worked: Worked;
}

/** The same move as the set-up card has; nothing where the kit has no head. */
export function crankFor(teeth: number, { heads: [head] }: Kit, desk: Desk): Crank | undefined {
  if (!head) return undefined;
  const circles = [...new Set(head.plates.flat())];
  const worked = desk.work('dividing.simple', { divisions: teeth, ratio: head.ratio, circles });
  const {
    possible,
    turns = 0,
    settings = [],
  } = worked.found as {
    possible: boolean;
    turns?: number;
    settings?: readonly Move[];
  };
  const move = possible ? safestMove(settings, head.ratio, turns) : undefined;
  return {
    head: `${head.name}, ${head.ratio} : 1`,
    ratio: head.ratio,
    circles,
    worked,
    ...(move ? { move: { ...move, turns } } : {}),
  };
}

/** The move on its circle, `12 on 18`. */
export const movePrinted = ({ worked }: Crank, { circle }: Move) =>
  worked.figure('settings', (settings) => {
    const found = (settings as readonly Move[]).find((one) => one.circle === circle);
    return found ? `${found.holes} on ${found.circle}` : 'none';
  });
