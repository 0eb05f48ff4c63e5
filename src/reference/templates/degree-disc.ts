import { strokes } from '../../figures/drafting/strokes.js';
import { formatNumber } from '../../units/format.js';
import { MM_PER_INCH } from '../../units/length.js';
import type { Desk } from '../desk.js';
import { figures, words } from '../sheet.js';
import { circle, spoke } from './outline.js';
import type { Piece, TemplateKind } from './template.js';

/** Disc and hole, mm. */
const SIZES = {
  mm: { diameter: 150, hole: 10 },
  inch: { diameter: 6 * MM_PER_INCH, hole: 0.5 * MM_PER_INCH },
} as const;

/** Width of the finest lines, mm. */
const LINE = strokes.dimension.width;

/** Twelve parts of the vernier over eleven degrees. */
const PARTS = 12;

export const degreeDisc: TemplateKind = {
  name: 'degree-disc',
  title: 'Degree disc and vernier',
  line: 'a disc of single degrees to glue behind the work, and a vernier that reads five minutes',
  make: (desk) => ({
    conventions: [
      'Degrees count both ways. Keep to one of them for the whole job.',
      'It is good for setting out and for checking, not for cutting teeth: at this size a line on paper is a good part of a degree wide.',
    ],
    cautions: ['isolate-first'],
    pieces: [disc(desk), vernier(desk)],
  }),
};

function disc(desk: Desk): Piece {
  const { diameter, hole } = SIZES[desk.units];
  const degree = desk.work('circle.chord', { diameter, divisions: 360 });
  const out = desk.work('dividing.plateError', {
    holeError: LINE,
    plateRadius: diameter / 2,
    wheelRadius: diameter / 2,
  });
  const minutes = out.figure('angleArcSeconds', (seconds) => formatNumber(Number(seconds) / 60, 0));
  return {
    part: 'The disc',
    drawings: [{ figure: 'degree-disc', given: { diameter, hole } }],
    over: { words: 'the diameter of the disc', length: diameter },
    outline: {
      name: 'The disc',
      cut: [circle(hole), circle(diameter)],
      mark: Array.from({ length: 360 }, (_, at) =>
        spoke(diameter / 2 - (at % 10 === 0 ? 6 : at % 5 === 0 ? 4.5 : 3), diameter / 2, at),
      ),
    },
    tables: [
      {
        columns: [words('What'), figures('Size', desk.lengths)],
        rows: [
          { cells: ['Disc, diameter', degree.lengthOf(diameter)] },
          { cells: ['Hole, diameter', degree.lengthOf(hole)] },
          { cells: ['From degree to degree at the edge', degree.length('arc')] },
        ],
      },
    ],
    notes: [
      `The finest lines are ${LINE} mm wide. At the edge that is ${minutes.text}′ of arc.`,
      'Glue it to a flat disc, and true its edge on its own hole: paper that sits to one side reads wrong by twice as much at opposite marks.',
    ],
  };
}

function vernier(desk: Desk): Piece {
  const { diameter } = SIZES[desk.units];
  const span = desk.work('circle.chord', { diameter, angle: PARTS - 1 });
  return {
    part: 'The vernier',
    drawings: [{ figure: 'degree-vernier', given: { diameter } }],
    over: { words: 'its scale from end to end', length: Number(span.found.chord) },
    outline: {
      name: 'The vernier',
      cut: [],
      mark: Array.from({ length: PARTS + 1 }, (_, at) =>
        spoke(diameter / 2, diameter / 2 + (at % 3 === 0 ? 5 : 3), (at - PARTS / 2) * ((PARTS - 1) / PARTS)),
      ),
    },
    tables: [
      {
        columns: [words('What'), figures('Size', desk.lengths)],
        rows: [{ cells: ['From 0 to 60 along its edge, straight across', span.length('chord')] }],
      },
    ],
    notes: [
      'Its inner edge lies against the disc. Twelve parts cover eleven degrees, so each is five minutes short of a degree.',
      'Read whole degrees at its 0. Then look along it for the line that meets one of the disc: its number is the minutes to add.',
    ],
  };
}
