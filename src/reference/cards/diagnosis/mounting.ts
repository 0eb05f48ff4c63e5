import { type CutJob, type Picture, told } from '../card.js';
import { type Shop, type Symptom } from './shop.js';

/** Faults that show when the wheel is mounted and run: D10 and D19 to D21. */
export const mounting = (shop: Shop): Symptom[] => [tightOnce(shop), ...buzz(shop), wobble, scaled(shop)];

/** Hole not true to the teeth. */
function tightOnce({ desk, job, leaves, length, round }: Shop): Symptom {
  const { teeth, module } = job;
  const right = Number(desk.work('mesh.centreDistance', { teeth, leaves, module }).found.centreDistance);
  const off = round(0.05, 2);
  const at = (way: 1 | -1) =>
    desk.work('mesh.depth', { teeth, leaves, module, measuredCentres: right + way * off.mm });
  return {
    title: 'Tight and loose once a turn, teeth alike',
    picture: meshPicture(job, leaves, 'deep, shallow'),
    about: pairSaid(job, leaves),
    cause: told`The hole is not true to the teeth: bored or mounted in another setting.`,
    numbers: [
      {
        label: `Off by ${off.said}: shake`,
        value: told`${length(at(-1), 'shake')}`,
        note: told`to ${length(at(1), 'shake')}, once a turn`,
      },
    ],
    prove: told`Dial on the tips: it moves twice the distance off centre.`,
    mend: told`Bore and cut in one setting. Turn the seat true to the pivots.`,
    caution: 'pivots',
  };
}

/** A pair out of depth, of sizes that can be drawn; larger than life. */
const meshPicture = ({ teeth, module }: CutJob, leaves: number, show: string): Picture | undefined =>
  teeth >= 20 && teeth <= 160 && leaves >= 6 && leaves <= 24
    ? { figure: 'mesh-depth', given: { teeth, leaves, module, modules: 0.3, show }, low: true }
    : undefined;

/** Wheel and pinion. */
const pairSaid = ({ teeth, module }: CutJob, leaves: number): string =>
  `${teeth} teeth, ${leaves} leaves, module ${Number(module.toFixed(4))} mm`;

const LEAVES = [6, 7, 8, 10, 12, 16];

/** Pinion small, or the pair too shallow. */
function buzz({ desk, job, leaves, length }: Shop): Symptom[] {
  const { teeth, module } = job;
  const centres = desk.work('mesh.centreDistance', { teeth, leaves, module });
  return [
    {
      title: 'Buzzes, and drops at each leaf',
      picture: meshPicture(job, leaves, 'right, shallow'),
      about: pairSaid(job, leaves),
      cause: told`The pinion is too small, or the pair stands too far apart.`,
      numbers: [
        {
          label: 'Right centres',
          value: told`${length(centres, 'centreDistance')}`,
          ...(LEAVES.includes(leaves)
            ? {
                note: told`pinion over its tips ${length(desk.work('pinion.blank', { leaves, module }), 'outsideDiameter')}`,
              }
            : {}),
        },
      ],
      prove: told`Measure the pinion, then the centres.`,
      mend: told`Close the centres a little at a time. A small pinion is made again.`,
      caution: 'weights-and-springs',
    },
  ];
}

const wobble: Symptom = {
  title: 'The wheel wobbles in the flat',
  picture: { figure: 'wheel-wobble', given: {} },
  cause: told`It sprang when it was crossed out, or its seat is not square.`,
  prove: told`Spin it past a pointer close to the face.`,
  mend: told`Seat square to the arbor, turned in place. Next time cross out roughly before the teeth are cut.`,
  caution: 'pivots',
};

/** A printed pattern that was shrunk. */
function scaled({ desk, job, blank, length }: Shop): Symptom {
  const { teeth, convention, depthForm, leaves } = job;
  const shrunk = desk.work('wheel.blank', {
    teeth,
    module: Number((0.97 * job.module).toFixed(6)),
    convention,
    depthForm,
    ...(leaves === undefined ? {} : { leaves }),
  });
  return {
    title: 'Holes do not meet the printed pattern',
    picture: {
      figure: 'shrunk-pattern',
      given: { diameter: Number(blank.found.outsideDiameter), percent: 97 },
    },
    cause: told`The pattern was printed “to fit”. Angles stay right, lengths do not.`,
    numbers: [
      {
        label: 'At 97 % our blank measures',
        value: told`${length(shrunk, 'outsideDiameter')}`,
        note: told`right: ${length(blank, 'outsideDiameter')}`,
      },
    ],
    prove: told`Lay a rule on the check bars, both ways.`,
    mend: told`Print again at actual size. Throw the shrunk one away.`,
    caution: 'drilling-plates',
  };
}
