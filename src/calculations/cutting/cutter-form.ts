import { InputError } from '../../diagnostics/errors.js';
import { endOf, flattened } from '../../geometry/curves/path.js';
import type { Point } from '../../geometry/curves/point.js';
import { areaOfSpace, halfAngleOf, strayFrom } from '../../handbook/cutting/space.js';
import { derived, practice } from '../../handbook/record.js';
import { calculation } from '../calculation.js';
import { mm } from '../found.js';
import { length, optional } from '../quantity.js';
import { leaves, module, teeth } from '../wheels/gearing.js';
import { wheelForms } from '../wheels/tooth-forms.js';
import {
  type Cutter,
  cornerOf,
  cutterPath,
  depthForm,
  formTolerance,
  largestTip,
  refuseLargePinion,
  sizesFor,
  spaceFor,
} from './space.js';

/** Its points lie on the form; the lines between them stray from it so far, mm. */
const pointTolerance = (module: number): number => formTolerance(module) * Math.max(1, module / 5);

const sizes = (g: Cutter) => sizesFor(g, g.module, cornerOf(g));

/** Between the walls, straight across, where they reach a radius of the wheel. */
const across = (g: Cutter, radius: number): number => 2 * radius * Math.sin(halfAngleOf(sizes(g))(radius));

export const cutterForm = calculation({
  name: 'cutter.form',
  title: 'Form of a single-point cutter for a wheel',
  given: {
    teeth,
    leaves,
    module,
    depthForm,
    tipRadius: optional(length('', 'radius of the corners of the tip', 0, 40)),
  },
  found: {
    points: { unit: 'mm', name: 'points of the form, from the middle of its tip' },
    width: mm('w', 'width at the rim of the wheel'),
    pitchWidth: mm('w_p', 'width at the pitch line'),
    depth: mm('h', 'full depth of cut'),
    tipRadius: mm('r', 'radius of the corners of the tip'),
    largestTipRadius: mm('r_m', 'largest radius the corners may have'),
  },
  refuse: (g) => {
    refuseLargePinion(g);
    if ((g.tipRadius ?? 0) > largestTip(g))
      throw new InputError(
        'tipRadius',
        g.tipRadius,
        `a round that the tip has room for, ${largestTip(g)} mm at most`,
      );
  },
  work: (g) => {
    const space = spaceFor(g, g.module, cornerOf(g));
    const path = cutterPath(g);
    return {
      points: flattened(path, pointTolerance(g.module)),
      width: 2 * endOf(path).x,
      pitchWidth: 2 * space.pitchRadius * Math.sin(space.halfAngle),
      depth: space.rimRadius - space.rootRadius,
      tipRadius: space.corner,
      largestTipRadius: largestTip(g),
    };
  },
  proofs: [
    {
      of: 'points',
      source: derived('faces in closed form, by the triangle of axis, generating circle and traced point'),
      value: () => 0,
      // Along the circle a steep face seems further away than it is.
      within: (g) => 2 * formTolerance(g.module),
      measure: {
        name: 'greatest distance of a point from the true form, mm',
        of: (points: readonly Point[], g) => {
          const stray = strayFrom(sizes(g));
          return Math.max(...points.map(({ x, y }) => stray(x, y + sizes(g).rootRadius)));
        },
      },
    },
    {
      of: 'points',
      source: derived('rings of the space added up from its bottom to the rim'),
      value: (g) => areaOfSpace(sizes(g), sizes(g).rimRadius),
      // The form is some eight modules long from rim to rim.
      within: (g) => 8 * g.module * (formTolerance(g.module) + pointTolerance(g.module)),
      measure: {
        name: 'area between the form and the rim, mm²',
        of: (points: readonly Point[], g) => shoelace(points) + underRim(points, sizes(g).rimRadius),
      },
    },
    {
      of: 'width',
      source: derived('the face in closed form at the rim'),
      value: (g) => across(g, sizes(g).rimRadius),
      within: (g) => 1e-6 * g.module,
    },
    { of: 'pitchWidth', formula: 'space-at-pitch-line' },
    {
      of: 'depth',
      source: { work: 'cycloidal-article', at: 'half of blank less root, from memory' },
      value: (g) => sizes(g).rimRadius - sizes(g).rootRadius,
      within: (g) => 1e-8 * g.module,
    },
    {
      of: 'tipRadius',
      source: practice('a quarter of the module, where none is given'),
      value: (g) => g.tipRadius ?? g.module / 4,
      within: 1e-12,
    },
    {
      of: 'largestTipRadius',
      source: derived('circle between two lines through the wheel’s middle, touching the root circle'),
      value: (g) => sizes(g).rootRadius / (1 / Math.sin(Math.PI / (2 * g.teeth)) - 1),
      within: (g) => 1e-9 * g.module,
    },
  ],
  working: (g) => {
    const root = `(m*z/2 - ${wheelForms[g.depthForm].dedendum}*m)`;
    return [
      {
        say: `The cutter has the shape of the space: flanks along two radii of the wheel, half a tooth’s angle apart, and faces by the epicycloid of a pinion of ${g.leaves} leaves. Full-depth form ${g.depthForm}.`,
      },
      'w_p = m*z*sind(90/z)',
      `r_m = ${root}*sind(90/z)/(1 - sind(90/z))`,
      { say: 'Points are measured from the middle of the tip: x across the cutter, y towards the rim.' },
    ];
  },
  slips: (g) => ({
    pitch: {
      of: 'pitchWidth',
      formula: 'pi*m',
      says: 'That is the whole pitch: a tooth and a space together.',
    },
    module: {
      of: 'pitchWidth',
      formula: 'm',
      says: 'The module is not the width of the space; half the pitch is.',
    },
    dedendum: {
      of: 'depth',
      formula: `${wheelForms[g.depthForm].dedendum}*m`,
      says: 'That reaches the pitch line only; the teeth stand above it as well.',
    },
    otherForm: {
      of: 'depth',
      formula: `h + ${g.depthForm === '3.38' ? -0.43 : 0.43}*m`,
      says: 'Right sum, other form. Two forms of cutter differ by so much in depth.',
    },
    parallel: {
      of: 'width',
      formula: 'w_p',
      says: 'That is the width at the pitch line; the form opens out towards the rim.',
    },
  }),
});

function shoelace(points: readonly Point[]): number {
  let twice = 0;
  points.forEach((p, i) => {
    const q = points[(i + 1) % points.length] ?? p;
    twice += p.x * q.y - q.x * p.y;
  });
  return Math.abs(twice) / 2;
}

/** Between the chord from the form's one end to its other and the rim above it. */
function underRim(points: readonly Point[], rim: number): number {
  const half = Math.asin((points.at(-1)?.x ?? 0) / rim);
  return rim * rim * (half - Math.sin(half) * Math.cos(half));
}
