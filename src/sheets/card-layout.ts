import type { SheetStyle } from './model.js';

/** Where a card stands on its sheet, mm; one that is turned stands on its left edge. */
export interface CardPlace {
  readonly left: number;
  readonly top: number;
  readonly turned: boolean;
}

/** How cards of one size share a sheet of paper; lengths mm. */
export interface CardLayout {
  /** As CSS has it. */
  readonly paper: string;
  readonly sheet: { readonly width: number; readonly height: number };
  readonly card: { readonly name: 'A6' | 'A5'; readonly width: number; readonly height: number };
  readonly places: readonly CardPlace[];
}

const A6 = { name: 'A6', width: 148, height: 105 } as const;
const A5 = { name: 'A5', width: 210, height: 148 } as const;
const at = (left: number, top: number, turned = false): CardPlace => ({ left, top, turned });

/**
 * Cards of postcard size, A6; in large print of twice the area, A5. Four of the one and two of the other make a sheet
 * of A4: each has a corner or an end of it, for most printers leave 5 mm of white along the edges of the paper and a
 * mark to cut by would be lost there. So the paper's own edges are the outer sides of the cards, and only the middle
 * is cut; the halved side is half a millimetre longer than A6 and A5, as halved paper is. A sheet of Letter is shorter
 * than two such cards and has less area: three stand on it, one of them turned, or one large one, at its upper edge.
 */
const LAYOUTS: Readonly<Record<SheetStyle['paper'], Readonly<Record<SheetStyle['print'], CardLayout>>>> = {
  a4: {
    plain: {
      paper: '297mm 210mm',
      sheet: { width: 297, height: 210 },
      card: { ...A6, width: 148.5 },
      places: [at(0, 0), at(148.5, 0), at(0, 105), at(148.5, 105)],
    },
    large: {
      paper: '210mm 297mm',
      sheet: { width: 210, height: 297 },
      card: { ...A5, height: 148.5 },
      places: [at(0, 0), at(0, 148.5)],
    },
  },
  letter: {
    plain: {
      paper: '279.4mm 215.9mm',
      sheet: { width: 279.4, height: 215.9 },
      card: A6,
      places: [at(13.2, 0), at(13.2, 105), at(161.2, 0, true)],
    },
    large: {
      paper: '215.9mm 279.4mm',
      sheet: { width: 215.9, height: 279.4 },
      card: A5,
      places: [at(0, 0)],
    },
  },
};

export const cardLayoutOf = ({ paper, print }: Pick<SheetStyle, 'paper' | 'print'>): CardLayout =>
  LAYOUTS[paper][print];

/** The room that a card takes on the sheet, mm. */
export function roomOf({ left, top, turned }: CardPlace, { card }: CardLayout) {
  const [width, height] = turned ? [card.height, card.width] : [card.width, card.height];
  return { left, top, right: left + width, bottom: top + height };
}
