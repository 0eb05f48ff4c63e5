import { ContentError, type Diagnostic } from '../diagnostics/diagnostic.js';
import { openKits } from '../kit/open.js';
import type { Kit } from '../kit/schema.js';
import { problemsOf } from '../lesson/class-set.js';
import type { PreparedLesson } from '../lesson/prepare.js';
import { codeFor } from '../problems/code.js';
import type { Setting } from '../problems/draw.js';
import { readText } from '../reading/text.js';
import { answerKeyHtml } from '../sheets/answer-key.js';
import { handoutHtml } from '../sheets/handout.js';
import type { SheetHead, SheetStyle } from '../sheets/model.js';
import { problemSheetHtml } from '../sheets/problem-sheet.js';
import { lessonNamed, SAMPLE_COURSE, SAMPLE_KIT } from './choose.js';
import { readCourse } from './course.js';
import { type Different, differentProblems, tooFew } from './different.js';
import type { Kind } from './kinds.js';
import { Gathering, openLessons, shown } from './lessons.js';
import { planOf } from './plan.js';
import { isFile } from './shelf.js';

const CARDS: ReadonlySet<Kind> = new Set(['cards']);
/** Variants of each problem that a check draws. */
const VARIANTS = 50;

/** What was checked, and found in order. */
export interface Checked {
  readonly file: string;
  readonly problems: number;
  readonly variants: number;
  /** How many different problems each kind can give with this kit. */
  readonly different: readonly Different[];
  /** Kinds that give too few. */
  readonly warnings: readonly Diagnostic[];
}

/**
 * Checks kits, lessons and courses: their words, every problem in many variants, and every page short of printing.
 *
 * @param paths kits and courses by their files, lessons by their folders or names
 * @param kitFile the workshop that lessons are worked for; without it a course's own, or the sample's
 * @throws {ContentError} with every fault of all of them; {CommandError} a file that is not there
 */
export function checkAll(paths: readonly string[], kitFile?: string): Checked[] {
  const gathering = new Gathering();
  const done = (paths.length > 0 ? paths : [SAMPLE_COURSE]).flatMap((path): Checked[] => {
    if (!isYaml(path)) return checkLessons([lessonNamed(path)], kitFile ?? SAMPLE_KIT, gathering);
    if (!isCourse(path)) {
      gathering.attempt(() => openKits([path]));
      return [plainly(path)];
    }
    const course = gathering.attempt(() => readCourse(path));
    const inside = course ? checkLessons(course.lessons, kitFile ?? course.kit, gathering) : [];
    if (course && gathering.clean && course.jobs.length > 0) {
      const order = { kit: kitFile ?? course.kit, paper: 'a4', print: 'plain', only: CARDS } as const;
      gathering.attempt(() => planOf({ ...order, course: { ...course, name: course.title, lessons: [] } }));
    }
    return [plainly(path), ...inside];
  });
  gathering.demandNone();
  return done;
}

/** What is checked without being drawn. */
const plainly = (path: string): Checked => ({
  file: shown(path),
  problems: 0,
  variants: 0,
  different: [],
  warnings: [],
});

/** Kits and courses; a file of another name is taken for one too, and told what it lacks. */
function isYaml(path: string): boolean {
  return /\.ya?ml$/i.test(path) || (isFile(path) && !/\.md$/i.test(path));
}

/** A course says so in its first key; whatever else is taken for a kit, and told what it lacks. */
function isCourse(path: string): boolean {
  try {
    return /^(course|lessons)[ \t]*:/m.test(readText(path, 'course'));
  } catch {
    return false; // opening it as a kit will say why
  }
}

function checkLessons(files: readonly string[], kitFile: string, gathering: Gathering): Checked[] {
  const kit = gathering.attempt(() => openKits([kitFile])[0]);
  if (!kit) return [];
  const setting: Setting = { kit, units: kit.units };
  return openLessons(files, setting, gathering).map((prepared) => {
    const { lesson } = prepared;
    gathering.attempt(() => checkPages(prepared, kit, setting));
    const different = gathering.attempt(() => differentProblems(prepared, setting)) ?? [];
    return {
      file: shown(lesson.file),
      problems: lesson.problems.length,
      variants: VARIANTS,
      different,
      warnings: tooFew(prepared, different),
    };
  });
}

/** Sets every page of a lesson, on the narrower paper and in the larger print too, and draws its problems. */
function checkPages(prepared: PreparedLesson, kit: Kit, setting: Setting): void {
  const { lesson } = prepared;
  const head: SheetHead = { course: lesson.title, club: '', kit: kit.kit };
  const style: SheetStyle = { paper: 'a4', print: 'plain', units: setting.units };
  const faults: Diagnostic[] = [];
  const sources = new Map<string, string>();
  for (const print of ['plain', 'large'] as const)
    for (const paper of ['a4', 'letter'] as const)
      keep(faults, sources, () => handoutHtml({ head, lessons: [lesson] }, { ...style, paper, print }));
  for (let place = 0; place < VARIANTS; place++)
    keep(faults, sources, () => {
      const variant = codeFor(`check/${place}`);
      const sheet = {
        head,
        variant,
        lessons: [{ lesson, problems: problemsOf(prepared, variant, setting) }],
      };
      // Large print has the least room for a figure.
      problemSheetHtml(sheet, { ...style, print: place % 2 === 0 ? 'plain' : 'large' });
      answerKeyHtml(sheet, style);
    });
  if (faults.length > 0) throw new ContentError(faults, sources);
}

/** Keeps each fault once: the same one shows in every variant. */
function keep(faults: Diagnostic[], sources: Map<string, string>, work: () => void): void {
  try {
    work();
  } catch (error) {
    if (!(error instanceof ContentError)) throw error;
    const known = (one: Diagnostic) =>
      faults.some(
        ({ start, rule }) =>
          start.line === one.start.line && start.column === one.start.column && rule === one.rule,
      );
    faults.push(...error.diagnostics.filter((one) => !known(one)));
    for (const [file, text] of error.sources) sources.set(file, text);
  }
}
