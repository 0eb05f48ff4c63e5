import type { Worked } from '../../desk.js';
import type { Figure } from '../../sheet.js';
import { told } from '../card.js';
import { type Shop, type Symptom, wheelSaid } from './shop.js';

/** Faults of the count and of the move: D1 to D4 and D22 of the table of symptoms. */
export const dividing = (shop: Shop): Symptom[] => [
  ...closing(shop),
  ...wrongCount(shop),
  ...slips(shop),
  ...evenButWrong(shop),
];

const secondsOfPitch = ({ job }: Shop): number => 1_296_000 / job.teeth;

/** The closing tooth fat, or thin: every move a little short, or long. */
function closing(shop: Shop): Symptom[] {
  const { job, picture } = shop;
  const pitch = secondsOfPitch(shop);
  const short = gapFor(shop, -1);
  const long = gapFor(shop, 1);
  return [
    {
      title: 'Closing tooth fat, the others alike',
      picture: picture({ stepErrorArcSeconds: (-1.5 * pitch) / job.teeth }, 'closing'),
      cause: told`Every move was short by the same. It all gathers at the end.`,
      ...(short ? { numbers: [{ label: 'A hole short each time leaves', value: told`${short}` }] } : {}),
      prove: told`Gap at the end ÷ moves = the error of one move.`,
      mend: told`Set the arms again: one hole more than the spaces. The pin’s hole is nought.`,
      caution: 'indexing',
    },
    {
      title: 'Closing tooth thin or gone, others alike',
      picture: picture({ stepErrorArcSeconds: (0.3 * pitch) / job.teeth }, 'closing'),
      cause: told`Every move was long by the same. The closing tooth pays for all.`,
      ...(long ? { numbers: [{ label: 'A hole over each time: past by', value: told`${long}` }] } : {}),
      prove: told`What is missing ÷ moves = the error of one move.`,
      mend: told`Set the arms again. Scratch the next blank round before you cut.`,
      caution: 'indexing',
    },
  ];
}

/** What is left over, or run past, when each move is so many holes out; none without a head that can do the count. */
function gapFor({ job, crank, desk }: Shop, out: number): Figure | undefined {
  const move = crank?.move;
  if (!crank || !move || move.holes === 0) return undefined;
  const spaces = move.turns * move.circle + move.holes;
  const gap = (-360 * out * job.teeth) / (crank.ratio * move.circle);
  if (Math.abs(gap) > 180) return undefined;
  const found = desk.work('dividing.diagnose', {
    divisions: job.teeth,
    ratio: crank.ratio,
    circle: move.circle,
    intendedHoles: spaces,
    closingGapAngle: gap,
  });
  if (found.found.holesMoved !== spaces + out || found.found.onceSpaces !== 0) return undefined;
  return found.figure('closingGapAngle', (angle) => `${Number(Math.abs(Number(angle)).toFixed(1))}°`);
}

/** Counts that are often wanted and that many plates cannot do. */
const HARD = [96, 51, 53, 57, 59, 61, 63, 67, 69, 71, 73, 77, 79, 81, 83, 87, 89, 91, 93, 97, 127];

/** Between a tenth of a pitch at the closing tooth, which an eye sees, and three, which nobody would cut. */
function isSeen({ found }: Worked, divisions: number): boolean {
  const pitches = (Math.abs(Number(found.closingErrorArcSeconds)) * divisions) / 1_296_000;
  return pitches > 0.1 && pitches < 3;
}

/** The plate cannot give the count, and the nearest hole was taken. */
function wrongCount({ desk, crank, job, length, picture }: Shop): Symptom[] {
  if (!crank) return [];
  const { ratio, circles } = crank;
  const tried = HARD.filter(
    (count) => !desk.work('dividing.simple', { divisions: count, ratio, circles }).found.possible,
  ).map((divisions) => ({
    divisions,
    nearest: desk.work('dividing.nearest', { divisions, ratio, circles, diameter: divisions * job.module }),
  }));
  const shown = tried.find(({ divisions, nearest }) => isSeen(nearest, divisions));
  if (!shown) return [];
  const { divisions, nearest } = shown;
  const stepErrorArcSeconds = Number(nearest.found.stepErrorArcSeconds);
  const turns = nearest.figure('turns', (whole) => (Number(whole) === 0 ? '' : `${whole} turns and `));
  return [
    {
      title: 'Closing tooth out: plates lack the count',
      about: wheelSaid(divisions, job.module),
      picture: picture({ teeth: divisions, stepErrorArcSeconds }, 'closing'),
      cause: told`No circle divides exactly. The nearest was used: ${turns}${nearest.number('holes', 0)} on the circle of ${nearest.number('circle', 0)}.`,
      numbers: [
        {
          label: 'The nearest move is out by',
          value: told`${length(nearest, 'closingErrorAtRim')}`,
        },
      ],
      prove: told`Multiply back: teeth × spaces must make turns × circle.`,
      mend: told`Another plate or head; or compound or differential indexing.`,
      caution: 'indexing',
    },
  ];
}

