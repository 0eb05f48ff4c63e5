import { asText, csv } from '../exchange/csv.js';
import type { ClassSet } from '../sheets/class-model.js';
import { markGroups, possibleIn } from '../sheets/mark-columns.js';

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
  return csv(rows);
}
