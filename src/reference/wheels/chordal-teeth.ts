import { figures, type SheetKind } from '../sheet.js';

const LEAST = 12;
const MOST = 100;
const PLACES = 4;

export const chordalTeeth: SheetKind = {
  name: 'chordal-teeth',
  title: 'Chordal thickness of gear teeth',
  line: 'what a gear-tooth vernier is set to, for module 1 and 12 to 100 teeth',
  make: (desk) => ({
    conventions: [
      'For module 1: multiply by the module in mm. For a diametral pitch divide by it, and the result is in inches.',
      'Set the depth slide to the chordal addendum; it rests on the tip of the tooth. The jaws then touch at the pitch circle. The same for every pressure angle.',
      'If the blank is under size, take half of what it lacks off the addendum.',
    ],
    cautions: ['isolate-first'],
    tables: [
      {
        columns: [figures('Teeth'), figures('Chordal thickness'), figures('Chordal addendum')],
        rows: Array.from({ length: MOST - LEAST + 1 }, (_, at) => {
          const tooth = desk.work('tooth.chordal', { teeth: LEAST + at, module: 1 });
          return {
            cells: [
              String(LEAST + at),
              tooth.number('chordalThickness', PLACES),
              tooth.number('chordalAddendum', PLACES),
            ],
          };
        }),
      },
    ],
  }),
};
