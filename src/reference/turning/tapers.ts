import { taperSources, tapersInUse } from '../../handbook/trigonometry/tapers.js';
import { figures, type SheetKind, words } from '../sheet.js';

/** The smaller end that a taper is worked with, in; any would do. */
const ENDS = 1;

export const tapers: SheetKind = {
  name: 'tapers',
  title: 'Tapers',
  line: 'Morse and other tapers: by the foot, one in so much, angles, and the set-over of the tailstock',
  make: (desk) => {
    for (const source of taperSources) desk.read(source);
    return {
      conventions: [
        'Set the top slide to the HALF angle: that of a side to the axis. The included angle is from side to side. Some tables call the half angle the angle of taper.',
        'By the foot, and ratio: on the diameter. Set-over of the tailstock: for 100 of work from centre to centre, in the same unit, however much of it is tapered. It suits slight tapers only.',
      ],
      cautions: ['isolate-first'],
      tables: [
        {
          columns: [
            words('Taper'),
            figures('By the foot', 'in'),
            figures('Ratio, 1 to'),
            figures('Included angle', '°'),
            figures('Half angle', '°'),
            figures('Half angle'),
            figures('Set-over in 100'),
          ],
          rows: tapersInUse.map(({ name, perFoot }) => {
            const ends = { largeDiameter: `${ENDS + perFoot}in`, smallDiameter: `${ENDS}in` };
            const taper = desk.work('taper.angles', { ...ends, length: '12in' });
            const setOver = desk.work('taper.setOver', {
              largeDiameter: 20 + (100 * perFoot) / 12,
              smallDiameter: 20,
              taperLength: 100,
              workLength: 100,
            });
            return {
              cells: [
                name,
                taper.number('perFoot', 5),
                taper.number('oneIn', 3),
                taper.number('includedAngle', 4),
                taper.number('halfAngle', 4),
                taper.angle('halfAngle'),
                setOver.number('setOver', 3),
              ],
            };
          }),
        },
      ],
    };
  },
};
