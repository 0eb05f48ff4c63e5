import type { Kit } from '../../kit/schema.js';
import { formatNumber } from '../../units/format.js';
import { MM_PER_INCH } from '../../units/length.js';
import type { Desk } from '../desk.js';
import { figures } from '../sheet.js';
import { circle, spoke } from './outline.js';
import type { Piece, TemplateKind } from './template.js';

/** How a plate is laid out where nobody has said it: common practice, no source. mm */
interface Rule {
  readonly hole: number;
  /** From hole to hole on a circle, at least, straight across. */
  readonly between: number;
  /** From circle to circle, along a radius. */
  readonly apart: number;
  readonly edge: number;
  readonly bore: number;
  /** Diameters are whole numbers of these. */
  readonly step: number;
  /** A hole is taken to be so far out of place. */
  readonly out: number;
}

const RULES: Readonly<Record<'mm' | 'inch', Rule>> = {
  mm: { hole: 3, between: 5, apart: 7, edge: 6, bore: 20, step: 1, out: 0.1 },
  inch: {
    hole: MM_PER_INCH / 8,
    between: 0.2 * MM_PER_INCH,
    apart: 0.25 * MM_PER_INCH,
    edge: 0.25 * MM_PER_INCH,
    bore: 0.75 * MM_PER_INCH,
    step: 0.05 * MM_PER_INCH,
    out: 0.004 * MM_PER_INCH,
  },
};

export const divisionPlate: TemplateKind = {
  name: 'division-plate',
  title: 'Division plates to drill',
  line: 'every hole of the kit’s plates, to be spotted with a punch',
  needs: {
    words: 'a dividing head or a plate for the spindle',
    in: (kit) => platesOf(kit).length > 0,
  },
  make: (desk, kit) => {
    const { hole, between, apart } = RULES[desk.units];
    const mm = (value: number) => lengthIn(desk, value);
    return {
      conventions: [
        `Laid out by rule (common practice, no source): holes of ${mm(hole)}, at least ${mm(between)} from hole to hole, circles ${mm(apart)} apart. Bore and screw holes are for you to suit to your head.`,
        'Paper and punch will do behind a worm, which divides their errors. On the spindle itself they are too rough: let a head or a rotary table place the holes.',
      ],
      cautions: ['drilling-plates'],
      pieces: platesOf(kit).map((plate, at) => pieceOf(desk, plate, at === 0)),
    };
  },
};

interface Plate {
  readonly name: string;
  readonly circles: readonly number[];
  readonly ratio: number;
}

/** Most holes on a circle that is drawn. */
const MOST_HOLES = 360;

/** The plates that have a circle to draw, each from its smallest count. */
function platesOf({ heads, directPlates }: Kit): Plate[] {
  const all = [
    ...heads.flatMap(({ name, ratio, plates }) =>
      plates.map((circles, at) => ({
        name: plates.length === 1 ? name : `${name}, plate ${at + 1}`,
        circles,
        ratio,
      })),
    ),
    ...directPlates.map(({ name, notches }) => ({ name, circles: notches, ratio: 1 })),
  ];
  return all.flatMap((plate) => {
    const circles = plate.circles.filter((holes) => holes <= MOST_HOLES).toSorted((a, b) => a - b);
    return circles.length === 0 ? [] : [{ ...plate, circles }];
  });
}

/** Diameters from the smallest count out: each large enough for its holes, and clear of the one within. */
function diametersFor(circles: readonly number[], { between, apart, bore, step, hole }: Rule): number[] {
  let last = bore;
  return circles.map((holes) => {
    const own = between / Math.sin(Math.PI / holes);
    const least = Math.max(own, last === bore ? bore + 4 * hole : last + 2 * apart);
    last = Math.ceil(least / step - 1e-9) * step;
    return last;
  });
}

/** How it is done is told with the first. */
function pieceOf(desk: Desk, { name, circles, ratio }: Plate, first: boolean): Piece {
  const rule = RULES[desk.units];
  const diameters = diametersFor(circles, rule);
  const plateDiameter = Math.max(...diameters) + rule.hole + 2 * rule.edge;
  const drawing = (sizes: 'yes' | 'no') => ({
    figure: 'plate-pattern',
    given: {
      circles,
      diameters,
      holeDiameter: rule.hole,
      plateDiameter,
      bore: rule.bore,
      sizes,
    },
  });
  const worked = circles.map((holes, at) => {
    const diameter = diameters[at] ?? 0;
    return {
      holes,
      circle: desk.work('holes.circle', { holes, diameter, startAngle: 90 }),
      chord: desk.work('circle.chord', { diameter, divisions: holes }),
      error: desk.work('dividing.plateError', {
        holeError: rule.out,
        plateRadius: diameter / 2,
        ratio,
        wheelRadius: diameter / 2,
      }),
      diameter,
    };
  });
  const part = name.charAt(0).toUpperCase() + name.slice(1);
  return {
    part,
    drawings: [drawing('yes'), drawing('no')],
    over: { words: 'the diameter of the outermost circle', length: Math.max(...diameters) },
    outline: {
      name: part,
      cut: [
        circle(rule.bore),
        ...worked.flatMap(({ circle: { found } }) =>
          (found.holes as readonly { readonly x: number; readonly y: number }[]).map((hole) =>
            circle(rule.hole, hole),
          ),
        ),
        circle(plateDiameter),
      ],
      mark: [spoke(plateDiameter / 2 - rule.edge / 2, plateDiameter / 2, 0)],
    },
    tables: [
      {
        note: `From the outermost circle in. Chord: from hole to hole, straight across. Out by: what a hole ${lengthIn(desk, rule.out)} out of place turns the work wrong, in seconds of arc${ratio === 1 ? ', on the spindle itself' : `, after a worm of ${ratio} : 1`}.`,
        columns: [
          figures('Holes'),
          figures('Circle Ø', desk.lengths),
          figures('Chord', desk.lengths),
          figures('Angle'),
          figures('Out by', '″'),
        ],
        rows: worked.toReversed().map(({ holes, circle: one, chord, error, diameter }) => ({
          cells: [
            String(holes),
            one.lengthOf(diameter),
            chord.length('chord'),
            one.angle('stepAngle'),
            error.number('angleArcSeconds', 0),
          ],
        })),
      },
    ],
    notes: first ? howTo(desk, rule) : [],
  };
}

const howTo = (desk: Desk, rule: Rule): string[] => [
  'Glue the sheet to the blank. Centre the plate by its own cross, and bore it first.',
  'Set a fine punch into each cross under a lens. Tap, look, and only then strike. Spot with a centre drill, and drill.',
  `The small rings are ${lengthIn(desk, rule.hole)} across, as the drill should leave them.`,
  'Step round each circle with dividers before you drill: the last step must come back to the first hole.',
];

function lengthIn(desk: Desk, mm: number): string {
  return desk.units === 'mm'
    ? `${formatNumber(mm, mm < 1 ? 2 : 0)}\u00A0mm`
    : `${formatNumber(mm / MM_PER_INCH, 3)}\u00A0in`;
}
