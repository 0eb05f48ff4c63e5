import { formatNumber } from '../../units/format.js';
import { MM_PER_INCH } from '../../units/length.js';
import { figures, type SheetKind } from '../sheet.js';

/** Diametral pitches in use from models to clocks. */
const PITCHES = [10, 12, 14, 16, 18, 20, 24, 28, 30, 32, 36, 40, 44, 48, 52, 56, 60, 64, 72];
/** Nearer than this a standard module is easily taken for it, %. */
const ALIKE = 2;

export const pitches: SheetKind = {
  name: 'pitches',
  title: 'Diametral pitch and module',
  line: 'module and circular pitch for diametral pitches of 10 to 72, and the standard module nearest to each',
  make: (desk) => ({
    conventions: [
      'Diametral pitch (DP): teeth to an inch of pitch diameter. Module: millimetres of pitch diameter to a tooth. Module = 25.4 ÷ DP. Circular pitch: from tooth to tooth, measured round the pitch circle.',
      `Nearest module: of the standard ones. Difference: how much larger than that this one is (−: smaller). Strong rows are within ${ALIKE} %, and easily taken for it. Wheels and cutters of the two do not go together, however near they are.`,
    ],
    cautions: ['isolate-first'],
    tables: [
      {
        columns: [
          figures('DP'),
          figures('Module', 'mm'),
          figures('Circular pitch', 'in'),
          figures('Circular pitch', 'mm'),
          figures('Nearest module', 'mm'),
          figures('Difference', '%'),
        ],
        rows: PITCHES.map((diametralPitch) => {
          const size = desk.work('module.convert', { diametralPitch });
          return {
            strong: Math.abs(Number(size.found.differencePercent)) < ALIKE,
            cells: [
              String(diametralPitch),
              size.number('module', 4),
              size.figure('circularPitch', (mm) => formatNumber(Number(mm) / MM_PER_INCH, 4)),
              size.number('circularPitch', 3),
              size.number('nearestStandardModule', 3),
              size.number('differencePercent', 2),
            ],
          };
        }),
      },
    ],
  }),
};
