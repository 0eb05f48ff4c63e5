import { formatNumber } from '../../units/format.js';
import { MM_PER_INCH } from '../../units/length.js';
import { figures, type SheetKind } from '../sheet.js';

const MOST = 45;
const STEP = 0.5;

export const sineBars: SheetKind = {
  name: 'sine-bars',
  title: 'Sine bars',
  line: 'height under one roller for every half degree to 45°, for bars of 100 mm and of 5 in',
  make: (desk) => ({
    conventions: [
      'A bar of 100 mm has 100 mm from the middle of one roller to the middle of the other. Height: of the pile under one roller, with the other on the plate.',
      'The angle is that of the bar to the plate. For more than 45° set what it lacks of 90° on an angle plate, for there small errors of height make large ones of angle.',
      'Sine: times the centres of any other bar it is the height.',
    ],
    cautions: ['isolate-first'],
    tables: [
      {
        columns: [
          figures('Angle', '°'),
          figures('Sine'),
          figures('Bar of 100 mm', 'mm'),
          figures('Bar of 5 in', 'in'),
          figures('Bar of 5 in', 'mm'),
        ],
        rows: Array.from({ length: MOST / STEP }, (_, at) => (at + 1) * STEP).map((angle) => {
          const hundred = desk.work('sineBar.height', { angle, centres: 100 });
          const five = desk.work('sineBar.height', { angle, centres: 5 * MM_PER_INCH });
          return {
            cells: [
              formatNumber(angle, 1),
              hundred.figure('height', (mm) => formatNumber(Number(mm) / 100, 5)),
              hundred.number('height', 3),
              five.figure('height', (mm) => formatNumber(Number(mm) / MM_PER_INCH, 4)),
              five.number('height', 3),
            ],
          };
        }),
      },
    ],
  }),
};
