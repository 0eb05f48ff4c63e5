import { caseOf, type Parts } from '../../geometry/trigonometry/triangle-case.js';
import type { Slip } from '../calculation.js';
import { RADIANS, toldApart } from '../slips.js';
import type { Found } from './triangle.js';
import { lettersFrom, lettersSwung } from './triangle-working.js';

type Slips = Record<string, Slip>;

const WITH_SINES = 'Sides go with the sines of the angles, not with the angles.';

/** Wrong ways for the parts given. */
export function triangleSlips(parts: Parts, found: Found): Slips {
  if (!found.possible) return {};
  const numbers = Object.entries(found).filter(([, value]) => typeof value === 'number');
  return toldApart(waysOf(parts, found), found, Object.fromEntries(numbers) as Record<string, number>);
}

function waysOf(parts: Parts, found: Found): Slips {
  const given = caseOf(parts);
  switch (given.kind) {
    case 'SSS':
      return threeSides;
    case 'SAS':
      return twoSides(lettersFrom(given.at));
    case 'ASA':
      return oneSide(lettersFrom(given.at));
    case 'SSA':
      return sideSwung(lettersSwung(given), found.second !== null);
  }
}

type Letters = ReturnType<typeof lettersFrom>;

const threeSides: Slips = {
  otherAngle: { of: 'A', formula: 'B', says: 'That is angle B: side a lies opposite angle A.' },
  sign: {
    of: 'A',
    formula: 'acosd((a^2 - b^2 - c^2)/(2*b*c))',
    says: 'The square to take away is that of the side opposite the angle.',
  },
  rightAngled: { of: 'area', formula: 'a*b/2', says: 'Half of a × b is for a right angle between them.' },
};

function twoSides({ P, p, q, r }: Letters): Slips {
  const squares = `${q}^2 + ${r}^2`;
  return {
    pythagoras: {
      of: p,
      formula: `sqrt(${squares})`,
      says: 'You used Pythagoras, but the angle between those sides is no right angle.',
    },
    sign: {
      of: p,
      formula: `sqrt(${squares} + 2*${q}*${r}*cosd(${P}))`,
      says: 'The last part of the cosine rule is taken away, not added.',
    },
    radians: { of: p, formula: `sqrt(${squares} - 2*${q}*${r}*cos(${P}))`, says: RADIANS },
    noRoot: {
      of: p,
      formula: `${squares} - 2*${q}*${r}*cosd(${P})`,
      says: 'That is the square of the side: take the root.',
    },
    rightAngled: {
      of: 'area',
      formula: `${q}*${r}/2`,
      says: 'Half of the two sides multiplied is for a right angle between them.',
    },
  };
}

function oneSide({ P, p, Q, q, R, r }: Letters): Slips {
  return {
    upsideDown: {
      of: q,
      formula: `${p}*sind(${P})/sind(${Q})`,
      says: 'The sines are upside down: the longer side is opposite the larger angle.',
    },
    angles: { of: q, formula: `${p}*${Q}/${P}`, says: WITH_SINES },
    radians: { of: r, formula: `${p}*sin(${R})/sin(${P})`, says: RADIANS },
  };
}

function sideSwung({ P, p, Q, q }: Letters, two: boolean): Slips {
  return {
    upsideDown: {
      of: Q,
      formula: `asind(${p}*sind(${P})/${q})`,
      says: 'The sides are upside down: the larger angle is opposite the longer side.',
    },
    angles: { of: Q, formula: `${q}*${P}/${p}`, says: WITH_SINES },
    // With two triangles the obtuse angle is the other right answer.
    ...(two
      ? {}
      : {
          obtuse: {
            of: Q,
            formula: `180 - ${Q}`,
            says: 'That angle has the same sine, but these sides leave no room for it.',
          },
        }),
  };
}
