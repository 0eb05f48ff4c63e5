import { idlersByTable } from './change-gears.js';

/** What a head, its circles and gears are asked for. */
interface Wanted {
  readonly divisions: number;
  readonly ratio: number;
  readonly circles: readonly number[];
  readonly gears: readonly number[];
}

/** The limits that the list of settings states. */
const LARGEST_RATIO = 6;
const MOST_SPACES = 40;

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
 * @returns how many movements can be put right, and the simplest of them
 */
export function differentialByTrial({ divisions, ratio, circles, gears }: Wanted) {
  const reached = new Map<string, Reached>();
  const reduced = new Map<string, boolean>();
  for (const { top, bottom, wheels } of trains(gears)) {
    if (top > LARGEST_RATIO * bottom) continue;
    const gearing = lowest(top, bottom);
    const name = `${gearing.top}/${gearing.bottom}`;
    // The same ratio by other wheels adds nothing; trains of two wheels come first.
    if (reduced.has(name)) continue;
    reduced.set(name, true);
    for (const sign of [1, -1]) {
      const left = ratio * gearing.bottom - sign * gearing.top;
      if (left <= 0) continue;
      const move = lowest(left, divisions * gearing.bottom);
      const wholeTurns = move.bottom === 1;
      for (const circle of circles) {
        if (circle % move.bottom !== 0 || gearing.top * circle > MOST_SPACES * divisions * gearing.bottom)
          continue;
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

/** Every train of two wheels, then every train of four; no wheel oftener than it is owned. */
function* trains(gears: readonly number[]) {
  for (const [i, top] of gears.entries())
    for (const [j, bottom] of gears.entries()) if (i !== j) yield { top, bottom, wheels: 2 };
  const pairs = new Map<string, readonly [number, number]>();
  gears.forEach((one, i) => {
    for (const other of gears.slice(i + 1))
      pairs.set(`${Math.min(one, other)} ${Math.max(one, other)}`, [one, other]);
  });
  const owned = (teeth: number) => gears.filter((one) => one === teeth).length;
  const spare = new Map([...new Set(gears)].map((teeth) => [teeth, owned(teeth)]));
  const two = [...pairs.values()];
  for (const drivers of two)
    for (const driven of two) {
      const shared = drivers.filter((one) => driven.includes(one));
      const enough = shared.every(
        (one) => [...drivers, ...driven].filter((other) => other === one).length <= (spare.get(one) ?? 0),
      );
      if (enough) yield { top: drivers[0] * drivers[1], bottom: driven[0] * driven[1], wheels: 4 };
    }
}

function lowest(top: number, bottom: number) {
  let [a, b] = [top, bottom];
  while (b > 0) [a, b] = [b, a % b];
  return { top: top / a, bottom: bottom / a };
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
