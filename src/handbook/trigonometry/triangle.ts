const DEGREE = Math.PI / 180;
const sin = (angle: number): number => Math.sin(angle * DEGREE);
const tan = (angle: number): number => Math.tan(angle * DEGREE);
const atan = (ratio: number): number => Math.atan(ratio) / DEGREE;

/** A triangle by the rules of trigonometry; side a lies opposite angle A. Sides mm, angles degrees, area mm². */
export interface SolvedTriangle {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly A: number;
  readonly B: number;
  readonly C: number;
  readonly area: number;
}

type Given = Readonly<Partial<Record<'a' | 'b' | 'c' | 'A' | 'B' | 'C', number | undefined>>>;
type Letter = 'A' | 'B' | 'C';
const LETTERS = ['A', 'B', 'C'] as const;
const side = (letter: Letter) => letter.toLowerCase() as Lowercase<Letter>;

/** Sides and angles by the letter of the angle; a triangle is three of each. */
type By = Record<Letter, number>;

const solved = (sides: By, angles: By): SolvedTriangle => ({
  a: sides.A,
  b: sides.B,
  c: sides.C,
  ...angles,
  area: (sides.A * sides.B * sin(angles.C)) / 2,
});

/**
 * Solves a triangle from three of its parts by the usual rules: none, one, or two, the one with the acute angle
 * first. Elementary trigonometry.
 *
 * @param given three parts, at least one of them a side; mm and degrees
 */
export function triangleByRules(given: Given): SolvedTriangle[] {
  const sides = LETTERS.filter((letter) => given[side(letter)] !== undefined);
  const angles = LETTERS.filter((letter) => given[letter] !== undefined);
  const sideOf = (letter: Letter): number => given[side(letter)] ?? 0;
  const [angle = 'A'] = angles;
  if (sides.length === 3) return bySides({ A: sideOf('A'), B: sideOf('B'), C: sideOf('C') });
  if (sides.length === 1) return byAngles(sides[0] ?? 'A', sideOf(sides[0] ?? 'A'), given);
  const other = sides.find((letter) => letter !== angle) ?? 'B';
  if (sides.includes(angle)) return bySineRule(angle, other, sideOf(angle), sideOf(other), given[angle] ?? 0);
  const last = sides.find((letter) => letter !== other) ?? 'C';
  return byTwoSides(angle, other, last, sideOf(other), sideOf(last), given[angle] ?? 0);
}

/** Half-angle rule: tan(A/2) = r/(s − a), where r is the radius of the circle that the three sides enclose. */
function bySides(sides: By): SolvedTriangle[] {
  const s = (sides.A + sides.B + sides.C) / 2;
  const [least = 0, middle = 0, most = 0] = Object.values(sides).toSorted((p, q) => p - q);
  if (least - (most - middle) <= 1e-10 * least) return [];
  const r = Math.sqrt(((s - sides.A) * (s - sides.B) * (s - sides.C)) / s);
  const of = (letter: Letter): number => 2 * atan(r / (s - sides[letter]));
  return [solved(sides, { A: of('A'), B: of('B'), C: of('C') })];
}

/** Sine rule, the third angle being what two leave of 180°. */
function byAngles(known: Letter, length: number, given: Given): SolvedTriangle[] {
  const { A, B, C } = given;
  const angles: By = {
    A: A ?? 180 - ((B ?? 0) + (C ?? 0)),
    B: B ?? 180 - ((C ?? 0) + (A ?? 0)),
    C: C ?? 180 - ((A ?? 0) + (B ?? 0)),
  };
  if (Math.min(angles.A, angles.B, angles.C) < 1e-7) return [];
  const scale = length / sin(angles[known]);
  return [solved({ A: scale * sin(angles.A), B: scale * sin(angles.B), C: scale * sin(angles.C) }, angles)];
}

/** Cosine rule, in the form of a half angle, for the third side; tangent rule for the two angles. */
function byTwoSides(
  angle: Letter,
  q: Letter,
  r: Letter,
  sideQ: number,
  sideR: number,
  size: number,
): SolvedTriangle[] {
  const opposite = Math.sqrt((sideQ - sideR) ** 2 + 4 * sideQ * sideR * sin(size / 2) ** 2);
  const half = atan((sideQ - sideR) / (sideQ + sideR) / tan(size / 2));
  const middle = 90 - size / 2;
  return [
    solved(by(angle, opposite, q, sideQ, r, sideR), by(angle, size, q, middle + half, r, middle - half)),
  ];
}

/** Sine rule, which leaves open whether the angle found is acute or obtuse. */
function bySineRule(
  angle: Letter,
  other: Letter,
  opposite: number,
  beside: number,
  size: number,
): SolvedTriangle[] {
  const ratio = (beside * sin(size)) / opposite;
  if (ratio > 1 + 1e-12) return [];
  const last = LETTERS.find((letter) => letter !== angle && letter !== other) ?? 'C';
  // Acute by its tangent: near 90° a sine says little.
  const acute = ratio >= 1 - 1e-12 ? 90 : atan(ratio / Math.sqrt((1 - ratio) * (1 + ratio)));
  const found = acute === 90 ? [90] : [acute, 180 - acute];
  return found
    .filter((one) => 180 - size - one >= 1e-7)
    .map((one) => {
      const rest = 180 - size - one;
      const third = (opposite * sin(rest)) / sin(size);
      return solved(by(angle, opposite, other, beside, last, third), by(angle, size, other, one, last, rest));
    });
}

const by = (p: Letter, ofP: number, q: Letter, ofQ: number, r: Letter, ofR: number): By =>
  ({ [p]: ofP, [q]: ofQ, [r]: ofR }) as By;
