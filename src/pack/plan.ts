import { ContentError } from '../diagnostics/diagnostic.js';
import { CommandError, InputError } from '../diagnostics/errors.js';
import { openKits } from '../kit/open.js';
import type { Kit } from '../kit/schema.js';
import { learnerCodes, problemsOf, standingCode } from '../lesson/class-set.js';
import type { PreparedLesson } from '../lesson/prepare.js';
import { readCode } from '../problems/code.js';
import type { Setting } from '../problems/draw.js';
import { answerKeyHtml } from '../sheets/answer-key.js';
import { handoutHtml } from '../sheets/handout.js';
import type { ProblemSheet, SheetHead, SheetStyle } from '../sheets/model.js';
import { problemSheetHtml } from '../sheets/problem-sheet.js';
import { shopCardHtml } from '../sheets/shop-card.js';
import type { UnitSystem } from '../units/format.js';
import { shopCard } from './card.js';
import { fileName } from './file-name.js';
import type { Job } from './job.js';
import type { Kind } from './kinds.js';
import { type Learner, readLearners } from './learners.js';
import { Gathering, openLessons, shown } from './lessons.js';

/** What is to be made of a course: whose numbers, on which paper. */
export interface Order {
  readonly course: CourseToMake;
  readonly kit: string;
  readonly paper: SheetStyle['paper'];
  readonly print: SheetStyle['print'];
  /** The kit's own where it is not said. */
  readonly units?: UnitSystem;
  readonly variant?: string;
  /** File of the learners' names. */
  readonly learners?: string;
  readonly only: ReadonlySet<Kind>;
}

/** A course, or a few lessons named by themselves. */
export interface CourseToMake {
  /** The course's own file. */
  readonly file?: string;
  /** Names the folder of what is made, and the standing variant. */
  readonly name: string;
  readonly title: string;
  readonly club: string;
  readonly variant?: string | undefined;
  readonly lessons: readonly string[];
  readonly jobs: readonly Job[];
}

/** One document that will be printed. */
export interface Document {
  readonly kind: Kind;
  /** Where it goes, in the folder of what is made. */
  readonly name: string;
  readonly variant?: string;
  readonly learner?: string;
  /** Written only when it is about to be printed. */
  html(): string;
}

/** All that an order comes to. */
export interface Plan {
  readonly variant: string;
  readonly documents: readonly Document[];
}

/**
 * Reads everything that an order names, works it, and plans the documents; nothing is printed or written.
 *
 * @throws {ContentError} with every fault of every lesson, kit and list; {CommandError} a file that is not there or
 *   a variant code that is none; {DisagreementError} two routes that differ
 */
export function planOf(order: Order): Plan {
  const { course, only } = order;
  const variant =
    order.variant === undefined ? (course.variant ?? standingCode(course.name)) : readCode(order.variant);
  const gathering = new Gathering();
  const kit = gathering.attempt(() => openKits([order.kit])[0]);
  const learners =
    order.learners === undefined ? undefined : gathering.attempt(() => readLearners(order.learners ?? ''));
  if (!kit) gathering.demandNone();
  const setting: Setting = { kit: kit as Kit, units: order.units ?? (kit as Kit).units };
  const style: SheetStyle = { paper: order.paper, print: order.print, units: setting.units };
  const lessons = openLessons(course.lessons, setting, gathering);
  const head: SheetHead = { course: course.title, club: course.club, kit: setting.kit.kit };
  // The handout is set before anything is printed, so that faults in its words are told with the others.
  const handout = only.has('handout')
    ? gathering.attempt(() => handoutHtml({ head, lessons: lessons.map(({ lesson }) => lesson) }, style))
    : undefined;
  gathering.demandNone();

  const documents: Document[] = [];
  if (handout !== undefined) documents.push({ kind: 'handout', name: 'handout.pdf', html: () => handout });
  const asked = lessons.some(({ lesson }) => lesson.problems.length > 0);
  if (asked && (only.has('problems') || only.has('key')))
    for (const sheet of sheetsOf(lessons, variant, learners, head, setting))
      documents.push(...problemDocuments(sheet, style, only));
  if (only.has('cards'))
    for (const job of course.jobs) {
      const card = cardOf(job, course, () => shopCard(job, setting.kit, head, setting.units));
      documents.push({
        kind: 'cards',
        name: `${cardName(job, course.jobs)}.pdf`,
        html: () => shopCardHtml(card, style),
      });
    }
  if (documents.length === 0)
    throw new CommandError('there is nothing to make', [
      'Problems and keys need a lesson with problems; cards need a course with jobs.',
    ]);
  return { variant, documents };
}

/** What a job's card is refused for is told with the course it stands in. */
function cardOf<T>(job: Job, { file }: CourseToMake, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const start = { line: 1, column: 1 };
    const message = `the job ${JSON.stringify(job.name)} cannot be cut with this kit: ${error.message}`;
    throw new ContentError([
      { severity: 'error', rule: 'course/job', message, file: shown(file ?? ''), start, hints: [JOB_HINT] },
    ]);
  }
}

const JOB_HINT = 'Change the job, or name another kit.';

/** One learner's sheet, its problems drawn when they are wanted. */
interface LearnerSheet {
  readonly variant: string;
  readonly learner?: string;
  /** Of its documents, without an ending. */
  readonly file?: string;
  problems(): ProblemSheet;
}

function sheetsOf(
  lessons: readonly PreparedLesson[],
  variant: string,
  learners: readonly Learner[] | undefined,
  head: SheetHead,
  setting: Setting,
): LearnerSheet[] {
  // A sheet's key is written right after it, from the same problems; those of a whole class would fill the memory.
  let latest: ProblemSheet | undefined;
  const sheet = (code: string, learner?: string) => (): ProblemSheet => {
    if (latest?.variant !== code || latest.learner !== learner)
      latest = {
        head,
        variant: code,
        ...(learner === undefined ? {} : { learner }),
        lessons: lessons.map((prepared) => ({
          lesson: prepared.lesson,
          problems: problemsOf(prepared, code, setting),
        })),
      };
    return latest;
  };
  if (!learners) return [{ variant, problems: sheet(variant) }];
  const codes = learnerCodes(
    variant,
    learners.map(({ name }) => name),
  );
  return learners.map((learner, place) => {
    const code = codes[place] ?? variant;
    return {
      variant: code,
      learner: learner.name,
      file: fileName(learner, place + 1),
      problems: sheet(code, learner.name),
    };
  });
}

function problemDocuments(
  { variant, learner, file, problems }: LearnerSheet,
  style: SheetStyle,
  only: ReadonlySet<Kind>,
): Document[] {
  const whose = { variant, ...(learner === undefined ? {} : { learner }) };
  const both: Document[] = [
    {
      ...whose,
      kind: 'problems',
      name: file === undefined ? 'problems.pdf' : `problems/${file}.pdf`,
      html: () => problemSheetHtml(problems(), style),
    },
    {
      ...whose,
      kind: 'key',
      name: file === undefined ? 'key.pdf' : `keys/${file}.pdf`,
      html: () => answerKeyHtml(problems(), style),
    },
  ];
  return both.filter(({ kind }) => only.has(kind));
}

function cardName(job: Job, jobs: readonly Job[]): string {
  const words = fileName(job, jobs.indexOf(job) + 1);
  return `card-${jobs.length === 1 ? words.replace(/^\d+-/, '') : words}`;
}
