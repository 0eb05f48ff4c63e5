import { figures, type SheetKind } from '../sheet.js';

interface Set {
  readonly cannonPinion: number;
  readonly minuteWheel: number;
  readonly minutePinion: number;
  readonly hourWheel: number;
}

const BOUNDS = { ratio: 12, minLeaves: 6, maxLeaves: 20, maxTeeth: 72, equalCentres: true };

export const motionWork: SheetKind = {
  name: 'motion-work',
  title: 'Motion work',
  line: 'every set of wheels and pinions that turns the hour hand once for twelve turns of the minute hand',
  make: (desk) => {
    const found = desk.work('train.motionWork', BOUNDS);
    const sets = found.found.sets as readonly Set[];
    const told = (at: number, of: (set: Set) => number) =>
      found.figure('sets', (all) => String(of((all as readonly Set[])[at] as Set)));
    return {
      conventions: [
        'The cannon pinion sits on the centre arbor with the minute hand. It drives the minute wheel. The minute pinion turns with that wheel and drives the hour wheel.',
        `Every set there is with pinions of ${BOUNDS.minLeaves} to ${BOUNDS.maxLeaves} leaves and wheels of up to ${BOUNDS.maxTeeth} teeth, both pairs of one module on the same two centres. A pair on another module gives many more, such as 12, 36, 10, 40.`,
        'Centres: for module 1. Multiply by your module.',
        'Check: minute wheel ÷ cannon pinion × hour wheel ÷ minute pinion must be 12.',
      ],
      cautions: ['pivots'],
      tables: [
        {
          columns: [
            figures('Cannon pinion'),
            figures('Minute wheel'),
            figures('Minute pinion'),
            figures('Hour wheel'),
            figures('Centres'),
            figures('Check'),
          ],
          rows: sets.map(({ cannonPinion, minuteWheel, minutePinion, hourWheel }, at) => ({
            cells: [
              told(at, (set) => set.cannonPinion),
              told(at, (set) => set.minuteWheel),
              told(at, (set) => set.minutePinion),
              told(at, (set) => set.hourWheel),
              desk
                .work('mesh.centreDistance', { teeth: minuteWheel, leaves: cannonPinion, module: 1 })
                .number('centreDistance', 1),
              desk
                .work('train.ratio', {
                  wheels: [minuteWheel, hourWheel],
                  pinions: [cannonPinion, minutePinion],
                })
                .number('ratio', 0),
            ],
          })),
        },
      ],
    };
  },
};
