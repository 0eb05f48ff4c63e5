import type { Kit } from '../../kit/schema.js';
import type { Desk } from '../desk.js';
import { figures, words as inWords, type Row, type Table } from '../sheet.js';
import { type BoxRow, type Card, type CardKind, type CutJob, type Passage, type Told, told } from './card.js';
import { crankFor } from './crank.js';

/** Boxes in a row, and on a card. */
const ROW = 10;
const CARD = 100;
const MARKS = ['¼', '½', '¾', '1'] as const;

export const tally: CardKind = {
  name: 'tally',
  title: 'Tally',
  line: 'a box for every tooth of each job, in tens, with the quarter marks and the test before the last cut',
  conventions: [
    'A row ends with the count so far. A quarter stands in the box of the tooth that ends it; where a count has no whole quarter, in that of the last tooth before it.',
    'Turns and spaces are from the start, on the circle that the card names. Spaces are past the hole that the pin started in.',
  ],
  make: (desk, kit, jobs) => jobs.flatMap((job) => cardsFor(job, kit, desk)),
};

function cardsFor(job: CutJob, kit: Kit, desk: Desk): Card[] {
  const { name, teeth } = job;
  const parts = Math.ceil(teeth / CARD);
  const table = quarterTable(job, kit, desk);
  const circle = crankFor(teeth, kit, desk)?.move?.circle;
  return Array.from({ length: parts }, (_, part) => {
    const [from, to] = [part * CARD + 1, Math.min(teeth, (part + 1) * CARD)];
    return {
      title: parts === 1 ? `Tally: ${teeth} teeth` : `Tally: ${teeth} teeth, ${from} to ${to}`,
      about: circle === undefined ? name : `${name}; circle of ${circle}`,
      boxes: boxesFor(teeth, from, to),
      table,
      passages: [part === parts - 1 ? lastTooth(teeth) : goOn(to)],
      caution: 'indexing',
    };
  });
}

/** The rows of a card, each box with the quarter that ends with it. */
function boxesFor(teeth: number, from: number, to: number): BoxRow[] {
  const rows: BoxRow[] = [];
  for (let start = from; start <= to; start += ROW) {
    const end = Math.min(to, start + ROW - 1);
    const boxes = Array.from(
      { length: end - start + 1 },
      (_, at) => MARKS.find((_mark, quarter) => Math.floor((teeth * (quarter + 1)) / 4) === start + at) ?? '',
    );
    rows.push({ count: end, boxes });
  }
  return rows;
}

const lastTooth = (teeth: number) =>
  boxes(
    told`${String(teeth - 1)} cut, one left: stop the cutter there.`,
    told`What is left looks like the others. If not, ask.`,
  );

const goOn = (to: number) => boxes(told`${String(to)} cut: take the next card.`);

const boxes = (...lines: readonly Told[]): Passage => ({ kind: 'ticks', lines });

interface TallyRow {
  readonly turns: number;
  readonly holes: number;
}

/** Where the crank stands at the quarters that fall on a tooth. */
function quarterTable({ teeth }: CutJob, kit: Kit, desk: Desk): Table {
  const crank = crankFor(teeth, kit, desk);
  const quarters = MARKS.map((mark, at) => ({ mark, tooth: (teeth * (at + 1)) / 4, angle: 90 * (at + 1) }));
  const whole = quarters.filter(({ tooth }) => Number.isInteger(tooth));
  const columns = [inWords('At'), figures('Tooth')];
  if (!crank?.move)
    return {
      columns: [...columns, figures('Angle')],
      rows: whole.map(({ mark, tooth, angle }): Row => ({ cells: [mark, String(tooth), `${angle}°`] })),
    };
  const { circle } = crank.move;
  const worked = desk.work('dividing.tally', { divisions: teeth, ratio: crank.ratio, circles: [circle] });
  const at = (tooth: number, of: (row: TallyRow) => number) =>
    worked.figure('rows', (rows) => String(of((rows as readonly TallyRow[])[tooth] as TallyRow)));
  return {
    columns: [...columns, figures('Turns'), figures('Spaces')],
    rows: whole.map(({ mark, tooth }) => ({
      cells: [mark, String(tooth), at(tooth, ({ turns }) => turns), at(tooth, ({ holes }) => holes)],
    })),
  };
}
