import { FORMS } from '../../calculations/cutting/space.js';
import { throughPoints } from '../../geometry/curves/path.js';
import { formatNumber } from '../../units/format.js';
import { MM_PER_INCH } from '../../units/length.js';
import { counted } from '../../units/words.js';
import type { Desk, Worked } from '../desk.js';
import { figures, words } from '../sheet.js';
import type { Piece, TemplateJob, TemplateKind } from './template.js';
import { found, USUAL_LEAVES } from './wheel.js';

/** So many times the cutter’s own size. */
const SCALE = 20;

export const cutterForm: TemplateKind = {
  name: 'cutter-form',
  title: `Cutter form at ${SCALE} : 1`,
  line: `the form of a single-point cutter, ${SCALE} times its size, for a projector or beside a loupe`,
  needs: {
    words: 'a course with a wheel of the form 2.95, 3.38 or 2.45',
    in: (_, jobs) => jobs.some(isDrawn),
  },
  make: (desk, _, jobs) => ({
    conventions: [
      'The cutter has the shape of the space between two teeth. Its flanks are straight, and point to the middle of the wheel.',
      'Corners of the tip: a quarter of the module (common practice, no source).',
      'The form is drawn up to a rim by leaf count. On a blank by the trade allowance the last of it cuts air.',
    ],
    cautions: ['fly-cutter', 'hardening-cutters'],
    pieces: distinct(jobs.filter(isDrawn)).map((job) => pieceOf(desk, job)),
  }),
};

type Drawn = TemplateJob & { readonly depthForm: (typeof FORMS)[number] };

function isDrawn(job: TemplateJob): job is Drawn {
  const { depthForm, teeth, leaves = USUAL_LEAVES, module } = job;
  return (
    (FORMS as readonly string[]).includes(depthForm) &&
    teeth >= 12 &&
    teeth <= 400 &&
    leaves <= Math.min(teeth, 100) &&
    module >= 0.05 &&
    module <= 5
  );
}

const cutterOf = ({ teeth, leaves = USUAL_LEAVES, module, depthForm }: Drawn) => ({
  teeth,
  leaves,
  module,
  depthForm,
});

/** Two wheels that are cut with the same cutter need its form once. */
const distinct = (jobs: readonly Drawn[]): Drawn[] => [
  ...new Map(jobs.map((job) => [JSON.stringify(cutterOf(job)), job])).values(),
];

function pieceOf(desk: Desk, job: Drawn): Piece {
  const cutter = cutterOf(job);
  const form = desk.work('cutter.form', cutter);
  const points = form.found.points as readonly { readonly x: number; readonly y: number }[];
  const large = points.map(({ x, y }) => ({ x: SCALE * x, y: SCALE * y }));
  const row = (name: string, key: string) => ({
    cells: [name, form.length(key, 3), onPaper(desk, form, key)],
  });
  const part = `Cutter for ${counted(cutter.teeth, 'tooth', 'teeth')}, module ${cutter.module}`;
  return {
    part,
    drawings: [{ figure: 'cutter-projection', given: { ...cutter, scale: SCALE } }],
    over: { words: 'the depth on this sheet', length: SCALE * found(form, 'depth') },
    scale: `${SCALE} : 1. On this sheet ${SCALE} mm is 1 mm of the cutter.`,
    outline: { name: part, cut: [throughPoints(large)], mark: [] },
    tables: [
      {
        title: `For a pinion of ${cutter.leaves}, form ${cutter.depthForm}`,
        columns: [
          words('What'),
          figures('On the cutter', desk.lengths),
          figures('On this sheet', desk.lengths),
        ],
        rows: [
          row('Width at the rim', 'width'),
          row('Width at the pitch line', 'pitchWidth'),
          row('Depth', 'depth'),
          row('Corners of the tip, radius', 'tipRadius'),
        ],
      },
    ],
    notes: [
      `On a projector of ${SCALE} : 1, lay this sheet on the screen. Line up the middle line and the tip first.`,
      'With a loupe, compare by eye against the rules beside the form: they are divided in lengths of the cutter itself.',
      'The shadow should lie within the line all along. Light between them is metal that you have stoned away too far.',
    ],
  };
}

/** A size of the cutter as it measures on the sheet. */
const onPaper = (desk: Desk, form: Worked, key: string) =>
  form.figure(key, (value) =>
    desk.units === 'mm'
      ? formatNumber(SCALE * Number(value), 2)
      : formatNumber((SCALE * Number(value)) / MM_PER_INCH, 3),
  );
