import { writeFileSync } from 'node:fs';
import type { Kind } from '../../src/pack/kinds.js';
import { type Document, type Order, planOf } from '../../src/pack/plan.js';

/** Names that a real list may hold, and a few that nobody should have to cope with: thirty of them. */
export const AWKWARD: readonly string[] = [
  'Ada Brown',
  'Zoë Müller-Żółć',
  'Séan O’Neill',
  "D'Arcy O'Brien",
  'Brown, Ada',
  'Robert "Bob" Hill',
  '=1+1',
  '+44 20',
  '-2',
  '@home',
  'Иван Петров',
  'Αλέξης Παπαδόπουλος',
  'Nguyễn Thị Hoà',
  'John Smith',
  'John Smith',
  'john smith',
  'Maximiliana Wilhelmina Constantia Featherstonehaugh-Cholmondeley-Marjoribanks III',
  '../../etc/passwd',
  'CON',
  'علی‌زاده، مریم',
  '...',
  'A/B\\C:D*E?F',
  '<b>Bold</b> & Co.',
  '{{name}}',
  '$(reboot)',
  'מרדכי (מוטי) בן־גוריון',
  'שרה כהן',
  '½',
  'Ångström Ærø Þór',
  'فاطمة الزهراء',
].map((name) => [...name].slice(0, 80).join(''));

const KIT = 'lessons/kits/harrow-lane.yaml';

/** An order for a few lessons. */
export function orderOf(lessons: readonly string[], only: readonly Kind[], more: Partial<Order> = {}): Order {
  return {
    course: {
      name: 'evening',
      title: 'The Larkfield timepiece',
      club: 'Harrow Lane Model Engineers',
      lessons: lessons.map((name) => `lessons/${name}/lesson.md`),
      jobs: [],
    },
    kit: KIT,
    paper: 'a4',
    print: 'plain',
    only: new Set(only),
    ...more,
  };
}

export function documentsOf(order: Order): readonly Document[] {
  return planOf(order).documents;
}

/** What a document's page is. */
export function htmlOf(document: Document | undefined): string {
  if (!document || !('html' in document)) throw new Error('this is no page');
  return document.html();
}

export function dataOf(document: Document | undefined): string {
  if (!document || !('data' in document)) throw new Error('this is no file of data');
  return String(document.data());
}

/** A row of a list, quoted where it has to be. */
export function listRow(cells: readonly string[]): string {
  return cells.map((cell) => (/[",]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell)).join(',');
}

/** Writes a class: every third in large print, every fourth in inches, seats from the back of the room. */
export function writeClass(file: string, names: readonly string[]): void {
  const rows = names.map((name, place) => [
    place % 4 === 3 ? 'inches' : '',
    String(names.length - place),
    name,
    place % 3 === 2 ? 'Large print' : '',
  ]);
  writeFileSync(file, `${[['Units', 'Seat', 'Full name', 'Print size'], ...rows].map(listRow).join('\n')}\n`);
}
