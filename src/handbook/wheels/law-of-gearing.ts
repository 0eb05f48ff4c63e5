import { type Contact, furthestContact, type GearedPair } from './contacts.js';

/** A pair's mesh by the law of gearing; angles in radians, of the wheel from a flank on the line of centres. */
export interface MeshByLaw {
  readonly first: number;
  readonly last: number;
  readonly ratios: readonly { readonly wheel: number; readonly ratio: number }[];
  /** Change of the pinion's angle across first and last contact, radians. */
  readonly thrown: number;
  readonly dropped: number;
}

/** What is called contact: a leaf within so much of the tooth, radians of the pinion. */
const CONTACT = 1e-8;

/** Twenty-fourths of a pitch. */
const PARTS = 24;

/** Which contact turns the pinion furthest, of all the wheel's teeth, with their own pinion angle. */
function furthest(pair: GearedPair, wheel: number): Contact | undefined {
  let best: Contact | undefined;
  for (const tooth of teethNear(pair, wheel)) {
    const one = furthestContact(pair, wheel - (2 * Math.PI * tooth) / pair.teeth);
    if (!one) continue;
    const pinion = one.pinion + (2 * Math.PI * tooth) / pair.leaves;
    if (!best || pinion > best.pinion) best = { pinion, ratio: one.ratio };
  }
  return best;
}

/** Teeth whose tips may lie within the leaves' tip circle: tried one by one to either side. */
function teethNear(pair: GearedPair, wheel: number): number[] {
  const pitch = (2 * Math.PI) / pair.teeth;
  const nearest = Math.round(wheel / pitch);
  const teeth = [nearest];
  for (const sense of [-1, 1])
    for (let n = 1; Math.abs(wheel - (nearest + sense * n) * pitch) <= span(pair); n++)
      teeth.push(nearest + sense * n);
  return teeth;
}

/** How far round the wheel the leaves' tip circle is met, by Heron's triangle of the two tip radii and the centres. */
function span({ teeth, leaves, centres: a, addendum, leaf }: GearedPair): number {
  const [b, c] = [teeth / 2 + addendum, leaves / 2 + leaf.addendum];
  const s = (a + b + c) / 2;
  const half = Math.atan2(Math.sqrt(Math.max(0, (s - a) * (s - b))), Math.sqrt(s * (s - c)));
  return 2 * half + Math.PI / teeth;
}

/**
 * First and last contact of a tooth, and the ratio in the middle of so many parts of one pitch from the first.
 *
 * @returns nothing when at one of 24 places no tooth meets a leaf
 */
export function meshByLaw(pair: GearedPair, parts: number): MeshByLaw | undefined {
  const pitch = (2 * Math.PI) / pair.teeth;
  if (!circlesMeet(pair)) return undefined;
  const inContact = (wheel: number): boolean => {
    const [own, all] = [furthestContact(pair, wheel), furthest(pair, wheel)];
    return own !== undefined && own.pinion >= (all?.pinion ?? 0) - CONTACT;
  };
  const places = Math.ceil(span(pair) / (pitch / PARTS));
  const at = Array.from({ length: 2 * places + 1 }, (_, i) => (pitch * (i - places)) / PARTS);
  // How far behind exact gearing each contact is: the same for a tooth now as for the next one a pitch later.
  const behind = at.map((wheel) => {
    const one = furthestContact(pair, wheel);
    return one ? (wheel * pair.teeth) / pair.leaves - one.pinion : Number.POSITIVE_INFINITY;
  });
  const least = Array.from({ length: PARTS }, (_, i) =>
    Math.min(...behind.filter((_, place) => place % PARTS === i)),
  );
  if (!least.every(Number.isFinite)) return undefined;
  const drives = (one: number, place: number): boolean => one <= (least[place % PARTS] ?? 0) + CONTACT;
  const start = behind.findIndex(drives);
  const end = behind.findLastIndex(drives);
  const edge = (out: number, within: number): number => {
    for (let halving = 0; halving < 32; halving++) {
      const middle = (out + within) / 2;
      if (inContact(middle)) within = middle;
      else out = middle;
    }
    return within;
  };
  const first = edge((at[start] ?? 0) - pitch / PARTS, at[start] ?? 0);
  const last = edge((at[end] ?? 0) + pitch / PARTS, at[end] ?? 0);
  const ratios = Array.from({ length: parts }, (_, i) => {
    const wheel = first + (pitch * (i + 0.5)) / parts;
    return { wheel, ratio: furthest(pair, wheel)?.ratio ?? Number.NaN };
  });
  const across = (wheel: number): number => {
    const [before, after] = [-1e-6, 1e-6].map((by) => furthest(pair, wheel + by * pitch)?.pinion ?? 0);
    return (after ?? 0) - (before ?? 0);
  };
  return { first, last, ratios, thrown: across(first), dropped: -across(last) };
}

const circlesMeet = ({ teeth, leaves, centres, addendum, leaf }: GearedPair): boolean =>
  centres < teeth / 2 + addendum + leaves / 2 + leaf.addendum;

/**
 * Least freedom of the pinion with the wheel held, at 13 places of half a pitch from a tooth on the line of centres,
 * radians: the space between two leaves less what the wheel's two sides take of it.
 *
 * @returns nothing when at one of them no tooth meets a leaf
 */
export function playByLaw(pair: GearedPair): number | undefined {
  if (!circlesMeet(pair)) return undefined;
  const pitch = (2 * Math.PI) / pair.teeth;
  const space = (2 * Math.PI - 2 * pair.leaf.leafThickness) / pair.leaves;
  const left = Array.from({ length: PARTS / 2 + 1 }, (_, i) => {
    const off = (pitch * i) / PARTS;
    const one = furthest(pair, pitch / 4 + off);
    const other = furthest(pair, pitch / 4 - off);
    return one && other && space - one.pinion - other.pinion;
  });
  return left.every((one) => one !== undefined) ? Math.min(...left) : undefined;
}
