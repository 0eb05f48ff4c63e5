import { ContentError, type Diagnostic } from '../diagnostics/diagnostic.js';
import { factsOf } from '../kit/facts.js';
import { drawProblem, type Setting } from '../problems/draw.js';
import { keyOf } from '../problems/kind.js';
import { Patience } from '../problems/patience.js';
import type { Problem } from '../problems/problem.js';
import { BARE, runWorkings } from '../problems/workings.js';
import type { Path } from '../reading/places.js';
import { cautions } from './cautions.js';
import { workedExample } from './example.js';
import { asFault, inMatter } from './faults.js';
import { kindsOf } from './kinds.js';
import { exampleKey, type Lesson, type WorkedExample } from './lesson.js';
import { inBody, type LessonSource } from './source.js';

/** Seconds of the processor's work for a whole lesson. */
const LONGEST = 3;

const TOO_LONG = 'lesson/problem/too-long';

/** A lesson with its numbers, and the text they came from, where faults in later draws are told. */
export interface PreparedLesson {
  readonly lesson: Lesson;
  readonly source: LessonSource;
}

/**
 * A lesson with its numbers, for one kit and one system of units. Each problem is drawn once, so that a fault in
 * one is found before anything is printed.
 *
 * @throws {ContentError} with every fault and its place; {DisagreementError} two routes that differ
 */
export function prepareLesson(source: LessonSource, setting: Setting): PreparedLesson {
  const { file, text, matter, bodyLine } = source;
  const faults: Diagnostic[] = [];
  const patience = new Patience(LONGEST, 'this lesson');
  const attempt = <T>(path: Path, work: () => T): T | undefined => {
    try {
      return work();
    } catch (error) {
      faults.push(inMatter(error, path, source));
      return undefined;
    }
  };

  const example = Object.entries(matter.example);
  const values = Object.fromEntries(example.map(([name, { value }]) => [name, value[setting.units]]));
  const lengths = new Set(example.filter(([, one]) => one.length).map(([name]) => name));
  const run = (works: Parameters<typeof runWorkings>[0]) =>
    runWorkings(works, values, setting.kit, { lengths, patience, absentMay: true });
  const workings = attempt([], () => run(matter.works));
  const examples = new Map<string, WorkedExample>();
  for (const { name, show, ...place } of source.worked) {
    if (!workings || workings.names.absent.has(name)) continue;
    try {
      const own = workings.runs.has(name);
      const worked = own ? workings : run({ [BARE]: { calculation: name } });
      examples.set(exampleKey(name, show), workedExample(own ? name : BARE, show, worked, setting.units));
    } catch (error) {
      const { message, hints } = asFault(error);
      faults.push(
        inBody(
          { rule: 'worked', message: `cannot work ${name}: ${message}`, hints, ...place },
          file,
          bodyLine,
        ),
      );
    }
  }
  const problems = kindsOf(matter);
  const drawn: Problem[] = [];
  for (const kind of problems) {
    const problem = attempt(['problems', keyOf(kind)], () => {
      patience.demand();
      return withWholeKey(drawProblem(kind, source.name, setting));
    });
    if (problem) drawn.push(problem);
    else if (faults.at(-1)?.rule === TOO_LONG) break; // the others would take as long
  }
  if (faults.length > 0 || !workings) throw new ContentError(faults, new Map([[file, text]]));

  const lesson: Lesson = {
    file,
    name: source.name,
    number: source.number,
    title: matter.title,
    part: matter.part,
    level: matter.level,
    needs: matter.needs,
    goals: matter.goals,
    cautions: matter.cautions.map((name) => cautions[name]),
    values: { kit: factsOf(setting.kit), ...workings.names.values },
    workings: examples,
    problems,
    body: source.body,
    bodyLine,
    sources: sourcesOf([
      ...[...examples.values()].flatMap((example) => example.checks),
      ...drawn.flatMap((problem) => problem.parts.flatMap((part) => part.checks)),
    ]),
  };
  return { lesson, source };
}

/** A fault may lie in what only the key prints. */
function withWholeKey(problem: Problem): Problem {
  return { ...problem, parts: problem.parts.map((part) => ({ ...part })) };
}

/** The works that prove the numbers, each once; what a check puts back is no work. */
function sourcesOf(checks: readonly { readonly source: string }[]): string[] {
  const works = checks.map(({ source }) => source.split(';')[0] ?? '');
  return [...new Set(works)].filter((work) => work !== '' && !/^(Put back|The method)/.test(work));
}
