import { type WheelForm, wheelForms } from '../../calculations/wheels/tooth-forms.js';
import { InputError } from '../../diagnostics/errors.js';
import { turnedPath } from '../../geometry/curves/path.js';
import { wheelOutline } from '../../geometry/wheels/wheel-outline.js';
import { counted } from '../../units/words.js';
import type { Desk } from '../desk.js';
import { figures, words } from '../sheet.js';
import { circle, spoke } from './outline.js';
import type { Piece, TemplateJob, TemplateKind } from './template.js';
import { found, LARGEST, USUAL_LEAVES, wheelConvention, wheelOf } from './wheel.js';

export const wheelCheck: TemplateKind = {
  name: 'wheel-check',
  title: 'Wheel check',
  line: 'blank, pitch and root circles, every tooth, and a ring of degrees, to lay the cut wheel on',
  needs: { words: 'a course with a wheel to cut', in: (_, jobs) => jobs.some(isDrawn) },
  make: (desk, _, jobs) => ({
    conventions: [
      ...new Set(jobs.map(wheelConvention)),
      `Teeth half a pitch thick, faces by the pinion’s own rolling circle, of ${USUAL_LEAVES} leaves where the course names none. A cut wheel is a little thinner on the pitch circle.`,
      'Diameters, not radii. Degrees run with the clock from the top.',
    ],
    cautions: ['filing'],
    pieces: jobs.filter(isDrawn).map((job) => pieceOf(desk, job)),
  }),
};

/** A wheel whose pinion could drive it, with a count the drawing has. */
const isDrawn = ({ teeth, leaves = USUAL_LEAVES, module }: TemplateJob): boolean =>
  teeth >= 6 &&
  teeth <= 400 &&
  leaves <= teeth &&
  module >= 0.05 &&
  module <= 5 &&
  module * (teeth + 3) <= LARGEST;

/** The round-bottom form has one. */
const rootOf = (form: WheelForm): 'flat' | 'round' => (form === '3.00' ? 'round' : 'flat');

function pieceOf(desk: Desk, job: TemplateJob): Piece {
  const { teeth, module, leaves = USUAL_LEAVES, hole, depthForm } = job;
  const wheel = wheelOf(desk, job);
  const [tips, root] = [found(wheel, 'outsideDiameter'), found(wheel, 'rootDiameter')];
  if (hole !== undefined && hole >= root)
    throw new InputError('hole', hole, `less than the root diameter, ${Number(root.toFixed(2))} mm`);
  const quarter = (share: number) => String((teeth * share) / 4);
  return {
    part: job.name,
    drawings: [
      {
        figure: 'wheel-check',
        given: {
          teeth,
          leaves,
          module,
          outsideDiameter: tips,
          rootDiameter: root,
          root: rootOf(depthForm),
          ...(hole === undefined ? {} : { hole }),
        },
      },
    ],
    over: { words: 'the diameter over the tips', length: tips },
    outline: {
      name: job.name,
      cut: [
        ...(hole === undefined ? [] : [circle(hole)]),
        turnedPath(
          wheelOutline({
            teeth,
            leaves,
            module,
            addendum: found(wheel, 'addendum') / module,
            dedendum: wheelForms[depthForm].dedendum,
            root: rootOf(depthForm),
          }),
          Math.PI / 2,
        ),
      ],
      mark: [
        circle(found(wheel, 'pitchDiameter')),
        ...[0, 90, 180, 270].map((at) => spoke(root / 2 - Math.min(4, root / 8), root / 2, at)),
      ],
    },
    tables: [
      {
        title: `${counted(teeth, 'tooth', 'teeth')}, module ${module}`,
        columns: [words('What'), figures('Size', desk.lengths)],
        rows: [
          { cells: ['Blank, over the tips', wheel.length('outsideDiameter')] },
          { cells: ['Pitch diameter', wheel.length('pitchDiameter')] },
          { cells: ['Root diameter', wheel.length('rootDiameter')] },
          { cells: ['Depth of cut', wheel.length('depthOfCut')] },
          { cells: ['Tooth on the pitch circle', wheel.length('toothThickness')] },
        ],
      },
    ],
    notes: [
      'Lay the wheel on, a tooth under the mark at the top. Look straight down on it, with a lens.',
      'The tips should just cover the outer circle, all the way round. More on one side than on the other: the hole is off the middle.',
      `A quarter of the way round, at 90°, the count is ${quarter(1)}, at 180° ${quarter(2)}, at 270° ${quarter(3)}. A count that has slipped shows where it went wrong.`,
      `From tooth to tooth is ${wheel.angle('anglePerTooth').text}.`,
    ],
  };
}
