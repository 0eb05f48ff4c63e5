import { MM_PER_INCH } from '../../../units/length.js';
import type { Desk, Worked } from '../../desk.js';
import type { Figure } from '../../sheet.js';
import { told } from '../card.js';
import { type Shop, type Symptom, wheelSaid } from './shop.js';

/** Faults of plates, worms and tables: D11, D14, D15 and D16. */
export const plates = (shop: Shop): Symptom[] => [
  ...rounded(shop),
  plateHole(shop),
  ripple(shop),
  backlash(shop),
];

/** Counts that come out in no whole minutes; the centre wheel of the timepiece first. */
const NOT_WHOLE = [64, 56, 70, 66, 84, 54];

/** Each step rounded before it was added. */
function rounded({ desk, kit, job, length, picture }: Shop): Symptom[] {
  if (kit.rotaryTables.length === 0) return [];
  const teeth = [job.teeth, ...NOT_WHOLE].find((count) => Math.abs(driftOf(count)) > 0) ?? 64;
  const stepErrorArcSeconds = driftOf(teeth);
  const diameter = teeth * job.module;
  const closing = desk.work('dividing.closing', { divisions: teeth, stepErrorArcSeconds, diameter });
  return [
    {
      title: 'Closing tooth a little out, rotary table',
      about: wheelSaid(teeth, job.module),
      picture: picture({ teeth, stepErrorArcSeconds }, 'closing'),
      cause: told`Each step was rounded, then added. Each is wrong the same way.`,
      numbers: [
        {
          label: 'Steps to the minute: out by',
          value: told`${length(closing, 'closingAtRim')}`,
        },
      ],
      prove: told`Error of one step × steps = error at the end.`,
      mend: told`Work every reading from the start, then round it, once.`,
      caution: 'indexing',
    },
  ];
}

/** Arc seconds by which the step is long when it is set to the nearest minute. */
const driftOf = (teeth: number): number => {
  const step = 1_296_000 / teeth;
  return Math.round(step / 60) * 60 - step;
};

/** A hole or notch out of place. */
function plateHole({ desk, crank, job, pitchDiameter, length, round, unevenPicture }: Shop): Symptom {
  const out = round(0.05, 2);
  const radius = round(50, 2000);
  const given = { holeError: out.mm, plateRadius: radius.mm, wheelRadius: pitchDiameter / 2 };
  const at = (ratio: number) => desk.work('dividing.plateError', { ...given, ratio });
  return {
    title: 'The same error comes again every few teeth',
    picture: unevenPicture({ uneven: 'every-few', every: 3, unevenArcSeconds: aFifth(job.teeth) }),
    cause: told`A hole or notch of the plate is out of place, or dirty.`,
    numbers: [
      {
        label: `Hole out ${out.said} at radius ${radius.said}: at the teeth`,
        value: told`${length(at(1), 'atRim', 3)}`,
        ...(crank
          ? { note: told`through ${String(crank.ratio)} : 1 only ${inTwoFigures(at(crank.ratio), desk)}` }
          : {}),
      },
    ],
    prove: told`Does it move on when you start from another hole?`,
    mend: told`Clean the holes. Use another circle, or another set of holes.`,
    caution: 'direct-dividing',
  };
}

/** A length too small for so many decimals. */
const inTwoFigures = (worked: Worked, { units }: Desk): Figure =>
  worked.figure('atRim', (mm) => {
    const shown = Number(mm) / (units === 'mm' ? 1 : MM_PER_INCH);
    return `${Number(shown.toPrecision(2)).toFixed(7).replace(/0+$/, '')}\u202F${units === 'mm' ? 'mm' : 'in'}`;
  });

const atRim = ({ desk, pitchDiameter, length }: Shop, minutes: number): Figure =>
  length(desk.work('circle.chord', { diameter: pitchDiameter, angle: minutes / 60 }), 'arc', 3);

/** A worm or a plate out of true. */
function ripple(shop: Shop): Symptom {
  return {
    title: 'A fine ripple, once a turn of the crank',
    ...rippled(shop),
    numbers: [{ label: 'A minute of arc, at the teeth', value: told`${atRim(shop, 1)}` }],
    prove: told`A dial on the work, read at each quarter turn of the crank.`,
    mend: told`A minute or two does no harm in a clock. If more, true the plate, and have the worm looked at.`,
    caution: 'isolate-first',
  };
}

/** Where each tooth is a half turn of the crank, or whole ones, all stand alike. */
function rippled({ crank, job, unevenPicture }: Shop): Pick<Symptom, 'picture' | 'cause'> {
  const ratio = crank?.ratio ?? 40;
  if ((2 * ratio) % job.teeth === 0)
    return {
      cause: told`The worm or the plate runs out of true. A wheel cut by whole or half turns, as this one on our head, does not show it.`,
    };
  return {
    picture: unevenPicture({ uneven: 'ripple', ratio, unevenArcSeconds: aFifth(job.teeth) }),
    cause: told`The worm or the plate runs out of true.`,
  };
}

/** Of a pitch, arc seconds: so much that it is seen in a drawing. */
const aFifth = (teeth: number): number => 259_200 / teeth;

/** Slack taken up from both sides. */
function backlash(shop: Shop): Symptom {
  return {
    title: 'Every second or third tooth thin',
    picture: shop.unevenPicture({
      uneven: 'every-few',
      every: 2,
      unevenArcSeconds: -aFifth(shop.job.teeth),
    }),
    cause: told`Slack in the worm: the crank came up to the hole now from one side, now from the other.`,
    numbers: [{ label: 'Slack of three minutes, at the teeth', value: told`${atRim(shop, 3)}` }],
    prove: told`Pin out, rock the crank: the work stands still while the slack is taken up.`,
    mend: told`Turn always the same way. Gone past? Back half a turn, and come up again. Then clamp.`,
    caution: 'indexing',
  };
}
