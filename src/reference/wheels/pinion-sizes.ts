import { pinionTable } from '../../handbook/wheels/tooth-tables.js';
import { formatNumber } from '../../units/format.js';
import type { Desk } from '../desk.js';
import { figures, type Row, type SheetKind, type Table, words } from '../sheet.js';
import { modulesFor } from './modules.js';

const LEAVES = [6, 7, 8, 10, 12, 16] as const;

export const pinionSizes: SheetKind = {
  name: 'pinion-sizes',
  title: 'Clock pinions: blank and depth',
  line: 'blank, root, depth and leaf for 6 to 16 leaves, in modules and for each module',
  make: (desk, kit) => ({
    conventions: [
      'Blank, pitch circle and root are diameters. The leaf is its thickness on the pitch circle. In the first table multiply lengths by the module.',
      'Flanks run straight to the centre. Leaf angle: between the two flanks of a leaf; space angle: between the flanks of a space, as a cutter is ground. Form: that of the tip of a leaf.',
      'Ten leaves: the depth is 2.855, which follows from blank and root; some tables print 2.755.',
    ],
    cautions: ['wheel-cutting', 'pivots'],
    tables: [inModules(desk), ...modulesFor('pinion', kit).map((module) => tableOf(module, desk))],
  }),
};

function inModules(desk: Desk): Table {
  return {
    title: 'In modules',
    columns: [
      figures('Leaves'),
      figures('Blank'),
      figures('Root'),
      figures('Depth'),
      figures('Leaf'),
      figures('Leaf angle', '°'),
      figures('Space angle', '°'),
      words('Form'),
    ],
    rows: LEAVES.map((leaves) => {
      const pinion = desk.work('pinion.blank', { leaves, module: 1 });
      return {
        cells: [
          String(leaves),
          pinion.number('outsideDiameter', 2),
          pinion.number('rootDiameter', 2),
          pinion.number('depthOfCut', 3),
          pinion.number('leafThickness', 2),
          ...angles(leaves, desk),
          pinion.figure('form', String),
        ],
      };
    }),
  };
}

/** Leaf and space as the printed share of the pitch has them, laid off in equal parts of the pitch: thirds or fifths. */
function angles(leaves: (typeof LEAVES)[number], desk: Desk) {
  const { share } = pinionTable[leaves];
  const parts = share === 1 / 3 ? 3 : 5;
  const circle = desk.work('holes.circle', { holes: parts * leaves, diameter: 1 });
  const angleOf = (count: number) =>
    circle.figure('holes', (holes) =>
      formatNumber((holes as readonly { readonly angle: number }[])[count]?.angle ?? Number.NaN, 1),
    );
  const ofLeaf = Math.round(share * parts);
  return [angleOf(ofLeaf), angleOf(parts - ofLeaf)];
}

function tableOf(module: number, desk: Desk): Table {
  return {
    title: `Module ${formatNumber(module, 2)} mm`,
    columns: [
      figures('Leaves'),
      figures('Pitch circle', desk.lengths),
      figures('Blank', desk.lengths),
      figures('Root', desk.lengths),
      figures('Depth', desk.lengths),
      figures('Leaf', desk.lengths),
    ],
    rows: LEAVES.map((leaves) => rowOf(leaves, module, desk)),
  };
}

function rowOf(leaves: number, module: number, desk: Desk): Row {
  const pinion = desk.work('pinion.blank', { leaves, module });
  const keys = ['pitchDiameter', 'outsideDiameter', 'rootDiameter', 'depthOfCut', 'leafThickness'] as const;
  return { cells: [String(leaves), ...keys.map((key) => pinion.length(key))] };
}
