import { readdirSync } from 'node:fs';
import { basename, dirname, extname, resolve } from 'node:path';
import { CommandError } from '../diagnostics/errors.js';
import { nearest } from '../diagnostics/suggest.js';
import { isPlainName } from '../reading/plain-name.js';
import { readCourse } from './course.js';
import { fileName } from './file-name.js';
import type { Kind } from './kinds.js';
import { namedKinds } from './named.js';
import type { CourseToMake } from './plan.js';
import { isFile, lessonFile, lessonHint, OWN_LESSONS } from './shelf.js';

/** What was asked for, and the kit that goes with it unless another is named. */
export interface Choice {
  readonly course: CourseToMake;
  readonly kit: string;
  /** What the words themselves say is to be made. */
  readonly only?: ReadonlySet<Kind>;
}

/** What is made when nothing is named. */
export const SAMPLE_COURSE = resolve(OWN_LESSONS, 'courses/larkfield.yaml');
/** For lessons that are named by themselves. */
export const SAMPLE_KIT = resolve(OWN_LESSONS, 'kits/harrow-lane.yaml');

/**
 * What the words after `make` mean: nothing for the sample course, the file of a course, or lessons by their
 * folders or names.
 *
 * @throws {CommandError} something that is neither; {ContentError} a course with faults
 */
export function choose(words: readonly string[]): Choice {
  if (words.some(namedIn)) return sheetsNamed(words);
  const [first = SAMPLE_COURSE, ...more] = words;
  const courseFile = courseNamed(first);
  if (courseFile) {
    if (more.length > 0)
      throw new CommandError('a course is made by itself', ['Name one course, or lessons only.']);
    const course = readCourse(courseFile);
    return {
      course: { ...course, name: plainName(basename(courseFile, extname(courseFile))) },
      kit: course.kit,
    };
  }
  const lessons = words.map(lessonNamed);
  const [one = ''] = lessons;
  const name = lessons.length === 1 ? plainName(basename(dirname(one))) : 'lessons';
  return {
    course: { name, title: 'Lessons', club: '', lessons: [...new Set(lessons)], jobs: [] },
    kit: SAMPLE_KIT,
  };
}

/** The name of a folder that stays where it is put: `...yaml` would lead out of it. */
const plainName = (name: string): string => (isPlainName(name) ? name : `pack-${fileName({ name }, 1)}`);

const namedIn = (word: string) => namedKinds.find(({ prefix }) => word.startsWith(prefix));

/** Sheets, templates and cards by their names. */
function sheetsNamed(words: readonly string[]): Choice {
  const known = namedKinds.flatMap(({ prefix, all }) => all.map(({ name }) => prefix + name));
  for (const word of words) {
    if (known.includes(word)) continue;
    const bare = word.replace(/^\w+:/, '');
    const near = known.find((one) => one.endsWith(`:${bare}`)) ?? nearest(word, known);
    throw new CommandError(`there ${(namedIn(word) ?? namedKinds[0]).none} ${JSON.stringify(word)}`, [
      near ? `Did you mean ${near}?` : 'See benchleaf list sheets.',
    ]);
  }
  const names = (prefix: string): string[] =>
    words.filter((word) => word.startsWith(prefix)).map((word) => word.slice(prefix.length));
  const asked = namedKinds.filter(({ prefix }) => names(prefix).length > 0);
  const { kind, title } = asked[0] ?? namedKinds[0];
  return {
    course: {
      name: kind,
      title,
      club: '',
      lessons: [],
      jobs: readCourse(SAMPLE_COURSE).jobs,
      ...Object.fromEntries(namedKinds.map((one) => [one.kind, names(one.prefix)])),
    },
    kit: SAMPLE_KIT,
    only: new Set(asked.map((one) => one.kind)),
  };
}

/** The file of the course that the words name, whether or not it can be read; none where they name something else. */
export function courseAsked([first = SAMPLE_COURSE, ...more]: readonly string[]): string | undefined {
  return more.length > 0 || namedIn(first) ? undefined : courseNamed(first);
}

/** The file of a course: a path to YAML, or the bare name of one that comes with Benchleaf. */
function courseNamed(word: string): string | undefined {
  if (/\.ya?ml$/i.test(word)) {
    if (isFile(word)) return resolve(word);
    throw new CommandError(`there is no course ${JSON.stringify(word)}`);
  }
  const own = resolve(OWN_LESSONS, 'courses', `${word}.yaml`);
  return /^[\w-]+$/.test(word) && isFile(own) ? own : undefined;
}

const ownNames = () => readdirSync(OWN_LESSONS);
const unnumbered = (name: string) => name.replace(/^\d+-/, '');

/**
 * The file of a lesson: its folder or its file, or the name of one that comes with Benchleaf, with or without its
 * number.
 *
 * @throws {CommandError} when there is none
 */
export function lessonNamed(word: string): string {
  const shelves = [process.cwd(), OWN_LESSONS];
  const found =
    /\.md$/i.test(word) && isFile(word)
      ? resolve(word)
      : (lessonFile(word, shelves) ??
        lessonFile(ownNames().find((name) => unnumbered(name) === word) ?? '', shelves));
  if (found) return found;
  throw new CommandError(`there is no lesson or course ${JSON.stringify(word)}`, [
    lessonHint(word, shelves),
    'See benchleaf list lessons.',
  ]);
}
