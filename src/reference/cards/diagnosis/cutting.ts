import { told } from '../card.js';
import { type Shop, type Symptom } from './shop.js';

/** Faults of blank, depth and cutter: D6, D7, D8, D13, D17 and D18. */
export const cutting = (shop: Shop): Symptom[] => [
  flats(shop),
  sharp(shop),
  thin(shop),
  ...thickLeaves(shop),
  bent,
  chatter,
];

/** Not deep enough, or a large blank whose depth was set by a touch on the rim. */
function flats({ picture, cut, length, job, round }: Shop): Symptom {
  const short = round(0.1, 4);
  return {
    title: 'Flats on every tip',
    picture: picture({ depthError: -0.3 * job.module }, 'any'),
    cause: told`Not deep enough. Or the blank is large, and the depth was set by a touch on the rim.`,
    numbers: [
      {
        label: `Short by ${short.said}: tips`,
        value: told`${length(cut({ depthError: -short.mm }), 'leastLand')}`,
        note: told`right: ${length(cut({}), 'leastLand')}`,
      },
    ],
    prove: told`Measure the blank, then the depth.`,
    mend: told`Deeper by ${round(0.02, 1).said} at a time, until the tips are right. Then go round again.`,
    caution: 'wheel-cutting',
  };
}

/** Blank small: the rule of another kind of wheel. */
function sharp({ blank, desk, drawnDiameter, picture, job, length }: Shop): Symptom {
  const { teeth, module } = job;
  const involute = desk.work('involute.wheel', { teeth, module });
  // As far in as the rule for involute wheels is from the trade’s.
  const small = 0.38 * module;
  return {
    title: 'Teeth pointed and short',
    picture: picture({ blankDiameter: drawnDiameter - 2 * small, depthError: small }, 'any'),
    cause: told`Too deep, or the blank is small. “Teeth + 2” is the rule for involute wheels.`,
    numbers: [
      {
        label: 'Teeth + 2 makes a blank of',
        value: told`${length(involute, 'outsideDiameter')}`,
        note: told`right: ${length(blank, 'outsideDiameter')}`,
      },
    ],
    prove: told`Measure over the tips. Then the depth.`,
    mend: told`A new blank: metal that is gone does not come back.`,
    caution: 'turning-brass',
  };
}

/** About as far as the next cutter in the drawer; within a fifth. */
const nextModule = (module: number): number =>
  Number((module + (module < 0.3 ? 0.01 : module < 1.5 ? 0.05 : 0.25)).toFixed(4));

/** A cutter of the next module. */
function thin({ job, picture, cut, length }: Shop): Symptom {
  const cutterModule = nextModule(job.module);
  return {
    title: 'All teeth thin, the pitch right',
    picture: picture({ cutterModule: 1.18 * job.module }, 'any'),
    cause: told`A cutter of a larger module, or two cuts side by side.`,
    numbers: [
      {
        label: `Cutter of module ${cutterModule}: teeth`,
        value: told`${length(cut({ cutterModule }), 'lastTooth')}`,
        note: told`right: ${length(cut({}), 'lastTooth')}`,
      },
    ],
    prove: told`Read the cutter’s stamp. Compare tooth and space at the pitch line.`,
    mend: told`The head makes the pitch, the cutter the thickness. Change the cutter.`,
    caution: 'cutter-guard',
  };
}

/** Leaf counts that the pinion tables have. */
const LEAVES = [6, 7, 8, 10, 12, 16];

/** A wheel cutter on a pinion. */
function thickLeaves({ desk, job, leaves, blank, length }: Shop): Symptom[] {
  if (!LEAVES.includes(leaves)) return [];
  const { module } = job;
  const pinion = desk.work('pinion.blank', { leaves, module });
  const { outsideDiameter, pitchDiameter, rootDiameter, leafThickness, tipRadius } = pinion.found;
  return [
    {
      title: 'Pinion leaves thick: it binds',
      picture: {
        figure: 'pinion-section',
        given: { leaves, module, outsideDiameter, pitchDiameter, rootDiameter, leafThickness, tipRadius },
      },
      cause: told`A wheel cutter was used, or one for another leaf count. Right, as drawn: ${length(pinion, 'leafThickness')}.`,
      numbers: [
        {
          label: 'A leaf by a wheel cutter',
          value: told`${length(blank, 'toothThickness')}`,
        },
      ],
      mend: told`A pinion cutter is for one leaf count. Read the stamp.`,
      caution: 'pivots',
    },
  ];
}

const bent: Symptom = {
  title: 'Teeth bent, burrs pushed over',
  signs: told`a lip on the face where the cutter comes out, that catches a finger nail; or tips that all lie over to one face.`,
  cause: told`Soft brass, a blunt cutter, or a tooth that is not square to its arbor.`,
  prove: told`Look at the edge under a glass. Cut a scrap of hard engraving brass: is it clean?`,
  mend: told`Stone the face of the cutter. Use hard leaded brass. Back the stack with a disc near the root diameter.`,
  caution: 'wheel-cutting',
};

const chatter: Symptom = {
  title: 'First and last tooth bad, chatter elsewhere',
  signs: told`fine ridges across a flank, evenly apart, and a ringing as it was cut. The first and the last tooth are wrong by more than the rest.`,
  cause: told`Spindle or detent not locked, or the cut began before the clamp was on.`,
  prove: told`Isolate. Rock spindle, detent and cutter arbor by hand: nothing may move.`,
  mend: told`Held? Backed? Bearings? Tool? Speed? In that order, and one change at a time.`,
  caution: 'isolate-first',
};
