import { CommandError } from '../diagnostics/errors.js';
import { keyJson } from '../exchange/key.js';
import { qtiPackage } from '../exchange/qti/package.js';
import { openKits } from '../kit/open.js';
import type { Kit } from '../kit/schema.js';
import { standingCode } from '../lesson/class-set.js';
import type { PreparedLesson } from '../lesson/prepare.js';
import type { PagedHtml } from '../print/paged.js';
import type { Setting } from '../problems/draw.js';
import { later } from '../problems/later.js';
import { agreedUnits, readVariant } from '../problems/variant.js';
import { answerKeyHtml } from '../sheets/answer-key.js';
import { handoutHtml } from '../sheets/handout.js';
import type { SheetHead, SheetStyle } from '../sheets/model.js';
import { problemSheetHtml } from '../sheets/problem-sheet.js';
import { shopCardHtml } from '../sheets/shop-card.js';
import type { Printer } from '../sheets/template-layout.js';
import type { UnitSystem } from '../units/format.js';
import { shopCard } from './card.js';
import { cardDocuments } from './card-documents.js';
import { classDocuments } from './class-documents.js';
import { classSheets, type Sheet } from './class-sheets.js';
import { courseBook } from './course-book.js';
import { fileName } from './file-name.js';
import type { Job } from './job.js';
import { classKinds, type Kind, printedKinds } from './kinds.js';
import { readLearners } from './learners.js';
import { Gathering, openLessons } from './lessons.js';
import { practiceDocuments } from './practice-documents.js';
import { templateDocuments } from './template-documents.js';
import { wallDocuments } from './wall-documents.js';
import type { WorkedLessons } from './worked-lessons.js';
import { fromJobs, type Workshop } from './workshop.js';

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
  /** The day that is told on what stays up for years; today’s where it is not said. */
  readonly date?: Date;
  /** What 1 mm comes out as on the printer, across the page and down it, where it has been measured. */
  readonly printer?: Printer;
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
  /** Reference sheets by name; all of them where it is not said. */
  readonly sheets?: readonly string[];
  /** Templates by name; all of them where it is not said. */
  readonly templates?: readonly string[];
  /** Families of cards by name; all of them, and the set-up cards, where it is not said. */
  readonly cards?: readonly string[];
}

/** One document that will be printed, or a file of data that will be written as it is. */
export type Document = DocumentHead & (PrintedDocument | PagedDocument | DataFile);

interface DocumentHead {
  readonly kind: Kind;
  /** Where it goes, in the folder of what is made. */
  readonly name: string;
  readonly variant?: string;
  readonly learner?: string;
  /** What is told of it when it is made, a sentence each. */
  readonly reports?: readonly string[];
}

interface PrintedDocument {
  /** Written only when it is about to be printed. */
  html(): string;
}

