import { classGridHtml } from '../sheets/class-grid.js';
import type { ClassSet } from '../sheets/class-model.js';
import { markSheetHtml } from '../sheets/mark-sheet.js';
import type { SheetStyle } from '../sheets/model.js';
import { marksCsv } from './class-csv.js';
import type { ClassSheets } from './class-sheets.js';
import type { Document } from './plan.js';

/** What an instructor marks a class with. */
export function classDocuments(
  about: Omit<ClassSet, 'lines'>,
  { lines }: ClassSheets,
  style: SheetStyle,
): Document[] {
  let drawn: ClassSet | undefined;
  const set = (): ClassSet => {
    drawn ??= { ...about, lines: lines() };
    return drawn;
  };
  return [
    { kind: 'grid', name: 'class-grid.pdf', html: () => classGridHtml(set(), style) },
    { kind: 'marks', name: 'mark-sheet.pdf', html: () => markSheetHtml(set(), style) },
    { kind: 'marks', name: 'mark-sheet.csv', data: () => marksCsv(set()) },
  ];
}
