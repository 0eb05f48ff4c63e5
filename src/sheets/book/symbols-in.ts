import { catalogue } from '../../calculations/catalogue.js';
import { symbolsOf } from '../../formula/formula.js';
import type { Problem } from '../../problems/problem.js';
import type { WorkingDeclaration } from '../../problems/schema.js';
import { type Letter, letters } from './letters.js';
import type { BookLesson } from './model.js';

/** Letters that are printed together, and who may say what they mean. */
export interface Formulas {
  readonly symbols: readonly string[];
  /** Names of calculations. */
  readonly calculations: readonly string[];
  /** What the author says. */
  readonly letters: readonly Letter[];
}

/** The letters that a lesson prints: in its workings, in its own words, in what its problems show of their working. */
export function formulasIn({ lesson, problems, calculations, letters: own }: BookLesson): Formulas[] {
  const worked = [...lesson.workings].map(([key, { given, found, steps }]): Formulas => {
    const name = key.split(': ')[0] ?? '';
    const symbols = [...[...given, ...found].map(({ symbol }) => symbol), ...steps.flatMap(inStep)];
    return { symbols, calculations: [calculations.get(name) ?? name], letters: own };
  });
  const asked = problems.map((problem): Formulas => {
    const declared = lesson.problems.find(({ name }) => name === problem.name)?.declared;
    const works = Object.values(declared?.works ?? {}).flatMap((one) =>
      'calculation' in one && !('among' in one) ? [String(one.calculation)] : [],
    );
    return {
      symbols: inProblem(problem),
      calculations: [...(declared?.calculation ? [declared.calculation] : []), ...works],
      letters: [...lettersOf(declared?.works ?? {}), ...own],
    };
  });
  const texts = [
    lesson.body,
    ...problems.flatMap(({ ask, parts }) => [ask, ...parts.map((part) => part.ask)]),
  ];
  const inWords = texts.flatMap((text) =>
    [...text.matchAll(/(?<!\\)(\$\$?)([^$]+)\1/g)].flatMap(([, , tex = '']) => inTex(tex)),
  );
  // A letter of the text is one of a working that is printed beside it, or the author says what it is.
  const shown = worked.flatMap(({ symbols, calculations: names }) =>
    symbols.map((symbol) => meaningOf({ symbols, calculations: names, letters: [] }, symbol) ?? []).flat(),
  );
  return [...worked, { symbols: inWords, calculations: [], letters: [...own, ...shown] }, ...asked];
}

/** The letters that workings by a formula are given. */
export function lettersOf(works: Readonly<Record<string, WorkingDeclaration>>): Letter[] {
  return Object.values(works).flatMap((one) => {
    if (!('formula' in one) || 'calculation' in one || 'among' in one) return [];
    const { symbol, title, unit } = one as Extract<WorkingDeclaration, { check: string[]; formula: string }>;
    return symbol === undefined || title === undefined ? [] : [{ symbol, meaning: title, unit }];
  });
}

/** What a letter means to the author, to the first of the calculations that knows it, or to the trade. */
export function meaningOf({ calculations, letters: own }: Formulas, symbol: string): Letter | undefined {
  const said = (among: readonly Letter[]) => among.find((one) => one.symbol === symbol);
  for (const name of calculations) {
    const { given = {}, found = {} } = catalogue.find((one) => one.name === name) ?? {};
    const known = [...Object.values(found), ...Object.values(given)].find((one) => one.symbol === symbol);
    if (known) return { symbol, meaning: known.name.split(/; | \(/)[0] ?? '', unit: known.unit ?? '' };
  }
  return said(own) ?? said(letters);
}

/** What a problem prints of a working, and of the example before it. */
function inProblem({ shown, parts, example }: Problem): string[] {
  const printed = [shown, ...parts.map((part) => part.shown)].flatMap((one) =>
    one?.kind === 'working' ? one.lines : [],
  );
  return [
    ...printed.flatMap((line) =>
      'say' in line ? [] : [line.left, ...(line.formula ? sides(line.formula) : [])],
    ),
    ...(example
      ? [...inProblem(example), ...example.parts.flatMap(({ method }) => method.flatMap(inStep))]
      : []),
  ];
}

type Step = Problem['parts'][number]['method'][number];

const inStep = (step: Step): string[] => ('say' in step ? [] : sides(step.formula));

/** The letters of both sides of a formula. */
function sides(formula: string): string[] {
  const at = formula.indexOf('=');
  const pi = /\bpi\b/.test(formula) ? ['pi'] : [];
  return [...(at < 0 ? [] : [formula.slice(0, at).trim()]), ...symbolsOf(formula), ...pi];
}

/** The letters in TeX, as formulas write them: `D_1` of `D_{1}`; not those of its commands, or of words in it. */
export function inTex(tex: string): string[] {
  const plain = tex
    .replace(/\\(?:text|operatorname|mathrm|label|VAL)\s*\{[^}]*\}/g, ' ')
    .replace(/\\pi(?![A-Za-z])/g, ' \u03C0 ')
    .replace(/\\[A-Za-z]+/g, ' ');
  return [...plain.matchAll(/\u03C0|(?<![A-Za-z])([A-Za-z])(?![A-Za-z])(?:_\{?([A-Za-z0-9]+)\}?)?/g)].map(
    ([, letter, low]) => (letter === undefined ? 'pi' : low === undefined ? letter : `${letter}_${low}`),
  );
}