/** One that tells its own page numbers. */
interface PagedDocument {
  paged: PagedHtml;
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
 * @param worked lessons that were worked before, and need not be again
 * @throws {ContentError} with every fault of every lesson, kit and list; {CommandError} a file that is not there or
 *   a variant code that is none; {DisagreementError} two routes that differ
 */
export function planOf(order: Order, worked?: WorkedLessons): Plan {
  const { course, versions } = order;
  const only = kindsWanted(order);
  if (order.printer && !only.has('templates'))
    throw new CommandError('--printer-scale is for templates', ['Add --only templates, or name one.']);
  const told = readVariant(order.variant ?? course.variant ?? standingCode(course.name));
  const variant = told.code;
  const gathering = new Gathering();
  const kit = gathering.attempt(() => openKits([order.kit])[0]);
  const learners =
    order.learners === undefined ? undefined : gathering.attempt(() => readLearners(order.learners ?? ''));
  if (!kit) gathering.demandNone();
  const setting: Setting = { kit: kit as Kit, units: agreedUnits(order.units, told) ?? (kit as Kit).units };
  const style: SheetStyle = { paper: order.paper, print: order.print, units: setting.units };
  const lessons = openLessons(course.lessons, setting, gathering, worked);
  const opened = new Map<UnitSystem, readonly PreparedLesson[]>([[setting.units, lessons]]);
  for (const { units } of learners ?? [])
    if (units !== undefined && !opened.has(units) && gathering.clean)
      opened.set(units, openLessons(course.lessons, { ...setting, units }, gathering, worked));
  const head: SheetHead = { course: course.title, club: course.club, kit: setting.kit.kit };
  // The handout is set before anything is printed, so that faults in its words are told with the others.
  const handout = only.has('handout')
    ? gathering.attempt(() => handoutHtml({ head, lessons: lessons.map(({ lesson }) => lesson) }, style))
    : undefined;
  const lessonsIn = (system: UnitSystem) => opened.get(system) ?? [];
  const numbers = { code: variant, head, kit: setting.kit, style, lessonsIn };
  const ofClass = later(() => classSheets({ ...numbers, learners, versions }));
  // Whose the book's problems are: nobody's in a class, the one sheet's otherwise.
  const [shared] = only.has('book') ? (learners || versions ? classSheets(numbers) : ofClass()).sheets : [];
  const book = shared && gathering.attempt(() => courseBook(lessons, shared));
  gathering.demandNone();

  const { jobs, file } = course;
  const { date = new Date() } = order;
  const workshop: Workshop = { kit: setting.kit, head, style, jobs, file, date };
  const documents: Document[] = [];
  // The longest to print comes first.
  if (shared && book)
    documents.push({ kind: 'book', name: 'book.pdf', variant: shared.variant, paged: book });
  if (handout !== undefined) documents.push({ kind: 'handout', name: 'handout.pdf', html: () => handout });
  const asked = lessons.some(({ lesson }) => lesson.problems.length > 0);
  if (asked && SHEETS.some((kind) => only.has(kind))) {
    const set = ofClass();
    for (const [place, sheet] of set.sheets.entries()) {
      const key = set.keys[place];
      documents.push(sheetDocument(sheet), ...(key ? keyDocuments(key) : []));
    }
    const about = { head, variant, lessons: lessons.map(({ lesson }) => lesson) };
    documents.push(...classDocuments(about, set, style));
  }
  const answered = documents.some((one) => one.kind === 'key' && one.variant === shared?.variant);
  if (shared && asked && !(only.has('key') && answered)) documents.push(bookKey(shared));
  if (only.has('cards') && course.cards === undefined)
    for (const job of course.jobs) {
      const refused = `the job ${JSON.stringify(job.name)} cannot be cut with this kit`;
      const card = fromJobs(course.file, refused, 'Change the job, or name another kit.', () =>
        shopCard(job, setting.kit, head, setting.units),
      );
      documents.push({
        kind: 'cards',
        name: `${cardName(job, course.jobs)}.pdf`,
        html: () => shopCardHtml(card, style),
      });
    }
  if (only.has('cards') && familiesWanted(order)) documents.push(...cardDocuments(course.cards, workshop));
  if (asked && only.has('practice'))
    documents.push(...practiceDocuments(lessons, { ...setting, head, course: course.name, code: variant }));
  if (only.has('sheets')) documents.push(...wallDocuments(course.sheets, workshop));
  if (only.has('templates')) documents.push(...templateDocuments(course.templates, workshop, order.printer));
  const wanted = documents.filter(({ kind }) => only.has(kind));
  if (wanted.length === 0)
    throw new CommandError('there is nothing to make', [
      'Problems, keys, practice and qti need a lesson with problems; cards need a course with jobs.',
    ]);
  return { variant, documents: wanted };
}

/** The cards that last are made by name, or for a course whose cards are asked for: not with all the rest. */
const familiesWanted = ({ course, only }: Order): boolean =>
  course.cards !== undefined || (course.file !== undefined && !printedKinds.every((kind) => only.has(kind)));

/** Kinds that are made of problems. */
const SHEETS: readonly Kind[] = ['problems', 'key', 'grid', 'marks', 'qti'];

/**
 * What is to be made: all that is printed, or what was named.
 *
 * @throws {CommandError} a sheet of the class, and no class
 */
function kindsWanted({ course, only: asked, learners, versions }: Order): ReadonlySet<Kind> {
  const all = printedKinds.every((kind) => asked.has(kind));
  // Lessons named by themselves are no course: a book of them is made when it is asked for.
  const only = all && course.file === undefined ? without(asked, ['book']) : asked;
  if (learners !== undefined || versions !== undefined) return only;
  const named = classKinds.filter((kind) => only.has(kind));
  if (named.length > 0 && !all)
    throw new CommandError(`--only ${named.join(',')} needs a class: name its list with --learners`, [
      'Or print two versions with --versions 2.',
    ]);
  return without(only, classKinds);
}

const without = (kinds: ReadonlySet<Kind>, left: readonly Kind[]): ReadonlySet<Kind> =>
  new Set([...kinds].filter((kind) => !left.includes(kind)));

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

/** The key to the book's problems, where no key of the class is that. */
function bookKey({ variant, style, problems }: Sheet): Document {
  return { kind: 'book', name: 'book-key.pdf', variant, html: () => answerKeyHtml(problems(), style) };
}

function cardName(job: Job, jobs: readonly Job[]): string {
  const words = fileName(job, jobs.indexOf(job) + 1);
  return `card-${jobs.length === 1 ? words.replace(/^\d+-/, '') : words}`;
}
