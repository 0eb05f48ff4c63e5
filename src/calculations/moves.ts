import { counted, listInWords } from '../units/words.js';

/** A movement of the crank beyond its whole turns. */
export interface Move {
  /** Spaces moved; the trade's name for them. */
  readonly holes: number;
  readonly circle: number;
}

/** Whether a value is a list of movements, at least one. */
export function isMoves(value: unknown): value is readonly Move[] {
  return Array.isArray(value) && value.length > 0 && value.every(isMove);
}

const isMove = (one: unknown): one is Move =>
  typeof one === 'object' && one !== null && 'circle' in one && 'holes' in one;

/** `12 spaces`, `1 whole turn and 2 spaces`. */
export function spacesInWords(turns: number, spaces: number): string {
  return `${turns === 0 ? '' : `${counted(turns, 'whole turn')} and `}${counted(spaces, 'space')}`;
}

/** `1 whole turn and 2 spaces on the 28-hole circle or 3 on the 42`; of whole turns alone, any circle serves. */
export function movesInWords(turns: number, moves: readonly Move[]): string {
  if (moves.every(({ holes }) => holes === 0)) return `${counted(turns, 'whole turn')} and no spaces`;
  return listInWords(
    moves.map(({ holes, circle }, place) =>
      place === 0
        ? `${spacesInWords(turns, holes)} on the ${circle}-hole circle`
        : `${holes} on the ${circle}`,
    ),
    'or',
  );
}
