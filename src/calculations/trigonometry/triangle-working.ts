import {
  type Case,
  type Corner,
  caseOf,
  NEXT,
  type Parts,
  third,
} from '../../geometry/trigonometry/triangle-case.js';
import type { Step } from '../calculation.js';
import { decimals } from '../working.js';
import type { Found } from './triangle.js';

const ANGLES = ['A', 'B', 'C'] as const;
const SIDES = ['a', 'b', 'c'] as const;

/** Letters of a corner, the side opposite it, and of the two corners after it. */
export function lettersFrom(at: Corner) {
  const [q, r] = [NEXT[at], NEXT[NEXT[at]]];
  return { P: ANGLES[at], p: SIDES[at], Q: ANGLES[q], q: SIDES[q], R: ANGLES[r], r: SIDES[r] };
}

/** Letters of the angle given, of the angle opposite the other side given, and of the last. */
export function lettersSwung({ at, other }: Extract<Case, { kind: 'SSA' }>) {
  const last = third(at, other);
  return {
    P: ANGLES[at],
    p: SIDES[at],
    Q: ANGLES[other],
    q: SIDES[other],
    R: ANGLES[last],
    r: SIDES[last],
  };
}

/** How the parts make no triangle, in words. */
export function whyNone(parts: Parts): string {
  const given = caseOf(parts);
  if (given.kind !== 'SSA')
    return given.kind === 'SSS'
      ? 'the two shorter sides together do not reach past the longest'
      : 'the two angles make 180° or more and leave nothing for the third';
  const { P, p, q } = lettersSwung(given);
  return given.angle < 90
    ? `side ${p} is too short to reach the line that angle ${P} gives`
    : `side ${p} is opposite an angle of 90° or more, so it must be longer than side ${q}`;
}

const area = ({ p, q, R }: { p: string; q: string; R: string }): Step => `area = ${p}*${q}*sind(${R})/2`;

/** The steps in the letters of the parts given. */
export function triangleWorking(parts: Parts, found: Found): Step[] {
  if (!found.possible) return [{ say: `Not possible: ${whyNone(parts)}.` }];
  const given = caseOf(parts);
  switch (given.kind) {
    case 'SSS': {
      const letters = lettersFrom(0);
      return [
        { say: 'Three sides: the cosine rule gives an angle, then another.' },
        'A = acosd((b^2 + c^2 - a^2)/(2*b*c))',
        'B = acosd((c^2 + a^2 - b^2)/(2*c*a))',
        'C = 180 - A - B',
        area(letters),
      ];
    }
    case 'SAS': {
      const { P, p, Q, q, R, r } = lettersFrom(given.at);
      return [
        { say: 'Two sides and the angle between them: the cosine rule gives the third side.' },
        `${p} = sqrt(${q}^2 + ${r}^2 - 2*${q}*${r}*cosd(${P}))`,
        `${Q} = acosd((${r}^2 + ${p}^2 - ${q}^2)/(2*${r}*${p}))`,
        `${R} = 180 - ${P} - ${Q}`,
        area({ p, q, R }),
      ];
    }
    case 'ASA': {
      const { P, p, Q, q, R, r } = lettersFrom(given.at);
      const [unknown] = ANGLES.filter((letter) => parts[letter] === undefined);
      const [one, two] = ANGLES.filter((letter) => letter !== unknown);
      return [
        { say: 'A side and two angles: the three angles make 180°, then the sine rule.' },
        `${unknown} = 180 - ${one} - ${two}`,
        `${q} = ${p}*sind(${Q})/sind(${P})`,
        `${r} = ${p}*sind(${R})/sind(${P})`,
        area({ p, q, R }),
      ];
    }
    case 'SSA':
      return swungWorking(given, found);
  }
}

function swungWorking(given: Extract<Case, { kind: 'SSA' }>, found: Found): Step[] {
  const { P, p, Q, q, R, r } = lettersSwung(given);
  const touches = Math.abs((found[Q] ?? 0) - 90) < 1e-3;
  const { second } = found;
  return [
    { say: 'Two sides and an angle not between them: the sine rule, which leaves acute or obtuse open.' },
    ...(touches
      ? [{ say: `Side ${p} just reaches: angle ${Q} is a right angle.` }]
      : [`${Q} = asind(${q}*sind(${P})/${p})`]),
    `${R} = 180 - ${P} - ${Q}`,
    `${r} = ${p}*sind(${R})/sind(${P})`,
    area({ p, q, R }),
    {
      say: second
        ? `Two triangles: ${Q} may as well be 180° − ${decimals(found[Q] ?? 0, 4)}° = ${decimals(second[Q], 4)}°. ` +
          `Then ${R} = ${decimals(second[R], 4)}° and ${r} = ${decimals(second[r], 4)} mm.`
        : 'One triangle only.',
    },
  ];
}
