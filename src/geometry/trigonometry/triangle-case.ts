/** Three of the six parts of a triangle: side a lies opposite angle A; sides mm, angles degrees. */
export type Parts = Readonly<Partial<Record<'a' | 'b' | 'c' | 'A' | 'B' | 'C', number | undefined>>>;

/** A corner, A, B or C, by number; the side opposite it has the same number. */
export type Corner = 0 | 1 | 2;

/** One thing for each corner, or for each side. */
export type Triple<T = number> = readonly [T, T, T];

/** The corner after each, in turn. */
export const NEXT: Triple<Corner> = [1, 2, 0];

/** The corner that two others leave. */
export const third = (one: Corner, other: Corner): Corner => (3 - one - other) as Corner;

/** Which three parts are given. */
export type Case =
  | { readonly kind: 'SSS'; readonly sides: Triple }
  /** The angle at a corner, and the sides beside it: each by the corner opposite. */
  | { readonly kind: 'SAS'; readonly at: Corner; readonly angle: number; readonly sides: Triple }
  /** A side, by the corner opposite it, and all three angles; the third is what two leave of 180°. */
  | { readonly kind: 'ASA'; readonly at: Corner; readonly side: number; readonly angles: Triple }
  /** The angle at a corner, the side opposite that, and another side, by the corner opposite it. */
  | {
      readonly kind: 'SSA';
      readonly at: Corner;
      readonly angle: number;
      readonly opposite: number;
      readonly other: Corner;
      readonly beside: number;
    };

/**
 * Which of the four cases three parts are.
 *
 * @throws {RangeError} unless exactly three are given, at least one of them a side
 */
export function caseOf({ a, b, c, A, B, C }: Parts): Case {
  const known = (values: Triple<number | undefined>): Corner[] =>
    ([0, 1, 2] as const).filter((corner) => values[corner] !== undefined);
  const [ofSides, ofAngles] = [known([a, b, c]), known([A, B, C])];
  if (ofSides.length + ofAngles.length !== 3 || ofSides.length === 0)
    throw new RangeError('a triangle is given by three of its parts, at least one of them a side');
  const sides: Triple = [a ?? 0, b ?? 0, c ?? 0];
  const given: Triple = [A ?? 0, B ?? 0, C ?? 0];
  const [side = 0, otherSide = 0] = ofSides;
  const [at = 0] = ofAngles;
  if (ofSides.length === 3) return { kind: 'SSS', sides };
  if (ofSides.length === 1) {
    const left = 180 - given[0] - given[1] - given[2];
    return { kind: 'ASA', at: side, side: sides[side], angles: [A ?? left, B ?? left, C ?? left] };
  }
  if (!ofSides.includes(at)) return { kind: 'SAS', at, angle: given[at], sides };
  const other = at === side ? otherSide : side;
  return { kind: 'SSA', at, angle: given[at], opposite: sides[at], other, beside: sides[other] };
}
