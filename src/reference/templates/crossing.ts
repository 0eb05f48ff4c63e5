import { InputError } from '../../diagnostics/errors.js';
import { turnedPath } from '../../geometry/curves/path.js';
import { counted } from '../../units/words.js';
import { Desk } from '../desk.js';
import { figures, words } from '../sheet.js';
import { type Crossed, crossedOut } from './crossed.js';
import { circle } from './outline.js';
import type { Piece, TemplateJob, TemplateKind } from './template.js';
import { found, wheelConvention } from './wheel.js';

/** More copies than this are not printed at once. */
const MOST_COPIES = 4;

export const crossing: TemplateKind = {
  name: 'crossing',
  title: 'Crossing out',
  line: 'hub, rim and arms with the waste hatched, to glue on and saw; one for each wheel of the course',
  needs: {
    words: 'a course with a wheel large enough to be crossed out',
    in: (_, jobs) => jobs.some(isCrossed),
  },
  make: (desk, _, jobs) => {
    const worked = jobs.map((job) => ({ job, crossed: crossedOut(desk, job) }));
    for (const { job, crossed } of worked)
      if ('closed' in crossed && job.crossing !== undefined)
        throw new InputError('crossing', job.name, `arms that leave windows: ${crossed.closed}`);
    return {
      conventions: [
        'The middle of each line is the size. Saw on the hatched side, and file to the line.',
        ...new Set(jobs.map(wheelConvention)),
        'By the rule (common practice, no source): the rim is as wide below the teeth as they are deep. Arms are as wide as that at the rim, and half as wide again at the hub. The hub is 3½ times the arbor, or a third of the rim’s inside where the arbor is not told.',
        ...worked.flatMap(({ job, crossed }) =>
          'closed' in crossed ? [`${job.name} is not here: ${crossed.closed}.`] : [],
        ),
      ],
      cautions: ['crossing-out', 'drilling-plates', 'filing'],
      pieces: worked.flatMap(({ job, crossed }) => ('closed' in crossed ? [] : piecesOf(desk, job, crossed))),
    };
  },
};

/** Whether a job asks for a crossing, or its wheel takes one; what cannot be is told when it is made. */
function isCrossed(job: TemplateJob): boolean {
  try {
    return job.crossing !== undefined || !('closed' in crossedOut(new Desk('mm'), job));
  } catch (error) {
    if (error instanceof InputError) return true;
    throw error;
  }
}

function piecesOf(desk: Desk, job: TemplateJob, crossed: Crossed): Piece[] {
  const { wheel, layout, sizes, given, windows, arms } = crossed;
  const { hole } = job;
  const over = { words: 'the diameter over the tips', length: found(wheel, 'outsideDiameter') };
  const drawing = (sizesToo: 'yes' | 'no') => ({
    figure: 'crossing-template',
    given: {
      ...given,
      outsideDiameter: over.length,
      rootDiameter: found(wheel, 'rootDiameter'),
      ...(hole === undefined ? {} : { hole }),
      sizes: sizesToo,
    },
  });
  const outline = {
    name: job.name,
    cut: [
      ...(hole === undefined ? [] : [circle(hole)]),
      ...windows.map((window) => turnedPath(window, Math.PI / 2)),
      circle(over.length),
    ],
    mark: [circle(found(wheel, 'rootDiameter'))],
  };
  const percent = layout.number('massRemovedPercent', 0).text;
  return [
    {
      part: `${job.name}: the sizes`,
      drawings: [drawing('yes')],
      wholeOnly: true,
      over,
      outline,
      tables: [
        {
          title: `${counted(job.teeth, 'tooth', 'teeth')}, ${counted(arms, 'arm')}`,
          note: `The windows take ${percent} % of the disc.`,
          columns: [words('What'), figures('Size', desk.lengths), words('Told by')],
          rows: [
            { cells: ['Over the tips', wheel.length('outsideDiameter'), 'the sum'] },
            { cells: ['Root diameter', wheel.length('rootDiameter'), 'the sum'] },
            ...sizes.map(({ words: name, cell, named }) => ({
              cells: [name, cell, named ? 'the course' : 'the rule'],
            })),
            { cells: ['Chord from arm to arm', layout.length('chord'), 'the sum'] },
            ...(hole === undefined ? [] : [{ cells: ['Hole', wheel.lengthOf(hole), 'the course'] }]),
          ],
        },
      ],
      notes: [],
    },
    {
      part: `${job.name}: to glue on`,
      drawings: [drawing('no')],
      copies: Math.min(MOST_COPIES, job.blanks),
      over,
      tables: [],
      notes: [
        'Measure both bars and write down what they say. Only then cut the paper.',
        'Prick the centre through the cross. Glue the paper on with the hole under it, and let it dry flat.',
        'Drill the small circle in each window, on wood, and thread the blade through.',
      ],
    },
  ];
}
