import { formatLength, formatNumber } from '../../../units/format.js';
import { told } from '../card.js';
import { wheelCutterFor } from '../wheel.js';
import { type Shop, type Symptom } from './shop.js';

/** Faults of how cutter and blank stand: D5, D9 and D12. */
export const alignment = (shop: Shop): Symptom[] => [lean(shop), eccentric(shop), ...shortTravel(shop)];

/** Cutter off centre. */
function lean({ desk, job, leaves, pitchDiameter, picture, round }: Shop): Symptom {
  const off = round(0.1, 4);
  const at = (diameter: number, places: number) =>
    desk
      .work('setup.centreError', { diameter, offset: off.mm })
      .figure('leanAngle', (angle) => `${formatNumber(Number(angle), places)}°`);
  return {
    title: 'All teeth lean one way',
    picture: picture({ offset: 0.35 * job.module }, 'radius'),
    cause: told`The cutter was off the centre line of the work. A pinion of ${String(leaves)} leans by ${at(leaves * job.module, 1)}.`,
    numbers: [
      {
        label: `Off by ${off.said}: it leans`,
        value: told`${at(pitchDiameter, 2)}`,
      },
    ],
    prove: told`The half-turn test: the step is twice the error.`,
    mend: told`Height: centre + half the cutter’s thickness. Test again on scrap.`,
    caution: 'isolate-first',
  };
}

/** Blank out of true. */
function eccentric({ job, picture, cut, length, round }: Shop): Symptom {
  const runOut = round(0.1, 4);
  const found = cut({ eccentricity: runOut.mm / 2 });
  return {
    title: 'Tips broad on one side, sharp opposite',
    picture: picture({ eccentricity: 0.35 * job.module }, 'first, opposite'),
    cause: told`The blank ran out: the depth changes once a turn.`,
    numbers: [
      {
        label: `Dial moves ${runOut.said}: tips`,
        value: told`${length(found, 'leastLand')}`,
        note: told`on one side, ${length(found, 'greatestLand')} opposite`,
      },
    ],
    prove: told`Dial on the rim: it moves twice the distance off centre.`,
    mend: told`Turn the blank on the arbor that it is cut on.`,
    caution: 'isolate-first',
  };
}

/** The slide stopped short of the far face. */
function shortTravel({ desk, kit, job, length, round }: Shop): Symptom[] {
  const cutterDiameter = wheelCutterFor(job, kit)?.diameter ?? 24;
  // Small cutters stop short by less.
  const { mm: short, said } = cutterDiameter > 10 ? round(3, 120) : round(0.5, 20);
  if (short >= cutterDiameter / 2) return [];
  const found = desk.work('setup.hump', { cutterDiameter, short });
  return [
    {
      title: 'Roots deep on one face, high at the other',
      about: `Cutter of ${formatLength(cutterDiameter, desk.units)}`,
      picture: {
        figure: 'hump',
        given: { cutterDiameter, short, hump: found.found.hump },
      },
      cause: told`The slide stopped short of the far face.`,
      numbers: [{ label: `Short by ${said}: hump`, value: told`${length(found, 'hump')}` }],
      prove: told`Hold the root against the light.`,
      mend: told`Go on past the far face by the approach. Set a stop there.`,
      caution: 'set-up-clearance',
    },
  ];
}
