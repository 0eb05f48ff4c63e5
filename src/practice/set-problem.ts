import type { WorkingStep } from '../calculations/working.js';
import type { Part, Problem } from '../problems/problem.js';
import { Faults } from '../sheets/fault.js';
import type { Templates } from '../sheets/fill.js';
import type { SheetStyle } from '../sheets/model.js';
import { mathsStep } from '../sheets/portable-step.js';
import { portableText } from '../sheets/portable-text.js';
import { LEVELS, letterOf } from '../sheets/problem-marks.js';
import { type ShownView, shownView } from '../sheets/shown-view.js';

/** A problem with its words as HTML, as a practice page shows it. Formulas are MathML. */
export interface SetProblem {
  readonly name: string;
  /** `two steps`, `think first`, or empty. */
  readonly level: string;
  readonly ask: string;
  readonly shown?: ShownView;
  readonly parts: readonly SetPart[];
  readonly example?: SetProblem;
}

export interface SetPart {
  /** `(a)`; empty where there is one part. */
  readonly letter: string;
  readonly ask: string;
  readonly shown?: ShownView;
  readonly options: readonly { readonly letter: string; readonly text: string }[];
  readonly part: Part;
}

/** What the words of a problem are set with. */
export interface ProblemSetting {
  /** The lesson's name, for messages. */
  readonly lesson: string;
  readonly style: SheetStyle;
  readonly templates: Templates;
}

/**
 * Sets the words of a problem.
 *
 * @throws {ContentError} for words that cannot be set
 */
export function setProblem(problem: Problem, { lesson, style, templates }: ProblemSetting): SetProblem {
  const faults = new Faults();
  const written = { file: lesson, line: undefined, about: `problem ${problem.name}` };
  const figure = ({ svg }: { readonly svg: string }): string => `<div class="figure">${svg}</div>`;
  const set = (text: string): string =>
    portableText(
      { ...written, text },
      { values: problem.values, style, templates, faults, figure },
    ).xhtml.replaceAll('\u202F', '\u00A0');
  const { name, level, ask, shown, example, parts } = problem;
  const made: SetProblem = {
    name,
    level: LEVELS[level],
    ask: set(ask),
    ...(shown ? { shown: shownView(shown, 'mathml') } : {}),
    ...(example ? { example: setProblem(example, { lesson, style, templates }) } : {}),
    parts: parts.map((part, at) => ({
      letter: letterOf(at, problem),
      ask: set(part.ask),
      ...(part.shown ? { shown: shownView(part.shown, 'mathml') } : {}),
      options: (part.options ?? []).map((option) => ({ letter: option.letter, text: set(option.text) })),
      part,
    })),
  };
  faults.demandNone();
  return made;
}

/** A step of a working: words, or a formula as MathML and what it comes to. */
export type SetStep = { readonly say: string } | { readonly mathml: string; readonly result: string };

export const setStep = (step: WorkingStep): SetStep => ('say' in step ? step : mathsStep(step));
