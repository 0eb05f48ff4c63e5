import { strToU8, zipSync } from 'fflate';
import type { Lesson } from '../../lesson/lesson.js';
import type { Problem } from '../../problems/problem.js';
import { Faults } from '../../sheets/fault.js';
import type { LessonProblems, ProblemSheet, SheetStyle } from '../../sheets/model.js';
import { marksOf } from '../../sheets/problem-marks.js';
import { assessmentTest } from './assessment.js';
import { assessmentItem } from './item.js';
import { manifest, type Resource } from './manifest.js';
import { type ItemWords, itemWords } from './words.js';

/** The start of the calendar of zip files: the same on every machine and day. */
const NO_DATE = new Date(1980, 0, 1);

/**
 * A sheet's problems as a package of QTI 3.0, the open standard of 1EdTech for questions and tests: a test for each
 * lesson, an item for each problem. The same sheet gives the same bytes. It names no learner.
 *
 * @throws {ContentError} for a problem whose words cannot be set; {InputError} for characters that XML refuses
 */
export function qtiPackage(sheet: ProblemSheet, style: SheetStyle): Uint8Array {
  const files = [...qtiFiles(sheet, style)].map(([name, text]) => [name, strToU8(text)] as const);
  return zipSync(Object.fromEntries(files), { mtime: NO_DATE, level: 6 });
}

/** The files of the package by their names, the manifest first. */
export function qtiFiles(sheet: ProblemSheet, style: SheetStyle): Map<string, string> {
  const { variant, lessons } = sheet;
  const faults = new Faults();
  const asked = lessons.filter(({ problems }) => problems.length > 0);
  const worded = asked.map((one, at) => withWords(one, `lesson_${at + 1}`, { variant, style }, faults));
  // All that is wrong with the words is told at once, before any is put into a document.
  faults.demandNone();
  const files = worded.flatMap((one) => lessonFiles(one, sheet));
  const resources = files.map(({ resource }) => resource);
  return new Map([
    ['imsmanifest.xml', manifest(`benchleaf_${variant}`, resources)],
    ...files.map(({ resource, text }) => [resource.href, text] as const),
  ]);
}

/** A lesson with its problems' words. */
interface WordedLesson {
  readonly lesson: Lesson;
  readonly id: string;
  readonly problems: readonly WordedProblem[];
}

interface WordedProblem {
  readonly problem: Problem;
  readonly words: ItemWords;
  readonly identifier: string;
}

function withWords(
  { lesson, problems }: LessonProblems,
  id: string,
  { variant, style }: { readonly variant: string; readonly style: SheetStyle },
  faults: Faults,
): WordedLesson {
  return {
    lesson,
    id,
    problems: problems.map((problem) => {
      // A point would part a test's name for an item from the name of a variable in it.
      const identifier = `${id}_${problem.name.replace('.', '_')}_${variant}`;
      const place = { folder: '../figures/', name: identifier };
      return { problem, identifier, words: itemWords(lesson, problem, { style, place }, faults) };
    }),
  };
}

/** A file of the package and its line in the manifest. */
interface PackedFile {
  readonly resource: Resource;
  readonly text: string;
}

function lessonFiles(
  { lesson, id, problems }: WordedLesson,
  { variant, version }: ProblemSheet,
): PackedFile[] {
  const { number, title } = lesson;
  const identifier = `${id}_${variant}`;
  const items = problems.map((one, at) => itemFiles(one, `${number ?? 1}.${at + 1} ${title}`, variant));
  const test = assessmentTest({
    identifier,
    title: [`${number ?? ''} ${title}`.trim(), ...(version ? [`Version ${version}`] : []), variant].join(
      ' · ',
    ),
    marks: problems.reduce((sum, { problem }) => sum + marksOf(problem), 0),
    items: problems.map((one) => ({ identifier: one.identifier, href: `../${itemFile(one)}` })),
  });
  return [
    {
      resource: {
        identifier,
        type: 'imsqti_test_xmlv3p0',
        href: `tests/${identifier}.xml`,
        needs: problems.map((one) => one.identifier),
      },
      text: test,
    },
    ...items.flat(),
  ];
}

const itemFile = ({ identifier }: WordedProblem): string => `items/${identifier}.xml`;

/** Black lines are not seen on a dark page. */
const onWhite = (svg: string): string => svg.replace(/^<svg /, '<svg style="background: #fff" ');

/** A problem's own file, and those of its figures. */
function itemFiles(one: WordedProblem, title: string, variant: string): PackedFile[] {
  const { problem, words, identifier } = one;
  const asked = [...(words.example ? [words.example] : []), words];
  const texts = asked.flatMap(({ ask, parts }) => [
    ask,
    ...parts,
    ...parts.flatMap(({ options }) => options),
  ]);
  const figures = texts.flatMap((text) =>
    text.figures.map(({ file, svg }): PackedFile => {
      const resource = {
        identifier: file.replace(/\.svg$/, ''),
        type: 'webcontent',
        href: `figures/${file}`,
      } as const;
      return { resource: { ...resource, needs: [] }, text: onWhite(svg) };
    }),
  );
  const item: PackedFile = {
    resource: {
      identifier,
      type: 'imsqti_item_xmlv3p0',
      href: itemFile(one),
      needs: figures.map(({ resource }) => resource.identifier),
    },
    text: assessmentItem({ identifier, title, label: variant }, problem, words),
  };
  return [item, ...figures];
}