/** One move that slipped: put back, or kept. */
function slips(shop: Shop): Symptom[] {
  const { job, picture, desk, crank, pitchDiameter, length } = shop;
  const slipAt = Math.round(job.teeth / 4);
  const slipArcSeconds = 0.25 * secondsOfPitch(shop);
  const hole =
    crank?.move && crank.move.holes > 0
      ? [
          {
            label: `A hole of ${crank.move.circle}, at the teeth`,
            value: told`${length(desk.work('circle.chord', { diameter: pitchDiameter, divisions: crank.ratio * crank.move.circle }), 'arc')}`,
          },
        ]
      : undefined;
  const numbers = hole ? { numbers: hole } : {};
  return [
    {
      title: 'One tooth fat, the next thin, the rest right',
      picture: picture({ slipAt, slipArcSeconds, slipPutBack: 'yes' }, 'slip'),
      cause: told`The pin went into the wrong hole once, and right at the next move.`,
      ...numbers,
      prove: told`Measure the two. Together they are two right teeth.`,
      mend: told`Both teeth are lost; the dividing is sound. Arms up to the pin before every move.`,
      caution: 'indexing',
    },
    {
      title: 'One tooth fat, the closing tooth as thin',
      picture: picture({ slipAt, slipArcSeconds }, 'slip, closing'),
      cause: told`The pin went into the wrong hole once. The move was never put back.`,
      ...numbers,
      prove: told`Between the two, the teeth are even but stand aside from the quarter marks.`,
      mend: told`Stop at the first mark that is missed. Look for the tooth before it went wrong.`,
      caution: 'indexing',
    },
  ];
}

/** One space out lands on another whole number: the wheel is even, and wrong. */
function evenButWrong(shop: Shop): Symptom[] {
  const trap = trapFor(shop);
  if (!trap) return [];
  const { crank, desk } = shop;
  const { wanted, made, circle, spaces } = trap;
  const found = desk.work('dividing.diagnose', {
    divisions: wanted,
    ratio: crank?.ratio,
    circle,
    intendedHoles: spaces,
    teethCut: made,
  });
  return [
    {
      title: 'Teeth even, but the count is wrong',
      about: wheelSaid(wanted, shop.job.module),
      picture: shop.picture(
        { teeth: wanted, steps: made, stepErrorArcSeconds: 1_296_000 / made - 1_296_000 / wanted },
        'first, quarter',
      ),
      cause: told`One space out each time, and another whole number fits. The closing tooth cannot warn you.`,
      numbers: [
        {
          label: 'Teeth cut for teeth wanted',
          value: told`${found.figure('teethCut', String)} for ${String(wanted)}`,
          note: told`${found.figure('holesMoved', String)} spaces for ${String(spaces)}, circle of ${String(circle)}`,
        },
      ],
      prove: told`Count the teeth. The clock runs out by a simple ratio.`,
      mend: told`Scratch round and count before you cut. Use a circle on which the slip shows.`,
      caution: 'indexing',
    },
  ];
}

interface Trap {
  readonly wanted: number;
  readonly made: number;
  readonly circle: number;
  readonly spaces: number;
}

/** A move of the job, or else of another common count, from which one space leads to an even wheel. */
function trapFor({ crank, desk, job }: Shop): Trap | undefined {
  if (!crank) return undefined;
  const { ratio, circles } = crank;
  for (const wanted of [job.teeth, 60, 56, 72, 80, 90, 48, 45, 100]) {
    const { turns = 0, settings = [] } = desk.work('dividing.simple', { divisions: wanted, ratio, circles })
      .found as { turns?: number; settings?: readonly { holes: number; circle: number }[] };
    for (const { holes, circle } of settings.filter((one) => one.holes > 0)) {
      const spaces = turns * circle + holes;
      for (const moved of [spaces + 1, spaces - 1]) {
        const made = (ratio * circle) / moved;
        const near = Math.abs(made / wanted - 1) <= 0.25;
        if (Number.isInteger(made) && near) return { wanted, made, circle, spaces };
      }
    }
  }
  return undefined;
}
