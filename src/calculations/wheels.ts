import { InputError } from '../diagnostics/errors.js';
import { theoreticalAddendum } from '../geometry/epicycloid.js';
import { pinionSizes } from '../geometry/pinion.js';
import { touchingPitchCircles, wheelSizes } from '../geometry/wheel.js';
import { addendumByFixedPoint } from '../handbook/addendum.js';
import type { Citation } from '../handbook/record.js';
import { pinionTable, wheelTable } from '../handbook/tooth-tables.js';
import { calculation } from './calculation.js';
import { choice, length, optional, orElse, whole } from './quantity.js';
import { FACE_RADIUS, type LeafCount, PRACTICAL, pinionForms, wheelForms } from './tooth-forms.js';

const teeth = whole('z', 'teeth in the wheel', 6, 1000);
const leaves = whole('n', 'leaves in the pinion', 5, 100);
const module = length('m', 'module', 0.05, 20);
const article: Citation = { work: 'cycloidal-article', at: 'fixed-point form, from memory' };
const table = (row: string): Citation => ({ work: 'cutter-table', at: row });
const mm = (symbol: string, name: string) => ({ symbol, name, unit: 'mm' });

export const addendumFactor = calculation({
  name: 'wheel.addendumFactor',
  title: 'Addendum factor of a cycloidal wheel, by its pinion',
  given: { teeth, leaves },
  found: {
    factor: { symbol: 'f', unit: '', name: 'theoretical addendum factor' },
    practicalFactor: { symbol: 'f_p', unit: '', name: 'practical addendum factor' },
  },
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

export const wheelBlank = calculation({
  name: 'wheel.blank',
  title: 'Wheel blank and depth of cut',
  given: {
    teeth,
    leaves: optional(leaves),
    module,
    convention: orElse(choice('convention for the addendum', ['leaves', '2.76']), 'leaves'),
    depthForm: orElse(
      choice('form of the cutter, by its full depth', ['2.95', '3.38', '2.45', '3.00']),
      '2.95',
    ),
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
    if (g.convention === 'leaves' && g.leaves === undefined)
      throw new InputError('leaves', undefined, `${leaves.accepts}, or convention=2.76`);
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
      toothThickness: g.depthForm === '3.00' ? 1.41 : Math.PI / 2,
    });
  },
  proofs: [
    { of: 'pitchDiameter', formula: 'pitch-diameter' },
    {
      of: 'outsideDiameter',
      source: table('row “diameter of blank”; by leaf count, the fixed-point form'),
      within: 1e-6,
      value: (g) =>
        g.module *
        (g.teeth +
          (g.convention === 'leaves'
            ? 1.9 * addendumByFixedPoint(g.teeth, g.leaves ?? 0)
            : wheelTable[g.depthForm].blank)),
    },
    {
      of: 'rootDiameter',
      source: table('row “root diameter”'),
      within: 1e-9,
      value: (g) => g.module * (g.teeth + wheelTable[g.depthForm].root),
    },
    {
      of: 'depthOfCut',
      source: table('row “full tooth depth”; by leaf count, half of blank less root'),
      within: 1e-6,
      value: (g) =>
        g.convention === 'leaves'
          ? (g.module * (1.9 * addendumByFixedPoint(g.teeth, g.leaves ?? 0) - wheelTable[g.depthForm].root)) /
            2
          : g.module * wheelTable[g.depthForm].depth,
    },
    {
      of: 'toothThickness',
      source: table('row “tooth thickness”, printed to two figures'),
      within: 0.02,
      value: (g) => g.module * wheelTable[g.depthForm].thickness,
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
    'd_a = d + 2*h_a',
    'h = h_a + h_f',
    'd_f = d - 2*h_f',
  ],
  slips: {
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
  },
});

export const pinionBlank = calculation({
  name: 'pinion.blank',
  title: 'Pinion blank and depth of cut',
  given: {
    leaves: {
      ...leaves,
      accepts: 'a leaf count of 6, 7, 8, 10, 12 or 16',
      read: (raw: unknown) => inTable(leaves.read(raw)),
    },
    module,
  },
  found: {
    pitchDiameter: mm('d', 'pitch diameter'),
    addendum: mm('h_a', 'addendum'),
    outsideDiameter: mm('d_a', 'outside diameter'),
    leafThickness: mm('s', 'leaf thickness at the pitch circle'),
    tipRadius: mm('r', 'radius of the leaf tip'),
    depthOfCut: mm('h', 'full depth of cut'),
    rootDiameter: mm('d_f', 'root diameter'),
    form: { unit: '', name: 'form of the tip' },
  },
  work: (g) => {
    const leaf = pinionForms[g.leaves as LeafCount];
    return { ...pinionSizes(g.leaves, g.module, leaf), form: leaf.form };
  },
  proofs: [
    {
      of: 'outsideDiameter',
      source: table('row “diameter of blank”'),
      within: 1e-9,
      value: (g) => g.module * pinionTable[g.leaves as LeafCount].blank,
    },
    {
      of: 'rootDiameter',
      source: table('row “root diameter”'),
      within: 1e-9,
      value: (g) => g.module * pinionTable[g.leaves as LeafCount].root,
    },
    {
      of: 'depthOfCut',
      source: table('row “full tooth depth”; ten leaves corrected from its own blank and root'),
      within: 1e-9,
      value: (g) => g.module * pinionTable[g.leaves as LeafCount].depth,
    },
  ],
  working: ['d_a = m*n + 2*h_a', 'd_f = d_a - 2*h'],
  slips: {
    wheel: {
      of: 'outsideDiameter',
      formula: 'm*(n + 2.76)',
      says: 'You used the allowance for a wheel on a pinion.',
    },
    involute: {
      of: 'outsideDiameter',
      formula: 'm*(n + 2)',
      says: 'You added 2: that is the involute rule.',
    },
    pitch: {
      of: 'outsideDiameter',
      formula: 'm*n',
      says: 'That is the pitch diameter: the leaves stand above it.',
    },
  },
});

function inTable(count: number | undefined): number | undefined {
  return count !== undefined && Object.hasOwn(pinionForms, count) ? count : undefined;
}

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
