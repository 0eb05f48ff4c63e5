import { type FormulaStep, leftSide, type WorkingStep } from '../calculations/working.js';
import type { Expected } from './expected.js';
import type { FadeStage } from './kind.js';
import type { Shown, ShownLine } from './shown.js';
import type { Source } from './subject.js';

/**
 * As much of a working as is printed for the learner to end: the last result left out, or the last steps. Nothing of
 * it tells an answer of this problem.
 *
 * @param steps the whole working
 * @param expected the answers of this part and of those before it
 * @returns undefined where there is nothing to print
 */
export function faded(
  stage: Exclude<FadeStage, 'bare'>,
  steps: readonly WorkingStep[],
  from: Source,
  expected: readonly Expected[],
): Shown | undefined {
  // The working that is shown whole has other numbers: it belongs to the example.
  if (stage === 'worked') return undefined;
  const answers = new Answers(expected);
  const formulas = steps.flatMap((step) => ('say' in step ? [] : [step]));
  const lines =
    formulas.length > 0 ? formulaLines(formulas, stage, answers) : sentenceLines(steps, from, stage, answers);
  return lines.length === 0 ? undefined : { kind: 'working', numbered: false, lines };
}

/**
 * Of several steps the last half is for the learner, with its rule where nothing else would be left; of one step the
 * result, and then the numbers too.
 */
function formulaLines(steps: readonly FormulaStep[], stage: FadeStage, answers: Answers): ShownLine[] {
  const kept = stage === 'one blank' ? steps.length - 1 : Math.floor(steps.length / 2);
  return steps.map((step, at): ShownLine => {
    const left = leftSide(step.formula);
    const { formula } = step;
    const numbers = answers.tell(Object.values(step.numbers)) ? {} : { numbers: step.numbers };
    if (at < kept)
      return { left, formula, ...numbers, ...(answers.tell([step.result]) ? {} : { result: step.result }) };
    if (stage === 'one blank') return { left, formula, ...numbers };
    return at === 0 || steps.length === 1 ? { left, formula } : { left };
  });
}

function sentenceLines(
  steps: readonly WorkingStep[],
  from: Source,
  stage: FadeStage,
  answers: Answers,
): ShownLine[] {
  const sentences = steps.flatMap((step) => ('say' in step ? [step.say] : []));
  const start = (say: string): ShownLine => ({ say: startOf(say, stage, answers), blank: true });
  if (from.kind === 'found') {
    // Only the first: those after it tell what was found.
    return sentences.slice(0, 1).map(start);
  }
  // Which case is looked at would tell which one holds.
  if (from.kind !== 'run' || (from.run.kind !== 'among' && from.run.kind !== 'decision')) return [];
  return sentences.map(start);
}

/** A sentence up to what it concludes, or, with less of it, up to its first colon; as much as tells no answer. */
function startOf(say: string, stage: FadeStage, answers: Answers): string {
  const ends =
    stage === 'one blank' ? [...say.matchAll(/: |; | = /g)].reverse() : [...say.matchAll(/: /g)].slice(0, 1);
  const starts = ends.map((end) => say.slice(0, end.index + end[0].trimEnd().length));
  return starts.find((start) => !answers.tell([start])) ?? '';
}

/** The answers' own figures, which no printed line may hold. */
class Answers {
  readonly #figures: readonly { readonly value: number; readonly within: number }[];

  constructor(expected: readonly Expected[]) {
    this.#figures = expected.flatMap((one) => {
      if (one.kind === 'number') return [{ value: one.value, within: one.step / 2 + 1e-9 }];
      if (one.kind === 'numbers')
        return one.each.map(({ value, step }) => ({ value, within: step / 2 + 1e-9 }));
      return one.kind === 'moves' ? one.moves.map(({ holes }) => ({ value: holes, within: 1e-9 })) : [];
    });
  }

  /** Whether a text holds one of them. */
  tell(texts: readonly string[]): boolean {
    return texts.some((text) =>
      [...text.replaceAll('−', '-').matchAll(/-?\d+(?:\.\d+)?/g)].some(([figure]) =>
        this.#figures.some(({ value, within }) => Math.abs(Number(figure) - value) <= within),
      ),
    );
  }
}
