import { figures, ticks, words } from '../sheet.js';
import { stroke } from './outline.js';
import type { TemplateKind } from './template.js';

/** Side of the square, mm. */
const SIDE = 100;

export const printerTest: TemplateKind = {
  name: 'printer-test',
  title: 'Printer test',
  line: 'a square of 100 mm with its diagonals, and bars of four inches: measure them before you trust a template',
  make: (desk) => {
    const diagonal = desk.work('triangle.solve', { a: SIDE, b: SIDE, C: 90 });
    const side = desk.work('print.scale', { length: SIDE, measured: SIDE }).number('printed', 1);
    const row = (name: string, what: typeof side) => ({ cells: [name, what, ''] });
    return {
      conventions: [
        'Turn off anything called fit, shrink or scale to the page.',
        'Measure with a steel rule and a lens, from the middle of a line to the middle of a line.',
      ],
      cautions: [],
      pieces: [
        {
          part: 'The printer',
          drawings: [{ figure: 'printer-test', given: { side: SIDE } }],
          over: { words: 'the side of the square', length: SIDE },
          outline: {
            name: 'Printer test',
            cut: [
              stroke(
                { x: 0, y: 0 },
                { x: SIDE, y: 0 },
                { x: SIDE, y: SIDE },
                { x: 0, y: SIDE },
                { x: 0, y: 0 },
              ),
            ],
            mark: [
              stroke({ x: 0, y: 0 }, { x: SIDE, y: SIDE }),
              stroke({ x: SIDE, y: 0 }, { x: 0, y: SIDE }),
              { middle: { x: SIDE / 2, y: SIDE / 2 }, radius: SIDE / 2 },
            ],
          },
          tables: [
            {
              columns: [words('From'), figures('Should be', 'mm'), ticks('Measured, mm')],
              rows: [
                row('A to B, across the top', side),
                row('D to C, across the foot', side),
                row('A to D, down the left', side),
                row('B to C, down the right', side),
                row('A to C, corner to corner', diagonal.number('c', 1)),
                row('B to D, corner to corner', diagonal.number('c', 1)),
              ],
            },
          ],
          notes: [
            'Top and foot differ, or left and right: the paper went through on the slant. Print it again.',
            'The two diagonals differ: the square leans. Do not use this printer for templates.',
            'Across is out but down is right, or the other way: note both. Say them when you print a template, as X and Y. Each is what you measured, divided by what it should be.',
            'Paper swells in damp air. Print, measure and use it on one day.',
          ],
        },
      ],
    };
  },
};
