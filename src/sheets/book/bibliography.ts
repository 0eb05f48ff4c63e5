import { type SourceKey, sources } from '../../handbook/sources.js';
import type { CheckLine, Problem } from '../../problems/problem.js';
import { render } from '../templates.js';
import { BACK } from './back.js';
import { type LessonLink, linkTo } from './lesson-links.js';
import type { BookLesson, CourseBook } from './model.js';

/** A work, where in it, and the lessons whose numbers it proves. */
export interface Cited {
  readonly key: SourceKey;
  readonly work: string;
  /** Pages, tables and clauses, each once. */
  readonly at: string;
  readonly lessons: readonly LessonLink[];
}

/** What anyone can work out again, and what nobody has found in print. */
const NO_WORK: ReadonlySet<SourceKey> = new Set(['derived', 'practice']);
const FROM_MEMORY = /from memory\)?$/;

/** The works that the numbers of these lessons rest on; those that nobody has opened, and what rests on none, apart. */
export function bibliographyHtml({ lessons }: CourseBook): string {
  const cited = citedIn(lessons);
  const works = cited.filter(({ key }) => !NO_WORK.has(key));
  const of = (wanted: SourceKey) => cited.find(({ key }) => key === wanted);
  return render('book-sources', {
    ...BACK.sources,
    read: works.filter(({ work }) => !FROM_MEMORY.test(work)),
    remembered: works.filter(({ work }) => FROM_MEMORY.test(work)),
    practice: of('practice'),
    derived: of('derived'),
  });
}

/** Every work that a printed number was checked against, in the order of the alphabet. */
export function citedIn(lessons: readonly BookLesson[]): Cited[] {
  const found = new Map<SourceKey, { readonly at: Set<string>; readonly lessons: Map<string, LessonLink> }>();
  for (const { lesson, problems } of lessons) {
    const checks = [
      ...[...lesson.workings.values()].flatMap((one) => one.checks),
      ...problems.flatMap(checksOf),
    ];
    for (const source of [...checks.map((check) => check.source), ...lesson.sources]) {
      const key = keyOf(source);
      if (!key) continue; // what is put back into the question rests on no work
      const one = found.get(key) ?? { at: new Set(), lessons: new Map() };
      const at = source.slice(sources[key].length + 2);
      if (at !== '') one.at.add(at);
      const link = linkTo(lesson);
      one.lessons.set(link.anchor, link);
      found.set(key, one);
    }
  }
  return [...found]
    .map(([key, { at, lessons: links }]) => ({
      key,
      work: sources[key],
      at: [...at].join('; '),
      lessons: [...links.values()],
    }))
    .sort((a, b) => a.work.localeCompare(b.work, 'en-GB'));
}

const KEYS = Object.keys(sources) as SourceKey[];

/** The work that a source names: a citation is `work; place in it`, and a lesson's own list may cut a work short. */
function keyOf(source: string): SourceKey | undefined {
  return source === ''
    ? undefined
    : (KEYS.find((key) => source === sources[key] || source.startsWith(`${sources[key]}; `)) ??
        KEYS.find((key) => sources[key].startsWith(source)));
}

const checksOf = ({ parts, example }: Problem): readonly CheckLine[] => [
  ...parts.flatMap(({ checks }) => checks),
  ...(example ? checksOf(example) : []),
];
