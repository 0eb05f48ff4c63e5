import { InputError } from '../../diagnostics/errors.js';
import { theoreticalAddendum } from '../../geometry/wheels/epicycloid.js';
import { touchingPitchCircles, wheelSizes } from '../../geometry/wheels/wheel.js';
import type { Citation } from '../../handbook/record.js';
import { addendumByFixedPoint } from '../../handbook/wheels/addendum.js';
import { wheelColumns } from '../../handbook/wheels/tooth-tables.js';
import { calculation } from '../calculation.js';
import type { WrongCut } from '../cutting/given.js';
import { mm } from '../found.js';
import { choice, optional, orElse } from '../quantity.js';
import { leaves, module, table, teeth } from './gearing.js';
import { FACE_RADIUS, PRACTICAL, type WheelForm, wheelFormNames, wheelForms } from './tooth-forms.js';

/** A proportion as the table prints it, without the dust of adding. */
const plain = (modules: number) => String(Number(modules.toFixed(2)));

const article: Citation = { work: 'cycloidal-article', at: 'fixed-point form, from memory' };

/** The rule is for a wheel that drives a smaller pinion; below that the generating circle outgrows the wheel. */
export function refuseLargePinion(g: { readonly teeth: number; readonly leaves: number }): void {
  if (g.leaves > g.teeth)
    throw new InputError('leaves', g.leaves, `at most as many as the wheel has teeth, ${g.teeth}`);
}

export const addendumFactor = calculation({
  name: 'wheel.addendumFactor',
  title: 'Addendum factor of a cycloidal wheel, by its pinion',
  given: { teeth, leaves },
  found: {
    factor: { symbol: 'f', unit: '', name: 'theoretical addendum factor' },
    practicalFactor: { symbol: 'f_p', unit: '', name: 'practical addendum factor' },
  },
  refuse: refuseLargePinion,
  work: (g) => {
    const factor = theoreticalAddendum(g.teeth, g.leaves);
    return { factor, practicalFactor: PRACTICAL * factor };
  },
  proofs: [
    { of: 'factor', source: article, within: 1e-9, value: (g) => addendumByFixedPoint(g.teeth, g.leaves) },
    {
      of: 'practicalFactor',
      source: article,
      within: 1e-9,
      value: (g) => 0.95 * addendumByFixedPoint(g.teeth, g.leaves),
    },
  ],
  working: [
    {
      say: 'Roll a circle of half the pinion’s pitch diameter round the wheel until the two faces meet on the tooth’s centre line.',
    },
    'f_p = 0.95*f',
  ],
});

/** The handbook's columns for the wheel that is asked about. */
function printed(g: {
  readonly teeth: number;
  readonly leaves?: number | undefined;
  readonly convention: 'leaves' | '2.76';
  readonly depthForm: WheelForm;
}) {
  return wheelColumns(g.depthForm, g.teeth, g.convention === 'leaves' ? g.leaves : undefined);
}

/** A wheel with something wrong; for a pinion of 8 where none is given. The round-bottom form has no face to cut with. */
function cutWith(
  {
    teeth,
    leaves = 8,
    module,
    depthForm,
  }: Omit<WrongCut, 'leaves' | 'depthForm'> & {
    readonly leaves?: number | undefined;
    readonly depthForm: WheelForm;
  },
  wrong: Pick<WrongCut, 'blankDiameter' | 'depthError'>,
): WrongCut | undefined {
  return depthForm === '3.00' ? undefined : { teeth, leaves, module, depthForm, ...wrong };
}

/** The trade convention is printed in the table; by leaf count the addendum comes from the article instead. */
function tableOr(g: { readonly convention: 'leaves' | '2.76' }, row: string, byLeaves: string): Citation {
  return g.convention === 'leaves'
    ? { work: 'cycloidal-article', at: `${byLeaves}, from memory` }
    : table(row);
}

