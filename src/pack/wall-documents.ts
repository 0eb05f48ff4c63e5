import { CommandError } from '../diagnostics/errors.js';
import { sheetCsv } from '../exchange/sheet-csv.js';
import { Desk } from '../reference/desk.js';
import { referenceSheets } from '../reference/index.js';
import type { SheetKind } from '../reference/sheet.js';
import { referenceSheetHtml } from '../sheets/reference-sheet.js';
import { madeByName } from './by-name.js';
import type { Document } from './plan.js';
import { dayOf, type Workshop } from './workshop.js';

/**
 * Sheets for the wall, each with its figures for a spreadsheet: those that are named, or all that the kit has the
 * equipment for.
 *
 * @throws {CommandError} a sheet that is named, and a kit without what it needs
 */
export function wallDocuments(names: readonly string[] | undefined, workshop: Workshop): Document[] {
  const { kit } = workshop;
  return madeByName(
    referenceSheets,
    names,
    (kind) => ((kind.needs?.in(kit) ?? true) ? documentsOf(kind, workshop) : []),
    ({ name, needs }) =>
      new CommandError(`the sheet ${name} needs ${needs?.words}, and ${kit.kit} has none`, [
        'Add it to the kit, or name another kit with --kit.',
      ]),
  );
}

function documentsOf(kind: SheetKind, { kit, head, style, jobs, date }: Workshop): Document[] {
  const desk = new Desk(style.units);
  const sheet = kind.make(desk, kit, jobs);
  const { sources } = desk;
  const { name, title } = kind;
  return [
    {
      kind: 'sheets',
      name: `sheets/${name}.pdf`,
      html: () => referenceSheetHtml({ head, title, sheet, sources, date: dayOf(date) }, style),
    },
    { kind: 'sheets', name: `sheets/${name}.csv`, data: () => sheetCsv(sheet) },
  ];
}
