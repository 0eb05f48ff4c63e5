import type { Desk } from '../desk.js';
import { figures, type Row, type SheetKind, words } from '../sheet.js';
import { pitchColumn, pitchOf } from './pitch.js';
import { type ListedSeries, type ListedThread, threadsInUse } from './threads.js';

export const threadSizes: SheetKind = {
  name: 'thread-sizes',
  title: 'Threads and their wires',
  line: 'depth, core, effective diameter, best wire and size over three wires',
  make: (desk) => ({
    conventions: [
      'Depth: of the thread on the screw, on one side. Core and effective diameter (pitch diameter) are diameters.',
      'Over wires: what the micrometer reads over three wires of the size told, on a screw of basic size. A screw that fits its nut reads a little less.',
      'Angle between the flanks: 60° for ISO and unified, 47½° for BA, 55° for the others.',
    ],
    cautions: ['screwcutting'],
    tables: threadsInUse.map((series) => ({
      title: series.title,
      columns: [
        words('Thread'),
        figures('Outside', desk.lengths),
        pitchColumn(series),
        figures('Depth', desk.lengths),
        figures('Core', desk.lengths),
        figures('Effective', desk.lengths),
        figures('Best wire', desk.lengths),
        figures('Over wires', desk.lengths),
      ],
      rows: series.threads.map((thread) => rowOf(thread, series, desk)),
    })),
  }),
};

function rowOf({ name, given }: ListedThread, series: ListedSeries, desk: Desk): Row {
  const form = desk.work('thread.form', given);
  const wires = desk.work('thread.overWires', given);
  return {
    cells: [
      name,
      form.length('majorDiameter', 3),
      pitchOf(form, series),
      ...['depth', 'coreDiameter', 'pitchDiameter'].map((key) => form.length(key, 3)),
      wires.length('bestWire', 3),
      wires.length('measurement', 3),
    ],
  };
}
