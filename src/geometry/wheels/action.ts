import type { Rolling } from './rolling.js';

/** How a pair goes through mesh; angles of the wheel in radians from where a tooth's flank is on the line of centres. */
export interface Action {
  /** Where a tooth first and last touches its leaf; before the line of centres below 0. */
  readonly first: number;
  readonly last: number;
  /** Ratio of the pinion's speed to the wheel's over one pitch from the first contact, in equal parts. */
  readonly curve: readonly RatioAt[];
  /** How far the pinion is thrown on where a tooth first touches, and falls back where one last does, radians; about 0 in a fair mesh. */
  readonly thrown: number;
  readonly dropped: number;
}

export interface RatioAt {
  readonly wheel: number;
  readonly ratio: number;
}

/** A tooth counts as touching while the leaf it should touch is no further ahead than this, radians of the pinion. */
const TOUCHING = 1e-8;

/** Places tried in one pitch of the wheel. */
const STEPS = 24;

/**
 * Rolls a pair through one pitch.
 *
 * @param parts of the ratio curve; the ratio is taken in the middle of each
 * @returns nothing when at some place no tooth reaches a leaf
 */
export function meshAction(rolling: Rolling, parts: number): Action | undefined {
  const { wheelPitch } = rolling;
  const touching = placesTouching(rolling);
  if (!touching) return undefined;
  const touches = (wheel: number): boolean => {
    const own = rolling.touch(wheel)?.pinion ?? -Infinity;
    return own >= (rolling.drive(wheel)?.pinion ?? 0) - TOUCHING;
  };
  const step = wheelPitch / STEPS;
  const first = turnsTrue(touches, (touching.from - 1) * step, touching.from * step);
  const last = turnsTrue(touches, (touching.to + 1) * step, touching.to * step);
  const curve = Array.from({ length: parts }, (_, i) => {
    const wheel = first + (wheelPitch * (i + 0.5)) / parts;
    return { wheel, ratio: ratioAt(rolling, wheel) };
  });
  const jump = (wheel: number): number => {
    const by = 1e-6 * wheelPitch;
    return (rolling.drive(wheel + by)?.pinion ?? 0) - (rolling.drive(wheel - by)?.pinion ?? 0);
  };
  return { first, last, curve, thrown: jump(first), dropped: -jump(last) };
}

/** The first and last of the places, in steps, at which a tooth touches its leaf; nothing when none reaches at some. */
function placesTouching({ wheelPitch, pinionPitch, reach, touch }: Rolling) {
  const end = Math.ceil(reach / (wheelPitch / STEPS));
  if (!(end > 0)) return undefined;
  const own = Array.from(
    { length: 2 * end + 1 },
    (_, i) => touch((wheelPitch * (i - end)) / STEPS)?.pinion ?? -Infinity,
  );
  // A tooth on touches a pitch later as this one does now.
  const furthest = own.slice(0, STEPS).map((_, i) => {
    const passing = own.filter((_, at) => at % STEPS === i);
    return Math.max(...passing.map((pinion, tooth) => pinion - tooth * pinionPitch));
  });
  if (furthest.includes(-Infinity)) return undefined;
  const touches = own.map((pinion, at) => {
    const tooth = Math.floor(at / STEPS);
    return pinion >= (furthest[at % STEPS] ?? 0) + tooth * pinionPitch - TOUCHING;
  });
  return { from: touches.indexOf(true) - end, to: touches.lastIndexOf(true) - end };
}

/** Where something turns from false to true between two places, by bisection. */
function turnsTrue(test: (at: number) => boolean, no: number, yes: number): number {
  let [out, inside] = [no, yes];
  for (let round = 0; round < 32; round++) {
    const middle = (out + inside) / 2;
    if (test(middle)) inside = middle;
    else out = middle;
  }
  return inside;
}

/** The driving tooth's speed ratio: how fast the pinion's place changes with the wheel's, by a difference. */
function ratioAt({ touch, drive, wheelPitch }: Rolling, wheel: number): number {
  const own = wheel - (drive(wheel)?.tooth ?? 0) * wheelPitch;
  const by = 1e-6 * wheelPitch;
  const [before, after] = [touch(own - by), touch(own + by)];
  return before && after ? (after.pinion - before.pinion) / (2 * by) : Number.NaN;
}

/**
 * The least angle that the pinion can be rocked through with the wheel held, over one pitch; below 0 where the two
 * would cut into each other. The pair is its own mirror image in the line of centres, so that its other sides meet
 * where these do.
 *
 * @returns radians; nothing when at some place no tooth reaches a leaf
 */
export function leastPlay({ pair, wheelPitch, pinionPitch, drive }: Rolling): number | undefined {
  const free = pinionPitch - (2 * pair.leaf.leafThickness) / pair.leaves;
  let least = Infinity;
  for (let i = 0; i <= STEPS / 2; i++) {
    // From a tooth on the line of centres to a space there; the other half of the pitch is the same backwards.
    const wheel = wheelPitch / 4 + (wheelPitch * i) / STEPS;
    const [ahead, behind] = [drive(wheel), drive(wheelPitch / 2 - wheel)];
    if (!ahead || !behind) return undefined;
    least = Math.min(least, free - ahead.pinion - behind.pinion);
  }
  return least;
}
