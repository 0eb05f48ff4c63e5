import type { Kit } from '../../kit/schema.js';
import { counted } from '../../units/words.js';
import type { Desk } from '../desk.js';
import { aHead } from '../dividing/heads.js';
import type { Figure } from '../sheet.js';
import { type Card, type CardKind, type CutJob, ticks, told, words } from './card.js';
import { type Crank, crankFor, movePrinted } from './crank.js';

/** More spaces than these are too close together on a card to be counted in a drawing. */
const DRAWN = 12;
/** For a strip that stands for any move. */
const ANY = 5;

export const sectorArms: CardKind = {
  name: 'sector-arms',
  title: 'Sector arms',
  line: 'spaces, not holes: the arms for each job on the first head, and three checks before a cut',
  needs: aHead,
  conventions: [
    'Spaces are counted from the hole that the pin stands in. The arms hold one hole more than the spaces, the pin’s own among them.',
    'Of several circles that serve, the card takes the first on which one space too many or too few shows at the last tooth.',
  ],
  make: (desk, kit, jobs) => {
    const cards = jobs.flatMap((job) => cardFor(job, kit, desk));
    return cards.length > 0 ? cards : [anyCard()];
  },
};

/** Nothing for a count that the plates have no circle for, or that takes whole turns. */
function cardFor({ name, teeth }: CutJob, kit: Kit, desk: Desk): Card[] {
  const crank = crankFor(teeth, kit, desk);
  const move = crank?.move;
  if (!crank || !move || move.holes === 0) return [];
  const between = desk.work('dividing.sectorArms', { holes: move.holes }).number('holesBetween', 0);
  const turns = crank.worked.figure('turns', (whole) =>
    Number(whole) === 0 ? 'no whole turn' : counted(Number(whole), 'whole turn'),
  );
  return [
    {
      title: 'Sector arms',
      about: `${name}, ${teeth} teeth; ${crank.head}`,
      picture: strip(move.holes <= DRAWN ? move.holes : ANY),
      numbers: [
        { label: 'Move, each tooth', value: told`${movePrinted(crank, move)}`, note: told`${turns}` },
        { label: 'Holes inside the arms', value: told`${between}`, note: told`the pin’s own counts` },
      ],
      passages: [checks(teeth, crank, desk)],
    },
  ];
}

/** For a class without a job. */
const anyCard = (): Card => ({
  title: 'Sector arms',
  picture: strip(ANY),
  passages: [
    words(
      'Rule',
      told`The hole the pin stands in is nought. So the arms hold one hole more than the spaces.`,
    ),
    ticks(
      'Before the first cut',
      told`Count the spaces aloud, from the pin. Then count the holes inside the arms: one more.`,
      told`Scratch round once. Count the scratches: as many as the teeth that you want.`,
      told`The next move falls on the first scratch.`,
    ),
  ],
});

const strip = (spaces: number) => ({ figure: 'spaces-not-holes', given: { spaces }, wide: true }) as const;

/** Spaces, a trip round the plate, and the whole way round the wheel. */
function checks(teeth: number, { ratio, move }: Crank, desk: Desk) {
  const { holes = 0, circle = 1 } = move ?? {};
  const tally = desk.work('dividing.tally', { divisions: teeth, ratio, circles: [circle] });
  const row = (at: number, of: (row: TallyRow) => string): Figure =>
    tally.figure('rows', (rows) => of((rows as readonly TallyRow[])[at] as TallyRow));
  // The first move that brings the pin home.
  const rows = tally.found.rows as readonly TallyRow[];
  const home = rows.findIndex((one, at) => at > 0 && one.holes === 0);
  const turned = row(home, ({ turns }) => counted(turns, 'turn'));
  const all = row(teeth, ({ turns }) => String(turns));
  return ticks(
    'Before the first cut',
    told`Count aloud from the pin: nought, 1, 2 … ${String(holes)}.`,
    told`After ${counted(home, 'move')} the pin is in its first hole again, ${turned} on.`,
    told`Scratch round: ${String(teeth)} scratches in ${all} turns, the last on the first.`,
  );
}

interface TallyRow {
  readonly turns: number;
  readonly holes: number;
}
