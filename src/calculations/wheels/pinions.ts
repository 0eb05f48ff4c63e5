import { pinionSizes } from '../../geometry/wheels/pinion.js';
import { pinionTable } from '../../handbook/wheels/tooth-tables.js';
import { calculation } from '../calculation.js';
import { mm } from '../found.js';
import { leaves, module, table } from './gearing.js';
import { type LeafCount, pinionForms } from './tooth-forms.js';

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
      of: 'pitchDiameter',
      source: table('row “pitch circle diameter”'),
      within: 1e-9,
      value: (g) => g.leaves * g.module,
    },
    {
      of: 'addendum',
      source: table('half of “diameter of blank” less the pitch circle'),
      within: 1e-9,
      value: (g) => (g.module * (pinionTable[g.leaves as LeafCount].blank - g.leaves)) / 2,
    },
    {
      of: 'leafThickness',
      source: table('row “tooth / pitch ratio”: the leaf is printed to two figures'),
      within: (g) => 0.01 * g.module,
      value: (g) => Math.PI * g.module * pinionTable[g.leaves as LeafCount].share,
    },
    {
      of: 'tipRadius',
      source: {
        work: 'bs978-2',
        at: 'profiles B and C, from memory: 0.83 or 1.05 modules; the table’s 0.82 is followed',
      },
      within: (g) => 0.011 * g.module,
      value: (g) => g.module * (pinionTable[g.leaves as LeafCount].share > 0.35 ? 0.83 : 1.05),
    },
    {
      of: 'form',
      source: table('row “form of addendum”'),
      value: (g) => (g.leaves < 9 ? 'full ogive' : 'one-third ogive'),
    },
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
      source: (g) =>
        table(`row “full tooth depth”${g.leaves === 10 ? ', corrected from its own blank and root' : ''}`),
      within: 1e-9,
      value: (g) => g.module * pinionTable[g.leaves as LeafCount].depth,
    },
  ],
  working: (g) => {
    const leaf = pinionForms[g.leaves as LeafCount];
    const plain = (modules: number) => String(Number(modules.toFixed(3)));
    return [
      'd = m*n',
      `d_a = m*(n + ${plain(2 * leaf.addendum)})`,
      `h = ${plain(leaf.addendum + leaf.dedendum)}*m`,
      'd_f = d_a - 2*h',
      `s = ${plain(leaf.leafThickness)}*m`,
    ];
  },
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
    wheelDepth: {
      of: 'depthOfCut',
      formula: '2.95*m',
      says: 'That is the depth of a wheel. A pinion cutter is for one leaf count, and has its own.',
    },
  },
});

function inTable(count: number | undefined): number | undefined {
  return count !== undefined && Object.hasOwn(pinionForms, count) ? count : undefined;
}
