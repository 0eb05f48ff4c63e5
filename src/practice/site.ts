import { readFileSync } from 'node:fs';
import { release } from '../exchange/release.js';
import { textsOf } from '../lesson/source.js';
import type { ProblemKind } from '../problems/kind.js';
import { later } from '../problems/later.js';
import { faceRule } from '../sheets/assets.js';
import { FIGURES, faces } from '../sheets/faces.js';
import { unmarked } from '../sheets/fill.js';
import type { SheetHead } from '../sheets/model.js';
import { render, TEMPLATES } from '../sheets/templates.js';
import { precompiled } from '../sheets/text-templates.js';
import { counted } from '../units/words.js';
import { inlineData, inlineScript, policyFor } from './inline.js';
import { type PracticeLesson, practiceText } from './practice-lesson.js';

/** The page's program, which the build makes, and the licences of what others have given to it. */
const APP = new URL('../../dist/practice/page.js', import.meta.url);
const LICENCES = new URL('licences.md', APP);

/** The file of a lesson's page. */
export const practiceFile = ({ name }: Pick<PracticeLesson, 'name'>): string => `${name}.html`;

/**
 * The page of a lesson: one file that needs nothing beside it.
 *
 * @throws {Error} where the build has not made the page's program
 */
export function practicePage(lesson: PracticeLesson): string {
  const css = `${labelFaces()}\n${style()}`;
  const templates = inlineScript(templatesOf(lesson.problems));
  const { number, title, head, goals, cautions } = lesson;
  return render('practice-lesson', {
    policy: policyFor({ scripts: [templates, app()], style: css }),
    css,
    head,
    number,
    title,
    goals,
    cautions,
    release,
    data: inlineData(practiceText(lesson)),
    templates,
    app: app(),
    licences: licences(),
  });
}

/** The page that leads to the others. */
export function practiceIndex(head: SheetHead, lessons: readonly PracticeLesson[]): string {
  const css = style();
  return render('practice-index', {
    policy: policyFor({ style: css }),
    css,
    head,
    release,
    lessons: lessons.map((lesson) => ({
      file: practiceFile(lesson),
      number: lesson.number,
      title: lesson.title,
      problems: counted(lesson.problems.length, 'problem'),
    })),
  });
}

/** Every text with values in it as a template: the page may not make programs of texts. */
function templatesOf(kinds: readonly ProblemKind[]): string {
  const texts = kinds.flatMap(({ declared }) => textsOf(declared).map(({ ask }) => unmarked(ask)));
  const wanted = [...new Set(texts)].filter((text) => text.includes('{{'));
  const entries = wanted.map((text) => `${JSON.stringify(text)}:${precompiled(text)}`);
  return `globalThis.benchleafTemplates={${entries.join(',')}};`;
}

const style = () => readFileSync(new URL('styles/practice.css', TEMPLATES), 'utf8');

const app = later(() => inlineScript(readFileSync(APP, 'utf8')));
const licences = later(() => inlineScript(readFileSync(LICENCES, 'utf8')));

/** The faces that the labels of figures are measured in, as data. */
const labelFaces = later(() =>
  faces
    .filter(({ family, file }) => family === FIGURES && /^source-sans-3-latin-\d/.test(file.name))
    .map((face) =>
      faceRule(face, `data:font/woff2;base64,${readFileSync(face.file.from).toString('base64')}`),
    )
    .join('\n'),
);
