import type { Desk } from '../desk.js';
import { figures, type SheetKind, type Table } from '../sheet.js';

const LEAST = 12;
const MOST = 60;
const ANGLES = [20, 14.5];
const PLACES = 4;

export const spans: SheetKind = {
  name: 'gear-measures',
  title: 'Involute gears: span and pins',
  line: 'span over several teeth and size over two pins, for module 1, at 20° and 14½°',
  make: (desk) => ({
    conventions: [
      'For module 1: multiply by the module in mm. For a diametral pitch divide by it, and the result is in inches.',
      'Span: across so many teeth. Over pins: two of 1.728 modules, in opposite or nearly opposite spaces.',
      'For a gear cut to full depth and without backlash. A gear that is to run freely measures a little less.',
    ],
    cautions: ['isolate-first'],
    tables: ANGLES.map((angle) => tableOf(angle, desk)),
  }),
};

function tableOf(pressureAngle: number, desk: Desk): Table {
  return {
    title: `Pressure angle ${pressureAngle === 14.5 ? '14½' : pressureAngle}°`,
    apart: true,
    columns: [figures('Teeth'), figures('Across'), figures('Span'), figures('Over pins')],
    rows: Array.from({ length: MOST - LEAST + 1 }, (_, at) => {
      const given = { teeth: LEAST + at, module: 1, pressureAngle };
      const span = desk.work('involute.span', given);
      return {
        cells: [
          String(given.teeth),
          span.number('spanTeeth', 0),
          span.number('span', PLACES),
          desk.work('involute.overPins', given).number('measurement', PLACES),
        ],
      };
    }),
  };
}
