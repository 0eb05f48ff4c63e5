import { InputError } from '../../../diagnostics/errors.js';
import type { Kit } from '../../../kit/schema.js';
import type { CautionName } from '../../../lesson/cautions.js';
import { formatLength } from '../../../units/format.js';
import { MM_PER_INCH } from '../../../units/length.js';
import type { Desk, Worked } from '../../desk.js';
import type { Figure } from '../../sheet.js';
import type { CardNumber, CutJob, Picture, Told } from '../card.js';
import { type Crank, crankFor } from '../crank.js';
import { blankOf } from '../wheel.js';

type Given = Readonly<Record<string, unknown>>;

/** The wheel that the symptoms are shown on, and where their numbers are worked. */
export interface Shop {
  readonly desk: Desk;
  readonly kit: Kit;
  readonly job: CutJob;
  /** Of the pinion; eight where the job has none. */
  readonly leaves: number;
  readonly blank: Worked;
  readonly pitchDiameter: number;
  readonly crank: Crank | undefined;
  /** Of the blank that the pictures are cut from: by the leaves of the pinion. */
  readonly drawnDiameter: number;
  /** The wheel cut with something wrong. */
  cut(wrong: Given): Worked;
  /** A wheel cut with something wrong, by both routes, and drawn; nothing where it cannot be cut so. */
  picture(wrong: Given, show: string): Picture | undefined;
  /** The wheel with some cuts aside from where the count has them. */
  unevenPicture(how: Given): Picture | undefined;
  /** So many mm, or thousandths of an inch; a fifth of that on a watch wheel, where it would be too much. */
  round(mm: number, thou: number): Round;
  /** A length with its unit. */
  length(worked: Worked, find: string, places?: number): Figure;
}

/** What is seen, and what is known about it. */
export interface Symptom {
  readonly title: string;
  /** What the numbers are for, where that is not the wheel of the shop. */
  readonly about?: string;
  readonly picture?: Picture | undefined;
  /** What tells it, where no drawing would be true. */
  readonly signs?: Told;
  readonly cause: Told;
  readonly numbers?: readonly CardNumber[];
  readonly prove?: Told;
  readonly mend: Told;
  readonly caution: CautionName;
}

/** A length in round figures, and how it is said in the units of the sheet. */
export interface Round {
  readonly mm: number;
  readonly said: string;
}

/** `60 teeth, module 0.8 mm`. */
export const wheelSaid = (teeth: number, module: number): string =>
  `${teeth} teeth, module ${Number(module.toFixed(4))} mm`;

/** For a class without a job that can be shown: the third wheel of the Larkfield timepiece. */
const SHOWN: CutJob = {
  name: 'Third wheel',
  teeth: 60,
  leaves: 8,
  module: 0.8,
  convention: '2.76',
  depthForm: '2.95',
  cuttingSpeed: 60,
};

/** Of a size that can be cut in numbers and drawn. */
const canBeShown = ({ teeth, module, leaves = 8 }: CutJob): boolean =>
  teeth >= 20 && teeth <= 400 && module >= 0.1 && module <= 4 && leaves <= teeth;

/** Below this module, mm, a tenth of a millimetre is no small error. */
const WATCH = 0.4;

export function shopFor(desk: Desk, kit: Kit, jobs: readonly CutJob[]): Shop {
  const shown = jobs.filter(canBeShown);
  // A wheel that the plates can divide has the most to show.
  const job = shown.find(({ teeth }) => crankFor(teeth, kit, desk)?.move) ?? shown[0] ?? SHOWN;
  const { teeth, module, leaves = 8 } = job;
  const blank = blankOf(job, desk);
  const { outsideDiameter, pitchDiameter } = blank.found;
  const depthForm = job.depthForm === '3.00' ? '2.95' : job.depthForm;
  const wheel = { teeth, leaves, module, depthForm };
  const own = cutOr(desk, { ...wheel, blankDiameter: outsideDiameter })
    ? { ...wheel, blankDiameter: outsideDiameter }
    : wheel;
  const share = module < WATCH ? 5 : 1;
  return {
    desk,
    kit,
    job,
    leaves,
    blank,
    pitchDiameter: Number(pitchDiameter),
    drawnDiameter: Number(blankOf({ ...job, ...wheel, convention: 'leaves' }, desk).found.outsideDiameter),
    crank: crankFor(teeth, kit, desk),
    cut: (wrong) => desk.work('cut.simulate', { ...own, ...wrong }),
    picture: (wrong, show) => {
      const given = { ...wheel, ...wrong };
      return cutOr(desk, given) && { figure: 'cut-beside-right', given: { ...given, show } };
    },
    unevenPicture: (how) =>
      cutOr(desk, wheel) && { figure: 'cut-beside-right', given: { ...wheel, ...how, show: 'within' } },
    round: (mm, thou) => {
      const [here, inches] = [mm / share, thou / share / 1000];
      return desk.units === 'mm'
        ? { mm: here, said: `${Number(here.toFixed(4))}\u202Fmm` }
        : { mm: inches * MM_PER_INCH, said: `${Number(inches.toFixed(5))}\u202Fin` };
    },
    length: (worked, find, places = 2) =>
      worked.figure(find, (mm) => formatLength(Math.abs(Number(mm)), desk.units, places)),
  };
}

/** The wheel as it comes out; nothing where it is refused. */
function cutOr(desk: Desk, given: Given): Worked | undefined {
  try {
    return desk.work('cut.simulate', given);
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
}
