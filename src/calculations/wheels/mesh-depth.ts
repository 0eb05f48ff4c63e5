import { touchingPitchCircles } from '../../geometry/wheels/wheel.js';
import { derived, practice } from '../../handbook/record.js';
import { calculation } from '../calculation.js';
import { mm } from '../found.js';
import { length } from '../quantity.js';
import {
  DUST,
  depthInWords,
  type Shake,
  shakeAtRight,
  shakeByLaw,
  shakeOf,
  type Verdict,
  verdictOn,
} from './depth-verdict.js';
import { leaves, module, teeth } from './gearing.js';
import { leafFor, refuseFarCentres } from './pair.js';
import { refuseLargePinion } from './wheels.js';

type Found = Shake & {
  readonly rightCentres: number;
  readonly gap: number;
  readonly verdict: Verdict;
  readonly shakeAtRightCentres: number;
};

export const meshDepth = calculation({
  name: 'mesh.depth',
  title: 'Depth of a wheel and pinion from their measured centres',
  given: {
    teeth,
    leaves,
    module,
    measuredCentres: length('a', 'measured centre distance', 0.1, 20_000),
  },
  found: {
    rightCentres: mm('a_0', 'right centre distance'),
    gap: mm('g', 'gap between the pitch circles; below 0 they overlap'),
    verdict: { unit: '', name: 'verdict' },
    shake: mm('s', 'shake: least freedom of the pinion at its pitch circle, wheel held'),
    shakeAtRightCentres: mm('s_0', 'shake that the right centres give'),
    feel: { unit: '', name: 'how the shake feels' },
    reason: { unit: '', name: 'why there is none' },
  },
  refuse: (g) => {
    refuseLargePinion(g);
    refuseFarCentres('measuredCentres', g, g.measuredCentres);
  },
  work: (g): Found => {
    const rightCentres = touchingPitchCircles(g.module, g.teeth, g.leaves);
    const gap = g.measuredCentres - rightCentres;
    return {
      rightCentres,
      gap,
      verdict: verdictOn(gap, g.module),
      shakeAtRightCentres: shakeAtRight(g),
      ...shakeOf(g),
    };
  },
  proofs: [
    { of: 'rightCentres', formula: 'centre-distance' },
    { of: 'gap', formula: 'pitch-circle-gap' },
    {
      of: 'verdict',
      source: practice('right within a twentieth of a module, about 0.04 mm at module 0.8'),
      value: (g) => {
        const twice = 2 * g.measuredCentres - g.module * (g.teeth + g.leaves);
        const limit = g.module / 10 + 2 * DUST;
        return twice > limit ? 'too shallow' : twice < -limit ? 'too deep' : 'right';
      },
    },
    {
      of: 'shake',
      source: derived(
        'the space between leaves less what the wheel’s two sides take, by the conditions of contact',
      ),
      within: (g) => 1e-7 * g.module,
      value: (g) => shakeByLaw(g).shake,
    },
    {
      of: 'shakeAtRightCentres',
      source: derived('circular pitch shared between tooth, leaf and shake, by angles of the pinion'),
      within: (g) => 1e-9 * g.module * g.leaves,
      value: (g) =>
        ((g.module * g.leaves) / 2) *
        (Math.PI / g.leaves - (2 * leafFor(g.leaves, 0).leafThickness) / g.leaves),
    },
    {
      of: 'feel',
      source: practice(
        'scarcely any below two thirds of the shake at right centres, a lot above four thirds',
      ),
      value: (g) => shakeByLaw(g).feel,
    },
  ],
  working: (g, answer) => [
    'a_0 = m*(z + n)/2',
    'g = a - a_0',
    { say: depthInWords(answer.verdict) },
    `s_0 = pi*m - pi*m/2 - ${leafFor(g.leaves, 0).leafThickness}*m`,
    {
      say:
        answer.reason === undefined
          ? 'With the wheel held and the pinion rocked, the shake s is the least freedom found as the pair is rolled through one pitch, measured along the pinion’s pitch circle.'
          : `At these centres ${answer.reason}.`,
    },
  ],
  slips: (g, answer) => ({
    diameters: {
      of: 'gap',
      formula: 'a - m*(z + n)',
      says: 'You took the two diameters; the arbors stand two radii apart.',
    },
    outside: {
      of: 'gap',
      formula: 'a - m*(z + 2.76 + n + 1.71)/2',
      says: 'You used the outside diameters. It is the pitch circles that touch.',
    },
    ...(answer.verdict === 'right'
      ? {}
      : {
          sign: {
            of: 'gap',
            formula: 'a_0 - a',
            says: 'Take the right distance from the measured one: above nought is too shallow.',
          },
        }),
    noLeaf: {
      of: 'shakeAtRightCentres',
      formula: 'pi*m/2',
      says: 'That is the whole space between two teeth; the leaf stands in it.',
    },
    noTooth: {
      of: 'shakeAtRightCentres',
      formula: `pi*m - ${leafFor(g.leaves, 0).leafThickness}*m`,
      says: 'That is the space between two leaves; a tooth stands in it.',
    },
  }),
});
