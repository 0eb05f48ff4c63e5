import { basename, dirname, resolve } from 'node:path';
import { ContentError, type Diagnostic } from '../diagnostics/diagnostic.js';
import { softenLists } from '../problems/range.js';
import type { ProblemDeclaration } from '../problems/schema.js';
import { demandReadable } from '../reading/bounds.js';
import type { Places } from '../reading/places.js';
import { isPlainName } from '../reading/plain-name.js';
import { readYaml } from '../reading/yaml.js';
import { partLesson } from './front-matter.js';
import { type FrontMatter, lessonSchema } from './schema.js';
import { checkTemplate, type TemplateFault, type WorkedBlock } from './template.js';
import { bodyVocabulary, problemVocabulary } from './vocabulary.js';

/** A lesson as it was read, its words checked; its numbers wait for a kit. */
export interface LessonSource {
  readonly file: string;
  readonly text: string;
  readonly name: string;
  readonly number: number | undefined;
  readonly matter: FrontMatter;
  readonly places: Places;
  readonly body: string;
  readonly bodyLine: number;
  /** Workings that the body asks to be set out. */
  readonly worked: readonly WorkedBlock[];
}

/**
 * Reads a lesson and checks all that can be checked without a kit.
 *
 * @param file its name, for messages; its folder is the lesson's name
 * @throws {ContentError} with every fault and its place
 */
export function readLesson(text: string, file: string): LessonSource {
  demandReadable(text, file, 'lesson');
  const folder = basename(dirname(resolve(file)));
  if (!isPlainName(folder)) throw new ContentError([badFolder(folder, file)], new Map([[file, text]]));
  const { yaml, yamlLine, body, bodyLine } = partLesson(text, file);
  const { data: matter, places } = readYaml(softenLists(yaml), lessonSchema, {
    file,
    area: 'lesson',
    firstLine: yamlLine,
  });
  const findings = checkTemplate(body, bodyVocabulary(matter), 'body');
  const faults = findings.faults.map((fault) => inBody(fault, file, bodyLine));
  for (const [name, problem] of Object.entries(matter.problems)) {
    const known = problemVocabulary(problem);
    for (const { path, ask } of textsOf(problem).map((one) => ({
      ...one,
      path: ['problems', name, ...one.path],
    })))
      for (const fault of checkTemplate(ask, known, 'problem').faults)
        faults.push({ ...inBody(fault, file, 1), ...places.within(path, marked(fault, ask)) });
  }
  if (faults.length > 0) throw new ContentError(faults, new Map([[file, text]]));
  const number = /^(\d{1,3})-/.exec(folder)?.[1];
  return {
    file,
    text,
    name: folder,
    number: number === undefined ? undefined : Number(number),
    matter,
    places,
    body,
    bodyLine,
    worked: findings.worked,
  };
}

/** Pages, packages and seeds are named after the folder. */
const badFolder = (folder: string, file: string): Diagnostic => ({
  severity: 'error',
  rule: 'lesson/folder',
  message: `the lesson's folder is called ${JSON.stringify(folder.slice(0, 80))}, which cannot be a name everywhere`,
  file,
  start: { line: 1, column: 1 },
  hints: ['Give the folder another name, of letters, figures and hyphens.'],
});

/** Every text of a problem that may have `{{…}}` in it, with its place. */
export function textsOf({ ask, parts = [], works, estimate }: ProblemDeclaration) {
  const estimates = [{ estimate, path: [] as PropertyKey[] }].concat(
    parts.map((part, at) => ({ estimate: part.estimate, path: ['parts', at] })),
  );
  return [
    { path: ['ask'], ask },
    ...parts.map((part, at) => ({ path: ['parts', at, 'ask'], ask: part.ask })),
    ...estimates.flatMap((one) =>
      one.estimate?.ask === undefined
        ? []
        : [{ path: [...one.path, 'estimate', 'ask'], ask: one.estimate.ask }],
    ),
    ...Object.entries(works).flatMap(([name, one]) =>
      'rank' in one
        ? Object.entries(one.rank as Record<string, string>).map(([key, label]) => ({
            path: ['works', name, 'rank', key],
            ask: label,
          }))
        : [],
    ),
  ];
}

/** The text at fault: in front matter it is looked for, since YAML folds lines. */
function marked({ line, column, length }: TemplateFault, text: string): string {
  return (text.split('\n')[line - 1] ?? '').slice(column - 1, column - 1 + length);
}

/** A fault of the body at its place in the file. */
export function inBody(
  { rule, message, line, column, length, hints }: TemplateFault,
  file: string,
  bodyLine: number,
): Diagnostic {
  return {
    severity: 'error',
    rule: `lesson/${rule}`,
    message,
    file,
    start: { line: line + bodyLine - 1, column },
    length,
    hints,
  };
}
