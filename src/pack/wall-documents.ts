import { CommandError } from '../diagnostics/errors.js';
import { sheetCsv } from '../exchange/sheet-csv.js';
import type { Kit } from '../kit/schema.js';
import { Desk } from '../reference/desk.js';
import { referenceSheets } from '../reference/index.js';
import type { SheetKind, WheelJob } from '../reference/sheet.js';
import type { SheetHead, SheetStyle } from '../sheets/model.js';
import { referenceSheetHtml } from '../sheets/reference-sheet.js';
import type { Document } from './plan.js';

interface Wall {
  readonly kit: Kit;
  readonly head: SheetHead;
  readonly style: SheetStyle;
  readonly jobs: readonly WheelJob[];
  /** Of the making. */
  readonly date: Date;
}

/**
 * Sheets for the wall, each with its figures for a spreadsheet: those that are named, or all that the kit has the
 * equipment for.
 *
 * @throws {CommandError} a sheet that is named, and a kit without what it needs
 */
export function wallDocuments(names: readonly string[] | undefined, wall: Wall): Document[] {
  const wanted =
    names === undefined ? referenceSheets : referenceSheets.filter(({ name }) => names.includes(name));
  return wanted.flatMap((kind) => {
    if (kind.needs?.in(wall.kit) ?? true) return documentsOf(kind, wall);
    if (names === undefined) return [];
    throw new CommandError(
      `the sheet ${kind.name} needs ${kind.needs?.words}, and ${wall.kit.kit} has none`,
      ['Add it to the kit, or name another kit with --kit.'],
    );
  });
}

function documentsOf(kind: SheetKind, { kit, head, style, jobs, date }: Wall): Document[] {
  const desk = new Desk(style.units);
  const sheet = kind.make(desk, kit, jobs);
  const { sources } = desk;
  const { name, title } = kind;
  return [
    {
      kind: 'sheets',
      name: `sheets/${name}.pdf`,
      html: () => referenceSheetHtml({ head, title, sheet, sources, date: DAY.format(date) }, style),
    },
    { kind: 'sheets', name: `sheets/${name}.csv`, data: () => sheetCsv(sheet) },
  ];
}

/** The same day wherever it is made. */
export const DAY = new Intl.DateTimeFormat('en-GB', { dateStyle: 'long', timeZone: 'UTC' });
