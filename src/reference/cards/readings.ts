import type { Kit } from '../../kit/schema.js';
import { type Chance, chanceFrom } from '../../problems/chance.js';
import { type UnitSystem } from '../../units/format.js';
import { MM_PER_INCH } from '../../units/length.js';
import type { Desk, Worked } from '../desk.js';
import { figures, words as heads, type Row } from '../sheet.js';
import { type Card, type CardKind, told, words } from './card.js';

/** Cards of each instrument. */
const EACH = 6;

/** How an instrument is divided: one division in mm, the lines that share it, and how far it is seen to go. */
interface Divided {
  readonly division: number;
  readonly lines: number;
  readonly least: number;
  readonly most: number;
}

interface Instrument {
  readonly name: string;
  readonly figure: string;
  readonly divided: Readonly<Record<UnitSystem, Divided>>;
  readonly read: string;
}

/** As the figures of them are engraved. */
const CALLIPER: Instrument = {
  name: 'Calliper',
  figure: 'vernier',
  divided: {
    mm: { division: 1, lines: 50, least: 3, most: 120 },
    inch: { division: 0.025 * MM_PER_INCH, lines: 25, least: 6, most: 150 },
  },
  read: 'First the main scale, at the vernier’s nought: the last line before it. Then the line of the vernier that is in step.',
};

const MICROMETER: Instrument = {
  name: 'Micrometer',
  figure: 'micrometer',
  divided: {
    mm: { division: 0.5, lines: 50, least: 2, most: 47 },
    inch: { division: 0.025 * MM_PER_INCH, lines: 25, least: 2, most: 37 },
  },
  read: 'First the sleeve: the last line that the thimble has uncovered. Then the line of the thimble at the datum line.',
};

export const readings: CardKind = {
  name: 'readings',
  title: 'Readings',
  line: 'six callipers and six micrometers to be read, drawn as they are engraved, and cards of the answers',
  conventions: [
    'Hand out the pictures and keep the answers. Each workshop has readings of its own.',
    'A line of the vernier is worth 0.02 mm or 0.001 in; a line of the thimble 0.01 mm or 0.001 in.',
  ],
  make: (desk, kit) => [CALLIPER, MICROMETER].flatMap((instrument) => cardsOf(instrument, desk, kit)),
};

function cardsOf(instrument: Instrument, desk: Desk, kit: Kit): Card[] {
  const { name, figure, divided, read } = instrument;
  const chance = chanceFrom(`readings/${kit.kit}/${desk.units}/${name}`);
  const all = drawn(divided[desk.units], chance).map((given) => desk.work('scale.reading', given));
  const pictures = all.map(
    (worked, at): Card => ({
      title: `${name} ${at + 1}`,
      picture: {
        figure,
        given: { reading: Number(worked.found.reading), units: desk.units },
        wide: true,
      },
      passages: [words('Read it', told`${read}`)],
    }),
  );
  return [...pictures, answers(name, all, desk)];
}

/** What is given for each card: no two alike, as many with a half turn of the sleeve as without. */
function drawn({ division, lines, least, most }: Divided, chance: Chance) {
  const room = Math.floor((most - least) / EACH);
  return Array.from({ length: EACH }, (_, at) => {
    const from = least + ((at * 5) % EACH) * room;
    const divisions = from + chance.below(room);
    return {
      divisions: divisions + ((divisions + at) % 2),
      division,
      line: 1 + chance.below(lines - 1),
      lines,
    };
  });
}

function answers(name: string, all: readonly Worked[], desk: Desk): Card {
  // A thousandth of an inch wants three places, and so a hundredth of a millimetre two.
  const rows = all.map(
    (worked, at): Row => ({
      cells: [
        `${name} ${at + 1}`,
        worked.length('mainPart', 2),
        worked.length('linePart', 2),
        worked.length('reading', 2),
      ],
    }),
  );
  return {
    title: `${name}: the answers`,
    table: {
      columns: [
        heads('Card'),
        figures('Main scale', desk.lengths),
        figures(name === 'Calliper' ? 'Vernier' : 'Thimble', desk.lengths),
        figures('Reading', desk.lengths),
      ],
      rows,
    },
    passages: [words('Keep it', told`This card is not handed out.`)],
  };
}
