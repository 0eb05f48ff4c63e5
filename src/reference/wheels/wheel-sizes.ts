import { type WheelForm, wheelFormNames } from '../../calculations/wheels/tooth-forms.js';
import type { Kit } from '../../kit/schema.js';
import { formatNumber } from '../../units/format.js';
import type { Desk } from '../desk.js';
import { figures, type SheetKind, type Table } from '../sheet.js';
import { modulesFor } from './modules.js';

const LEAST = 30;
const MOST = 120;
/** The form a cutter has unless the kit says another, and the one with a round bottom and a thinner tooth. */
const USUAL: WheelForm = '2.95';
const ROUND: WheelForm = '3.00';

export const wheelSizes: SheetKind = {
  name: 'wheel-sizes',
  title: 'Clock wheels: blank and depth',
  line: `blank, root and angle for ${LEAST} to ${MOST} teeth, a table for each module`,
  make: (desk, kit) => ({
    conventions: [
      `Blank: module × (teeth + 2.76), the trade allowance. With the round-bottom form, ${ROUND}, it is module × (teeth + 2.50).`,
      'Pitch diameter, blank and root are diameters. The root is the blank less twice the depth of cut.',
      'Depth and root are for the form told above each table. If your cutter is stamped otherwise, go by its stamp, and take the depth from the table of forms.',
    ],
    cautions: ['turning-brass', 'wheel-cutting'],
    tables: [
      formsTable(modulesFor('wheel', kit), desk),
      ...modulesFor('wheel', kit).map((module) => tableOf(module, kit, desk)),
    ],
  }),
};

const sizesOf = (desk: Desk, module: number, depthForm: WheelForm, teeth = LEAST) =>
  desk.work('wheel.blank', { teeth, module, convention: '2.76', depthForm });

/** Depth by the form of the cutter, and how thick a tooth is: the same whatever the count. */
function formsTable(modules: readonly number[], desk: Desk): Table {
  return {
    title: 'Depth of cut by form, and the tooth',
    note: `Tooth: its thickness on the pitch circle. It is half the pitch; with form ${ROUND} it is less.`,
    columns: [
      figures('Module', 'mm'),
      ...wheelFormNames.map((form) => figures(`Form ${form}`, desk.lengths)),
      figures('Tooth', desk.lengths),
      figures(`Tooth, form ${ROUND}`, desk.lengths),
    ],
    rows: modules.map((module) => ({
      cells: [
        formatNumber(module, 2),
        ...wheelFormNames.map((form) => sizesOf(desk, module, form).length('depthOfCut')),
        ...[USUAL, ROUND].map((form) => sizesOf(desk, module, form).length('toothThickness')),
      ],
    })),
  };
}

function tableOf(module: number, { cutters }: Kit, desk: Desk): Table {
  const own = cutters.find((one) => one.cuts === 'wheel' && one.module === module);
  const form = own?.depthForm ?? USUAL;
  const depth = sizesOf(desk, module, form).length('depthOfCut');
  return {
    title: `Module ${formatNumber(module, 2)} mm`,
    apart: true,
    note: `Form ${form}${own ? ', as the class cutter has it' : ''}: depth of cut ${depth.text} ${desk.lengths}.`,
    columns: [
      figures('Teeth'),
      figures('Angle per tooth'),
      figures('Pitch diameter', desk.lengths),
      figures('Blank', desk.lengths),
      figures('Root', desk.lengths),
    ],
    rows: Array.from({ length: MOST - LEAST + 1 }, (_, at) => {
      const wheel = sizesOf(desk, module, form, LEAST + at);
      return {
        cells: [
          String(LEAST + at),
          wheel.angle('anglePerTooth'),
          wheel.length('pitchDiameter'),
          wheel.length('outsideDiameter'),
          wheel.length('rootDiameter'),
        ],
      };
    }),
  };
}