export const wheelBlank = calculation({
  name: 'wheel.blank',
  title: 'Wheel blank and depth of cut',
  given: {
    teeth,
    leaves: optional(leaves),
    module,
    convention: orElse(choice('convention for the addendum', ['leaves', '2.76']), 'leaves'),
    depthForm: orElse(choice('form of the cutter, by its full depth', wheelFormNames), '2.95'),
  },
  found: {
    pitchDiameter: mm('d', 'pitch diameter'),
    addendum: mm('h_a', 'addendum'),
    dedendum: mm('h_f', 'dedendum'),
    depthOfCut: mm('h', 'full depth of cut'),
    outsideDiameter: mm('d_a', 'outside diameter'),
    rootDiameter: mm('d_f', 'root diameter'),
    toothThickness: mm('s', 'tooth thickness at the pitch circle'),
    flankRadius: mm('r', 'radius of the tooth face'),
    anglePerTooth: { symbol: 'A', unit: '°', name: 'angle for one tooth' },
  },
  refuse: (g) => {
    if (g.convention === 'leaves') {
      if (g.leaves === undefined)
        throw new InputError('leaves', undefined, `${leaves.accepts}, or convention=2.76`);
      refuseLargePinion({ teeth: g.teeth, leaves: g.leaves });
    }
    if (g.convention === 'leaves' && g.depthForm === '3.00')
      throw new InputError(
        'depthForm',
        g.depthForm,
        'convention=2.76 with the round-bottom form, or 2.95, 3.38 or 2.45',
      );
  },
  work: (g) => {
    const form = wheelForms[g.depthForm];
    const factor = g.convention === 'leaves' ? theoreticalAddendum(g.teeth, g.leaves ?? 0) : undefined;
    return wheelSizes(g.teeth, g.module, {
      addendum: factor === undefined ? form.addendum : PRACTICAL * factor,
      dedendum: form.dedendum,
      flankRadius: factor === undefined ? form.flankRadius : FACE_RADIUS * factor,
      toothThickness: form.toothThickness,
    });
  },
  proofs: [
    { of: 'pitchDiameter', formula: 'pitch-diameter' },
    {
      of: 'outsideDiameter',
      source: (g) => tableOr(g, 'row “diameter of blank”', 'the fixed-point form of the addendum'),
      within: (g) => 1e-8 * g.module,
      value: (g) => g.module * (g.teeth + printed(g).blank),
    },
    {
      of: 'rootDiameter',
      source: table('row “root diameter”'),
      within: 1e-9,
      value: (g) => g.module * (g.teeth + printed(g).root),
    },
    {
      of: 'depthOfCut',
      source: (g) => tableOr(g, 'row “full tooth depth”', 'half of blank less root'),
      within: (g) => 1e-8 * g.module,
      value: (g) => g.module * printed(g).depth,
    },
    {
      of: 'addendum',
      source: (g) => tableOr(g, 'half of “diameter of blank” less the pitch circle', 'the fixed-point form'),
      within: (g) => 1e-8 * g.module,
      value: (g) => (g.module * printed(g).blank) / 2,
    },
    {
      of: 'dedendum',
      source: table('half of the pitch circle less “root diameter”'),
      within: 1e-9,
      value: (g) => (-g.module * printed(g).root) / 2,
    },
    {
      of: 'flankRadius',
      source: (g) => tableOr(g, 'row “addendum radius”', '1.40 of the fixed-point form'),
      within: (g) => 1e-8 * g.module,
      value: (g) => g.module * printed(g).radius,
    },
    {
      of: 'anglePerTooth',
      source: { work: 'derived', at: '21 600 minutes shared between the teeth' },
      within: 1e-12,
      value: (g) => 21_600 / g.teeth / 60,
    },
    {
      of: 'toothThickness',
      source: table('row “tooth thickness”, printed to two figures'),
      within: (g) => 0.01 * g.module,
      value: (g) => g.module * printed(g).thickness,
    },
  ],
  working: (g) => [
    g.convention === 'leaves'
      ? { say: 'Convention: addendum by leaf count, 0.95 of the theoretical.' }
      : {
          say: `Convention: the trade allowance, z + ${g.depthForm === '3.00' ? '2.50 (round-bottom form)' : '2.76'}.`,
        },
    {
      say: `Cutter form: full depth ${g.depthForm} modules by the trade table. If the cutter is stamped otherwise, the stamp wins.`,
    },
    'd = m*z',
    ...(g.convention === 'leaves'
      ? ['d_a = d + 2*h_a', `h = h_a + ${plain(wheelForms[g.depthForm].dedendum)}*m`]
      : [
          `d_a = m*(z + ${plain(2 * wheelForms[g.depthForm].addendum)})`,
          `h = ${plain(wheelForms[g.depthForm].addendum + wheelForms[g.depthForm].dedendum)}*m`,
        ]),
    `d_f = m*(z - ${plain(2 * wheelForms[g.depthForm].dedendum)})`,
    'A = 360/z',
  ],
  slips: (g) => ({
    involute: {
      of: 'outsideDiameter',
      formula: 'm*(z + 2)',
      says: 'You added 2: that is the involute rule. Clock wheels stand prouder.',
    },
    pinion: { of: 'outsideDiameter', formula: 'm*(z + 1.71)', says: 'You used the allowance for a pinion.' },
    pitch: {
      of: 'outsideDiameter',
      formula: 'm*z',
      says: 'That is the pitch diameter: the teeth stand above it.',
    },
    once: {
      of: 'outsideDiameter',
      formula: 'd + h_a',
      says: 'You added the addendum once; there is a tooth at each end of the diameter.',
    },
    radius: {
      of: 'outsideDiameter',
      formula: 'd_a/2',
      says: 'That is the radius; the micrometer measures diameter.',
    },
    double: {
      of: 'depthOfCut',
      formula: '2*h',
      says: 'You doubled the depth: the cutter goes in on one side only.',
    },
    otherForm: {
      of: 'depthOfCut',
      formula: g.depthForm === '2.95' ? '3.38*m' : '2.95*m',
      says: 'Right sum, other cutter. Read the stamp.',
    },
    moduleOnly: {
      of: 'depthOfCut',
      formula: 'm',
      says: 'That is the module alone; the depth is its form’s figure times the module.',
    },
  }),
  cutWrong: {
    // The cutter is set in from the blank’s own edge, so its root circle is as far out as the blank.
    outsideDiameter: (g, { outsideDiameter }, wrong) =>
      cutWith(g, { blankDiameter: wrong, depthError: (outsideDiameter - wrong) / 2 }),
    depthOfCut: (g, { depthOfCut, outsideDiameter }, wrong) =>
      cutWith(g, { blankDiameter: outsideDiameter, depthError: wrong - depthOfCut }),
  },
});

export const centreDistance = calculation({
  name: 'mesh.centreDistance',
  title: 'Centre distance of a wheel and pinion',
  given: { teeth, leaves, module },
  found: { centreDistance: mm('a', 'centre distance') },
  work: (g) => ({ centreDistance: touchingPitchCircles(g.module, g.teeth, g.leaves) }),
  proofs: [{ of: 'centreDistance', formula: 'centre-distance' }],
  working: ['a = m*(z + n)/2'],
  slips: {
    diameters: {
      of: 'centreDistance',
      formula: 'm*(z + n)',
      says: 'You added the two diameters; the arbors stand two radii apart.',
    },
    difference: {
      of: 'centreDistance',
      formula: 'm*(z - n)/2',
      says: 'You took the difference; the pinion stands outside the wheel.',
    },
  },
});
