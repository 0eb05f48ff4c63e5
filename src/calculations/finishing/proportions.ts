import { InputError } from '../../diagnostics/errors.js';
import { crossingProportions } from '../../geometry/finishing/proportions.js';
import { practice } from '../../handbook/record.js';
import { calculation } from '../calculation.js';
import { mm } from '../found.js';
import { length, optional } from '../quantity.js';

/** Teeth deeper than this share of the root circle leave no wheel to cross out. */
const DEEPEST = 0.2;

interface Given {
  readonly rootDiameter: number;
  readonly depthOfCut: number;
  readonly arbor?: number | undefined;
}

const rimInside = ({ rootDiameter, depthOfCut }: Given): number => rootDiameter - depthOfCut - depthOfCut;

export const crossingRule = calculation({
  name: 'crossing.proportions',
  title: 'Rim, arms and hub of a wheel by the rule of the trade',
  given: {
    rootDiameter: length('d_f', 'root diameter', 1, 2500),
    depthOfCut: length('h', 'depth of cut', 0.05, 100),
    arbor: optional(length('a', 'diameter of the arbor', 0.2, 200)),
  },
  found: {
    rimInsideDiameter: mm('D', 'inside diameter of the rim'),
    hubDiameter: mm('d', 'diameter of the hub'),
    armWidthAtRim: mm('w_r', 'width of an arm at the rim'),
    armWidthAtHub: mm('w_h', 'width of an arm at the hub'),
    filletRadius: mm('r', 'radius in the corners'),
  },
  refuse: (g) => {
    if (g.depthOfCut > DEEPEST * g.rootDiameter)
      throw new InputError(
        'depthOfCut',
        g.depthOfCut,
        `at most a fifth of the root diameter, ${DEEPEST * g.rootDiameter} mm`,
      );
    if (g.arbor !== undefined && 3.5 * g.arbor >= 0.9 * rimInside(g))
      throw new InputError('arbor', g.arbor, 'an arbor whose hub leaves room for arms');
  },
  work: (g) => crossingProportions(g.rootDiameter, g.depthOfCut, g.arbor),
  proofs: [
    { of: 'rimInsideDiameter', formula: 'rim-inside-by-rule' },
    {
      of: 'hubDiameter',
      source: (g) =>
        practice(
          g.arbor === undefined
            ? 'a hub of a third of the rim’s inside, where the arbor is not known'
            : 'a hub of three to four times the arbor',
        ),
      value: (g) => (g.arbor === undefined ? rimInside(g) / 3 : (g.arbor * 7) / 2),
      within: (g) => 1e-12 * g.rootDiameter,
    },
    {
      of: 'armWidthAtRim',
      source: practice('arms as wide at the rim as the rim below the teeth'),
      value: (g) => (g.rootDiameter - rimInside(g)) / 2,
      within: (g) => 1e-12 * g.rootDiameter,
    },
    {
      of: 'armWidthAtHub',
      source: practice('arms up to half as wide again at the hub'),
      value: (g) => ((g.rootDiameter - rimInside(g)) * 3) / 4,
      within: (g) => 1e-12 * g.rootDiameter,
    },
    {
      of: 'filletRadius',
      source: practice('rounds of two fifths of the rim’s width'),
      value: (g) => (g.rootDiameter - rimInside(g)) / 5,
      within: (g) => 1e-12 * g.rootDiameter,
    },
  ],
  working: (g) => [
    { say: 'The rim is as wide below the teeth as they are deep, and an arm as wide where it meets it.' },
    'D = d_f - 2*h',
    'w_r = h',
    'w_h = 1.5*h',
    g.arbor === undefined ? 'd = D/3' : 'd = 3.5*a',
    'r = 0.4*h',
  ],
  slips: {
    once: {
      of: 'rimInsideDiameter',
      formula: 'd_f - h',
      says: 'You took it off once. There is a rim at both ends of the diameter.',
    },
  },
});
