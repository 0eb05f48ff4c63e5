import type { ClassSet } from '../sheets/class-model.js';
import { markGroups, possibleIn } from '../sheets/mark-columns.js';

/** By this a spreadsheet knows that the file is UTF-8. */
const MARK = '\uFEFF';
/** With one of these in front a cell would be worked out as a formula. */
const FORMULA = /^[\s\u00A0]*[=+\-@＝＋－＠\t\r]/;

/**
 * The mark sheet of a class for a spreadsheet: a line for each learner, a column for each letter of each problem with
 * the marks to be had in its heading, and columns for the totals. Cells for marks are empty.
 */
export function marksCsv({ lessons, lines }: ClassSet): string {
  const learners = lines.filter(({ learner }) => learner !== '');
  const asked = lessons.flatMap((lesson, at) => {
    const groups = markGroups(lines, at, { box: 0 });
    return groups.length === 0 ? [] : [{ name: String(lesson.number ?? at + 1), groups }];
  });
  const marks = asked.flatMap(({ name, groups }) => [
    ...groups.flatMap(({ number, boxes }) =>
      boxes.map(({ letter, possible }) => `${number} ${letter} (${possible})`),
    ),
    `${name} total (${possibleIn(groups)})`,
  ]);
  const all = asked.reduce((sum, { groups }) => sum + possibleIn(groups), 0);
  const rows = [
    ['no.', 'seat', 'name', 'version', 'variant', ...marks, `total (${all})`],
    ...learners.map(({ seat, learner, version, variant }, place) => [
      String(place + 1),
      asText(seat),
      asText(learner),
      version,
      variant,
      ...marks.map(() => ''),
      '',
    ]),
  ];
  return MARK + rows.map((row) => `${row.map(cell).join(',')}\r\n`).join('');
}

/** What looks like a formula gets an apostrophe in front, by which a spreadsheet takes it as it stands. */
function asText(text: string): string {
  return FORMULA.test(text) ? `'${text}` : text;
}

function cell(text: string): string {
  return /[",;\r\n]|^\s|\s$/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
