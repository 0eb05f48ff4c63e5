import type { Move } from '../../calculations/moves.js';

/**
 * The circle to use when several serve: the first on which one space too many or too few cannot come out at a
 * whole number of teeth, for such a slip gives an even wheel with the wrong count, and shows nowhere.
 *
 * @param ratio turns of the crank for one of the work
 * @param turns whole turns for one division
 */
export function safestMove(moves: readonly Move[], ratio: number, turns: number): Move | undefined {
  const slipShows = ({ holes, circle }: Move) =>
    [holes - 1, holes + 1].every((wrong) => {
      const spaces = turns * circle + wrong;
      return spaces > 0 && (ratio * circle) % spaces !== 0;
    });
  return moves.find(slipShows) ?? moves[0];
}
