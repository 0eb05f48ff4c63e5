import { InputError } from '../../diagnostics/errors.js';
import { reachPast, type Triangle, trianglesOf } from '../../geometry/trigonometry/triangle.js';
import type { Parts } from '../../geometry/trigonometry/triangle-case.js';
import { derived } from '../../handbook/record.js';
import { triangleByRules } from '../../handbook/trigonometry/triangle.js';
import { calculation } from '../calculation.js';
import { angle, length, optional } from '../quantity.js';
import { triangleSlips } from './triangle-slips.js';
import { triangleWorking, whyNone } from './triangle-working.js';

const side = (letter: string) => optional(length(letter, `side ${letter}`, 0.001, 10_000));
const corner = (letter: string) =>
  optional(angle(letter, `angle ${letter}, opposite side ${letter.toLowerCase()}`, 0.01, 179.98));

/** Thinner than this a triangle says nothing: a hair's breadth moves it by degrees. */
const THINNEST = 0.01;

/** A side whose reach is out by a share between these can be said neither to touch, nor to cross, nor to miss. */
const DOUBTFUL = { least: 1e-13, most: 1e-11 } as const;

const SIX = ['a', 'b', 'c', 'A', 'B', 'C'] as const;

function refuse(parts: Parts): void {
  const given = SIX.filter((key) => parts[key] !== undefined);
  const missing = SIX.find((key) => parts[key] === undefined) ?? 'a';
  const last = given.at(-1) ?? 'a';
  if (given.length < 3)
    throw new InputError(missing, undefined, 'three of a, b, c, A, B and C, a side among them');
  if (given.length > 3)
    throw new InputError(last, parts[last], 'three of a, b, c, A, B and C, and leave the others out');
  if (given[0] === 'A')
    throw new InputError(last, parts[last], 'a side in its place: angles alone give a shape but no size');
  const past = Math.abs(reachPast(parts) ?? 0);
  if (past > DOUBTFUL.least && past < DOUBTFUL.most)
    throw new InputError(
      last,
      parts[last],
      'a part that is clearly different; with this one a side is too near to just reaching to tell',
    );
  const thin = trianglesOf(parts).some(({ A, B, C }) => Math.min(A, B, C) < THINNEST);
  if (thin)
    throw new InputError(
      last,
      parts[last],
      `parts that leave every angle at least ${THINNEST}°; this is a sliver`,
    );
}

/** Longest side of what the handbook makes of the parts, mm; allowances are shares of it. */
const longest = (parts: Parts): number =>
  Math.max(1e-3, ...triangleByRules(parts).flatMap(({ a, b, c }) => [a, b, c]));

const NONE = { a: null, b: null, c: null, A: null, B: null, C: null, area: null } as const;

const rules = derived('sine, cosine, tangent and half-angle rules');
const first = (parts: Parts) => triangleByRules(parts)[0] ?? NONE;

const sideProof = <const K extends 'a' | 'b' | 'c'>(of: K) => ({
  of,
  source: rules,
  within: (parts: Parts) => 1e-9 * longest(parts),
  value: (parts: Parts) => first(parts)[of],
});
const angleProof = <const K extends 'A' | 'B' | 'C'>(of: K) => ({
  of,
  source: rules,
  within: 1e-6,
  value: (parts: Parts) => first(parts)[of],
});

/** What is found of a triangle, or of none. */
export type Found = { [K in keyof Triangle]: number | null } & {
  readonly possible: boolean;
  readonly second: Triangle | null;
  readonly reason?: string;
};

export const triangleSolve = calculation({
  name: 'triangle.solve',
  title: 'A triangle from any three of its parts',
  given: { a: side('a'), b: side('b'), c: side('c'), A: corner('A'), B: corner('B'), C: corner('C') },
  found: {
    possible: { unit: '', name: 'possible' },
    a: { symbol: 'a', unit: 'mm', name: 'side a' },
    b: { symbol: 'b', unit: 'mm', name: 'side b' },
    c: { symbol: 'c', unit: 'mm', name: 'side c' },
    A: { symbol: 'A', unit: '°', name: 'angle A, opposite side a' },
    B: { symbol: 'B', unit: '°', name: 'angle B, opposite side b' },
    C: { symbol: 'C', unit: '°', name: 'angle C, opposite side c' },
    area: { symbol: 'area', unit: 'mm²', name: 'area' },
    second: { unit: '', name: 'the second triangle, where the same parts make two (mm and degrees)' },
    reason: { unit: '', name: 'why it is not possible' },
  },
  refuse,
  work: (parts): Found => {
    const [one, second = null] = trianglesOf(parts);
    if (!one) return { possible: false, ...NONE, second, reason: whyNone(parts) };
    return { possible: true, ...one, second };
  },
  proofs: [
    { of: 'possible', source: rules, value: (parts) => triangleByRules(parts).length > 0 },
    sideProof('a'),
    sideProof('b'),
    sideProof('c'),
    angleProof('A'),
    angleProof('B'),
    angleProof('C'),
    {
      of: 'area',
      source: derived('half of two sides and the sine of the angle between them'),
      within: (parts) => 1e-9 * longest(parts) ** 2,
      value: (parts) => first(parts).area,
    },
    {
      of: 'second',
      source: rules,
      within: 1e-6,
      measure: {
        name: 'angles in degrees, and sides and area against the longest side',
        of: (found, parts) => inProportion(found, longest(parts)),
      },
      value: (parts) => inProportion(triangleByRules(parts)[1] ?? null, longest(parts)),
    },
  ],
  working: triangleWorking,
  slips: triangleSlips,
});

/** A triangle's size apart from its shape, so that one allowance serves all of it. */
function inProportion(triangle: Triangle | null, unit: number) {
  if (!triangle) return null;
  const { a, b, c, area, ...angles } = triangle;
  return { ...angles, a: a / unit, b: b / unit, c: c / unit, area: area / unit ** 2 };
}
