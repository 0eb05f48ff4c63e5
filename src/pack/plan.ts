import { ContentError } from '../diagnostics/diagnostic.js';
import { CommandError, InputError } from '../diagnostics/errors.js';
import { keyJson } from '../exchange/key.js';
import { qtiPackage } from '../exchange/qti/package.js';
import { openKits } from '../kit/open.js';
import type { Kit } from '../kit/schema.js';
import { standingCode } from '../lesson/class-set.js';
import type { PreparedLesson } from '../lesson/prepare.js';
import type { Setting } from '../problems/draw.js';
import { agreedUnits, readVariant } from '../problems/variant.js';
import { answerKeyHtml } from '../sheets/answer-key.js';
import { handoutHtml } from '../sheets/handout.js';
import type { SheetHead, SheetStyle } from '../sheets/model.js';
import { problemSheetHtml } from '../sheets/problem-sheet.js';
import { shopCardHtml } from '../sheets/shop-card.js';
import type { UnitSystem } from '../units/format.js';
import { shopCard } from './card.js';
import { classDocuments } from './class-documents.js';
import { classSheets, type Sheet } from './class-sheets.js';
import { fileName } from './file-name.js';
import type { Job } from './job.js';
import { classKinds, type Kind, printedKinds } from './kinds.js';
import { readLearners } from './learners.js';
import { Gathering, openLessons, shown } from './lessons.js';
import { practiceDocuments } from './practice-documents.js';

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
  /** Two sheets, A and B, that take turns along the seats. */
  readonly versions?: 2;
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

/** One document that will be printed, or a file of data that will be written as it is. */
export type Document = DocumentHead & (PrintedDocument | DataFile);

interface DocumentHead {
  readonly kind: Kind;
  /** Where it goes, in the folder of what is made. */
  readonly name: string;
  readonly variant?: string;
  readonly learner?: string;
}

interface PrintedDocument {
  /** Written only when it is about to be printed. */
  html(): string;
}

interface DataFile {
  /** Made only when it is about to be written. */
  data(): string | Uint8Array;
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
  const { course, versions } = order;
  const only = kindsWanted(order);
  const told = readVariant(order.variant ?? course.variant ?? standingCode(course.name));
  const variant = told.code;
  const gathering = new Gathering();
  const kit = gathering.attempt(() => openKits([order.kit])[0]);
  const learners =
    order.learners === undefined ? undefined : gathering.attempt(() => readLearners(order.learners ?? ''));
  if (!kit) gathering.demandNone();
  const setting: Setting = { kit: kit as Kit, units: agreedUnits(order.units, told) ?? (kit as Kit).units };
  const style: SheetStyle = { paper: order.paper, print: order.print, units: setting.units };
  const lessons = openLessons(course.lessons, setting, gathering);
  const opened = new Map<UnitSystem, readonly PreparedLesson[]>([[setting.units, lessons]]);
  for (const { units } of learners ?? [])
    if (units !== undefined && !opened.has(units) && gathering.clean)
      opened.set(units, openLessons(course.lessons, { ...setting, units }, gathering));
  const head: SheetHead = { course: course.title, club: course.club, kit: setting.kit.kit };
  // The handout is set before anything is printed, so that faults in its words are told with the others.
  const handout = only.has('handout')
    ? gathering.attempt(() => handoutHtml({ head, lessons: lessons.map(({ lesson }) => lesson) }, style))
    : undefined;
  gathering.demandNone();

  const documents: Document[] = [];
  if (handout !== undefined) documents.push({ kind: 'handout', name: 'handout.pdf', html: () => handout });
  const asked = lessons.some(({ lesson }) => lesson.problems.length > 0);
  if (asked && SHEETS.some((kind) => only.has(kind))) {
    const lessonsIn = (system: UnitSystem) => opened.get(system) ?? [];
    const set = classSheets({ code: variant, head, kit: setting.kit, style, learners, versions, lessonsIn });
    for (const [place, sheet] of set.sheets.entries()) {
      const key = set.keys[place];
      documents.push(sheetDocument(sheet), ...(key ? keyDocuments(key) : []));
    }
    const about = { head, variant, lessons: lessons.map(({ lesson }) => lesson) };
    documents.push(...classDocuments(about, set, style));
  }
  if (only.has('cards'))
    for (const job of course.jobs) {
      const card = cardOf(job, course, () => shopCard(job, setting.kit, head, setting.units));
      documents.push({
        kind: 'cards',
        name: `${cardName(job, course.jobs)}.pdf`,
        html: () => shopCardHtml(card, style),
      });
    }
  if (asked && only.has('practice'))
    documents.push(...practiceDocuments(lessons, { ...setting, head, course: course.name, code: variant }));
  const wanted = documents.filter(({ kind }) => only.has(kind));
  if (wanted.length === 0)
    throw new CommandError('there is nothing to make', [
      'Problems, keys, practice and qti need a lesson with problems; cards need a course with jobs.',
    ]);
  return { variant, documents: wanted };
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

/** Kinds that are made of problems. */
const SHEETS: readonly Kind[] = ['problems', 'key', 'grid', 'marks', 'qti'];

/**
 * What is to be made: all that is printed, or what was named.
 *
 * @throws {CommandError} a sheet of the class, and no class
 */
function kindsWanted({ only, learners, versions }: Order): ReadonlySet<Kind> {
  if (learners !== undefined || versions !== undefined) return only;
  const named = classKinds.filter((kind) => only.has(kind));
  if (named.length > 0 && !printedKinds.every((kind) => only.has(kind)))
    throw new CommandError(`--only ${named.join(',')} needs a class: name its list with --learners`, [
      'Or print two versions with --versions 2.',
    ]);
  return new Set([...only].filter((kind) => !classKinds.includes(kind)));
}

function sheetDocument({ variant, learner, file, style, problems }: Sheet): Document {
  return {
    kind: 'problems',
    variant,
    ...(learner === undefined ? {} : { learner }),
    name: file === undefined ? 'problems.pdf' : `problems/${file}.pdf`,
    html: () => problemSheetHtml(problems(), style),
  };
}

function keyDocuments({ variant, learner, file, style, problems }: Sheet): Document[] {
  const whose = { variant, ...(learner === undefined ? {} : { learner }) };
  return [
    {
      ...whose,
      kind: 'key',
      name: file === undefined ? 'key.pdf' : `keys/${file}.pdf`,
      html: () => answerKeyHtml(problems(), style),
    },
    {
      ...whose,
      kind: 'key',
      name: file === undefined ? 'key.json' : `keys/${file}.json`,
      data: () => keyJson(problems(), style),
    },
    {
      ...whose,
      kind: 'qti',
      name: file === undefined ? 'qti.zip' : `qti/${file}.zip`,
      data: () => qtiPackage(problems(), style),
    },
  ];
}

function cardName(job: Job, jobs: readonly Job[]): string {
  const words = fileName(job, jobs.indexOf(job) + 1);
  return `card-${jobs.length === 1 ? words.replace(/^\d+-/, '') : words}`;
}
