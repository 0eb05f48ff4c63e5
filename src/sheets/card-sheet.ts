import { InputError } from '../diagnostics/errors.js';
import { drawFigure, type Figure, type FigureStyle } from '../figures/index.js';
import { cautions } from '../lesson/cautions.js';
import { type Card, type CardNumber, type Passage, type Picture, textOf } from '../reference/cards/card.js';
import { type CardLayout, cardLayoutOf } from './card-layout.js';
import { shortened } from './css-string.js';
import { cutMarks, SHORT_OF_PAGE } from './cut-marks.js';
import { demandGlyphs } from './glyphs.js';
import { lettering } from './lettering.js';
import type { SheetHead, SheetStyle } from './model.js';
import { documentHtml } from './page.js';
import { render } from './templates.js';

/** A family of cards, and what it says of itself. */
export interface CardFamily {
  readonly head: SheetHead;
  readonly title: string;
  readonly cards: readonly Card[];
  readonly conventions: readonly string[];
  readonly sources: readonly string[];
  /** Of its making, as it is to be read. */
  readonly date: string;
}

/**
 * Lettering of the pictures, mm, and the room for them beside the words, at need, and across a
 * card; the big numbers stand under one that is so low.
 */
const PICTURES = {
  plain: { labelSize: 4.2, beside: [62, 76], wide: [133], low: 36 },
  large: { labelSize: 6, beside: [88, 108], wide: [189], low: 51 },
} as const;

/** Room for a line across an A6 card, and the sizes of its letters, mm; on A5 all are larger by as much. */
const ROOM = 132;
const SIZES = { about: 4.5, foot: 3.5 } as const;

/**
 * Cards to be cut out and laminated, several to a sheet with cut marks; and a sheet about them all.
 *
 * @throws {InputError} for a character that cannot be printed, or a picture with no room
 */
export function cardSheetHtml(family: CardFamily, style: SheetStyle): string {
  demandGlyphs(family);
  const { head, title, cards, conventions, sources, date } = family;
  const layout = cardLayoutOf(style);
  const each = layout.places.length;
  // Few cards fill their sheet with copies.
  const sets = Math.max(1, Math.floor(each / cards.length));
  const views = Array.from({ length: sets }, () => cards)
    .flat()
    .map((card, at) => ({
      ...cardView(card, style),
      place: String((at % each) + 1),
      which: `${(at % cards.length) + 1} of ${cards.length}`,
      foot: shortened(`${title} · ${head.kit} · ${date}`, ROOM, SIZES.foot),
    }));
  const sheets = Array.from({ length: Math.ceil(views.length / each) }, (_, at) => ({
    cards: views.slice(at * each, (at + 1) * each),
  }));
  return documentHtml(
    {
      kind: 'cards',
      title: `${title}: ${head.kit}`,
      style,
      body: render('card-sheet', {
        title,
        sheets,
        marks: cutMarks(layout),
        size: `${layout.card.width}\u00A0mm by ${layout.card.height}\u00A0mm (${layout.card.name})`,
        kit: head.kit,
        club: head.club,
        date,
        conventions,
        sources,
      }),
    },
    layoutCss(layout),
  );
}

/** Paper and places. */
function layoutCss({ paper, sheet, card, places }: CardLayout): string {
  const place = ({ left, top, turned }: CardLayout['places'][number], at: number) => {
    // Turned about its own corner, a card lies to the left of it until it is moved along.
    const how = turned ? ` transform: translateX(${card.height}mm) rotate(90deg);` : '';
    return `.place-${at + 1} { left: ${left}mm; top: ${top}mm;${how} }`;
  };
  return [
    `@page { size: ${paper}; margin: 0; }`,
    `body { width: ${sheet.width}mm; }`,
    `.card-sheet { height: ${sheet.height - SHORT_OF_PAGE}mm; }`,
    `.bench-card { width: ${card.width}mm; height: ${card.height}mm; }`,
    ...places.map(place),
  ].join('\n');
}

function cardView(card: Card, style: SheetStyle) {
  const { title, about = '', picture, numbers = [], passages = [], table, boxes, caution } = card;
  const drawn = picture ? pictureView(picture, style) : undefined;
  return {
    title,
    about: shortened(about, ROOM, SIZES.about),
    loud: card.loud === true,
    shape: boxes ? 'beside' : drawn ? (picture?.wide ? 'under' : 'beside') : 'plain',
    picture: drawn,
    under: drawn?.low === true,
    numbers: numbers.map(numberView),
    passages: passages.map(passageView),
    table: table && {
      columns: table.columns,
      rows: table.rows.map(({ cells }) =>
        cells.map((cell, at) => ({
          text: typeof cell === 'string' ? cell : cell.text,
          kind: table.columns[at]?.kind,
          head: at === 0,
        })),
      ),
    },
    boxes: boxes && {
      rows: boxes.map(({ count, boxes: row }) => ({ count, before: row.slice(0, 5), after: row.slice(5) })),
    },
    caution: caution ? cautions[caution] : '',
  };
}

function pictureView(
  { figure, given, caption = '', wide, low: mustBeLow }: Picture,
  { print, units }: SheetStyle,
) {
  const { labelSize, beside, wide: across, low } = PICTURES[print];
  const rooms = (wide ? across : beside).map((maxWidth) => ({ labelSize, units, maxWidth }));
  const drawn = inTheLeast(rooms, (style) => drawFigure(figure, { ...given }, style));
  // With a line of room to spare for the note under the number.
  if (!drawn || (mustBeLow && drawn.height > 0.9 * low)) return undefined;
  return { svg: drawn.svg, caption, low: drawn.height <= low };
}

/** The narrowest room that a picture can be drawn in; a card says all in words too, and does without one too large. */
function inTheLeast(rooms: readonly FigureStyle[], draw: (style: FigureStyle) => Figure): Figure | undefined {
  for (const room of rooms)
    try {
      return draw(room);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
    }
  return undefined;
}

function numberView({ label, value, note }: CardNumber) {
  return { label, ...lettering(textOf(value)), note: note ? textOf(note) : '' };
}

function passageView({ head = '', kind, lines }: Passage) {
  return {
    head,
    steps: kind === 'steps',
    ticks: kind === 'ticks',
    lines: lines.map(textOf),
  };
}
