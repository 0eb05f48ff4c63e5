import { idlersByTable } from './change-gears.js';
import { gearRatios, lowest } from './gear-ratios.js';

/** What a head, its circles and gears are asked for. */
interface Wanted {
  readonly divisions: number;
  readonly ratio: number;
  readonly circles: readonly number[];
  readonly gears: readonly number[];
}

/** A movement that some gears put right: `top/bottom` turns of the plate, above or below 0. */
interface Reached {
  readonly wheels: number;
  readonly wholeCount: boolean;
  readonly top: number;
  readonly bottom: number;
  /** The count that the movement alone would make. */
  readonly approximate: number;
}

/**
 * Every gear train of the set tried, both ways round: what is left of the head's ratio, shared between the divisions,
 * must be whole spaces of a circle.
 *
 * @param fastest turns of the plate for one of the work beyond which a train is not counted
 * @returns how many movements can be put right, and the simplest of them
 */
export function differentialByTrial({ divisions, ratio, circles, gears }: Wanted, fastest: number) {
  const reached = new Map<string, Reached>();
  for (const { wheels, ...gearing } of gearRatios(gears)) {
    if (gearing.top > fastest * gearing.bottom) continue;
    for (const sign of [1, -1]) {
      const left = ratio * gearing.bottom - sign * gearing.top;
      if (left <= 0) continue;
      const move = lowest(left, divisions * gearing.bottom);
      const wholeTurns = move.bottom === 1;
      for (const circle of circles) {
        if (circle % move.bottom !== 0) continue;
        const key = wholeTurns ? `turns ${move.top}` : `${circle} ${move.top}/${move.bottom}`;
        if (reached.has(key)) continue;
        reached.set(key, {
          wheels,
          wholeCount: (ratio * move.bottom) % move.top === 0,
          top: sign * gearing.top,
          bottom: gearing.bottom,
          approximate: (ratio * move.bottom) / move.top,
        });
      }
    }
  }
  const [simplest] = [...reached.values()].sort(
    (a, b) =>
      a.wheels - b.wheels ||
      Number(b.wholeCount) - Number(a.wholeCount) ||
      Math.abs(a.top) * b.bottom - Math.abs(b.top) * a.bottom ||
      b.top - a.top,
  );
  return { count: reached.size, simplest };
}

/** A setting as the sheet gives it. */
interface Setting {
  readonly approximate: { readonly numerator: number; readonly denominator: number };
  readonly turns: number;
  readonly holes: number;
  readonly circle: number;
  readonly spindleGears: readonly number[];
  readonly plateGears: readonly number[];
  readonly idlers: number;
}

/**
 * Puts a setting back: the crank's spaces over all the divisions, and the plate's turn by the gears as mounted, must
 * together be the head's ratio; every wheel must be owned, and the idlers those of the printed tables.
 */
export function putsRight(
  { approximate, turns, holes, circle, spindleGears, plateGears, idlers }: Setting,
  { divisions, ratio, gears }: Wanted,
): boolean {
  const [first = 1, second = 1] = spindleGears;
  const [third = 1, fourth = 1] = plateGears;
  const [drivers, driven] = [first * second, third * fourth];
  const more = approximate.numerator > divisions * approximate.denominator;
  const crank = divisions * (turns * circle + holes) * driven;
  const plate = (more ? 1 : -1) * drivers * circle;
  const rack = [...gears];
  const owned = [...spindleGears, ...plateGears].every((wheel) => {
    const place = rack.indexOf(wheel);
    if (place >= 0) rack.splice(place, 1);
    return place >= 0;
  });
  return (
    crank + plate === ratio * circle * driven &&
    owned &&
    idlersByTable(spindleGears.length + plateGears.length, more) === idlers &&
    (turns * circle + holes) * approximate.numerator === ratio * circle * approximate.denominator
  );
}
