import type { ExpectedMoves } from '../expected.js';
import type { SlipLine } from '../problem.js';
import { howToWrite } from './how-to-write.js';
import { type Movement, movementOf } from './movement.js';
import { near, RIGHT, slipped, unread, type Verdict, WRONG } from './verdict.js';
import { saysNo } from './yes-no.js';

/** What is said of a movement of the crank. @param text tidied */
export function takeMoves(text: string, expects: ExpectedMoves, slips: readonly SlipLine[]): Verdict {
  const possible = expects.moves.length > 0;
  if (saysNo(text)) return possible ? WRONG : RIGHT;
  const movements = movementsOf(text);
  if (!movements) return unread(howToWrite(expects));
  if (!possible) return WRONG;
  const verdicts = movements.map((movement) => verdictOn(movement, expects, slips));
  // Of several that are given all must serve.
  return verdicts.find(({ kind }) => kind !== 'right') ?? RIGHT;
}

/** One movement, or several to choose from: `2 on 28 or 3 on 42`; the turns of the first go for all. */
function movementsOf(text: string): readonly Movement[] | undefined {
  for (const between of [/$^/, / or |[;()]/, / or |[;(),]/]) {
    const pieces = text.split(between).filter((piece) => piece.trim() !== '');
    const movements = pieces.flatMap((piece) => movementOf(piece) ?? []);
    if (movements.length === 0 || movements.length < pieces.length) continue;
    // Numbers alone are no movements to choose from.
    if (movements.length > 1 && movements.every(({ circle }) => circle === undefined)) continue;
    const turns = movements[0]?.turns ?? 0;
    return movements.map((one) =>
      one.circle === undefined || one.turns > 0 ? one : { ...one, turns, value: turns + one.value },
    );
  }
  return undefined;
}

const SAME = 1e-9;
const same = (a: number, b: number): boolean => Math.abs(a - b) < SAME;

function verdictOn(movement: Movement, { turns, moves }: ExpectedMoves, slips: readonly SlipLine[]): Verdict {
  const { value, circle, half = 0 } = movement;
  const [first] = moves;
  if (!first) return WRONG;
  const right = turns + first.holes / first.circle;
  if (same(value, right)) {
    const owned = circle === undefined || first.holes === 0 || moves.some((move) => move.circle === circle);
    return owned
      ? RIGHT
      : near(`That is the right part of a turn, but there is no ${circle}-hole circle to set it on.`);
  }
  const slip = slips.find(({ gives, shown }) =>
    same(
      value,
      shown === undefined ? (movementOf(gives)?.value ?? Number.NaN) : turns + shown / first.circle,
    ),
  );
  return slip ? slipped(slip) : (nearly(movement, { right, half, turns, moves }) ?? WRONG);
}

interface Aim {
  readonly right: number;
  readonly half: number;
  readonly turns: number;
  readonly moves: ExpectedMoves['moves'];
}

function nearly(movement: Movement, { right, half, turns, moves }: Aim): Verdict | undefined {
  const { value, circle } = movement;
  if (half > 0 && half < 0.05 && Math.abs(value - right) <= half)
    return near('As a decimal it cannot be set on a plate: give spaces and a circle.');
  if (right !== turns && turns !== movement.turns && same(value - movement.turns, right - turns))
    return near('The spaces are right, but the whole turns are not.');
  if (same(value * right, 1)) return near('That is upside down: first come the spaces, then the circle.');
  if (circle === undefined) return undefined;
  const off = Math.round((value - right) * circle);
  const owned = moves.some((move) => move.circle === circle);
  if (owned && Math.abs(off) === 1 && same(value, right + off / circle))
    return near(`That is one space too ${off > 0 ? 'many' : 'few'}: the hole that the pin is in is nought.`);
  return undefined;
}
