import { counted } from '../../units/words.js';
import type { SheetStyle } from '../model.js';
import { render } from '../templates.js';
import type { CourseBook } from './model.js';

/** The first page: whose book it is, what is in it, for which equipment its numbers were worked. */
export function titleHtml({ head, variant, lessons }: CourseBook, { units }: SheetStyle): string {
  const numbers = lessons.flatMap(({ lesson }) => lesson.number ?? []);
  const asked = lessons.some(({ problems }) => problems.length > 0);
  return render('book-title', {
    ...head,
    lessons: counted(lessons.length, 'lesson'),
    numbers: numbers.length === lessons.length && lessons.length > 1 ? runsOf(numbers) : '',
    variant: asked ? variant : '',
    units: units === 'inch' ? 'inches' : 'millimetres',
  });
}

/** `6, 7 and 9 to 16` */
export function runsOf(numbers: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const number of [...new Set(numbers)].sort((a, b) => a - b)) {
    const last = runs.at(-1);
    if (last && last[1] === number - 1) last[1] = number;
    else runs.push([number, number]);
  }
  const said = runs.flatMap(([from, to]) => {
    if (to - from > 1) return [`${from} to ${to}`];
    return from === to ? [String(from)] : [String(from), String(to)];
  });
  return said.length < 2 ? said.join('') : `${said.slice(0, -1).join(', ')} and ${said.at(-1)}`;
}
