import { figures, type SheetKind } from '../sheet.js';

const LEAVES = [6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16];
const RATIOS = [3, 4, 5, 6, 7, 8, 10, 12];

export const addendumFactors: SheetKind = {
  name: 'addendum-factors',
  title: 'Addendum of a clock wheel by leaf count',
  line: 'how tall a wheel’s tooth is above the pitch circle, for 6 to 16 leaves and ratios of 3 to 12',
  make: (desk) => ({
    conventions: [
      'Times the module, this is the height of a wheel’s tooth above the pitch circle. The blank is the pitch diameter and twice that height.',
      'Ratio: teeth of the wheel to leaves of the pinion that it drives.',
      'Factors are practical ones: 0.95 of what the curve comes to. The trade allowance of 2.76 on the diameter is a factor of 1.38, whatever the pinion.',
    ],
    cautions: ['wheel-cutting'],
    tables: [
      {
        columns: [figures('Leaves'), ...RATIOS.map((ratio) => figures(`${ratio} : 1`))],
        rows: LEAVES.map((leaves) => ({
          cells: [
            String(leaves),
            ...RATIOS.map((ratio) =>
              desk
                .work('wheel.addendumFactor', { teeth: ratio * leaves, leaves })
                .number('practicalFactor', 3),
            ),
          ],
        })),
      },
    ],
  }),
};
