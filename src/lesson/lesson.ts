import type { WorkingStep } from '../calculations/working.js';
import type { ProblemKind } from '../problems/kind.js';
import type { CheckLine, Values } from '../problems/problem.js';

/** A lesson that has been read and checked, for one kit and one system of units. */
export interface Lesson {
  readonly file: string;
  /** Its folder: `06-blank-and-pinion-sizes`. */
  readonly name: string;
  /** From the folder's name; none for a folder without one. */
  readonly number: number | undefined;
  readonly title: string;
  readonly part: string;
  readonly level: number;
  /** What should have been learnt before, in words. */
  readonly needs: readonly string[];
  readonly goals: readonly string[];
  /** Sentences for the caution box, three at most; the general strip is the sheet's own. */
  readonly cautions: readonly string[];
  /** What the text may name: the example's values, the kit's, and what the lesson's workings found. */
  readonly values: Values;
  /** Workings that the text asks to be set out, by `exampleKey`. */
  readonly workings: ReadonlyMap<string, WorkedExample>;
  readonly problems: readonly ProblemKind[];
  /** Markdown with `{{…}}`, each name and helper in it known. */
  readonly body: string;
  /** Line of the file on which the body starts. */
  readonly bodyLine: number;
  /** Where the lesson's numbers are proven, each once, for the list at its end. */
  readonly sources: readonly string[];
}

/** A working's place among those set out: its name or its calculation's, and what of it is shown. */
export function exampleKey(name: string, show: string): string {
  return show === '' ? name : `${name}: ${show}`;
}

/** A worked example as a handout prints it. */
export interface WorkedExample {
  readonly title: string;
  /** What is given: `module`, `m`, `0.8 mm`. */
  readonly given: readonly NamedValue[];
  readonly steps: readonly WorkingStep[];
  readonly found: readonly NamedValue[];
  readonly checks: readonly CheckLine[];
}

/** A value with its name and symbol, as the reader is shown it. */
export interface NamedValue {
  readonly name: string;
  /** As formulas write it, `d_a`; empty when it has none. */
  readonly symbol: string;
  readonly value: string;
}
