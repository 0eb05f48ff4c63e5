import type { ExpectedMoves } from '../../../src/problems/expected.js';
import { plain } from './plain.js';

/** Ways to write a movement of the crank. */
export function movementWays(turns: number, holes: number, circle: number): string[] {
  if (holes === 0 && turns > 0)
    return [
      `${turns}`,
      `${turns} turns`,
      `${turns} whole turns and no spaces`,
      `${turns} turns and 0 on ${circle}`,
    ];
  const all = turns * circle + holes;
  const [top, bottom] = lowest(holes, circle);
  const before =
    turns === 0
      ? ['']
      : [`${turns} turns and `, `${turns} turns + `, `${turns} turns, `, `${turns} whole turns and `];
  const mixed = turns === 0 ? '' : `${turns} `;
  return [
    ...before.flatMap((one) => [
      `${one}${holes} on ${circle}`,
      `${one}${holes} on the ${circle}`,
      `${one}${holes} holes on the ${circle} circle`,
      `${one}${holes} spaces in the ${circle}-hole circle`,
      `${one}${holes}/${circle}`,
      `${one}${top}/${bottom}`,
    ]),
    `${mixed}${holes}/${circle}`,
    `${mixed}${top}/${bottom}`,
    `${mixed}${top}/${bottom} turn`,
    `${mixed}${holes * 3}/${circle * 3} of a turn`,
    `${all}/${circle}`,
    `${all} on ${circle}`,
    `${all} holes on the ${circle} circle`,
    `${turns === 0 ? '' : `${turns} turns, `}on the ${circle} circle ${holes} spaces`,
  ];
}

/** Every right movement in every way, and those of the plate together; or that there is none. */
export function rightMoves({ turns, moves }: ExpectedMoves): string[] {
  if (moves.length === 0)
    return [
      'not possible',
      'Not possible.',
      'no',
      'impossible',
      'cannot be done',
      "it can't be done",
      'none',
    ];
  const each = moves.map(({ holes, circle }) => `${holes} on ${circle}`).join(' or ');
  return [
    ...moves.flatMap(({ holes, circle }) => movementWays(turns, holes, circle)),
    ...(turns === 0 ? [each] : []),
  ];
}

/** A movement as it is printed, `1 whole turn and 10 spaces on the 21-hole circle`, in every way. */
export function printedMove(printed: string): string[] {
  const {
    turns = '0',
    spaces = '',
    circle = '',
  } = /^(?:(?<turns>\d+) whole turns? and )?(?<spaces>\d+) spaces? on the (?<circle>\d+)-hole circle$/.exec(
    plain(printed),
  )?.groups ?? {};
  if (circle === '') throw new Error(`${printed} is no movement`);
  return movementWays(Number(turns), Number(spaces), Number(circle));
}

function lowest(top: number, bottom: number): readonly [number, number] {
  let [a, b] = [top, bottom];
  while (b !== 0) [a, b] = [b, a % b];
  return [top / a, bottom / a];
}
