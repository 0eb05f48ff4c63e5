import type { ProblemDeclaration } from './schema.js';

/** How much of its working a problem is printed with, from all of it to none. */
export const fadeStages = ['worked', 'one blank', 'last steps blank', 'bare'] as const;

export type FadeStage = (typeof fadeStages)[number];

/** A kind of problem with its key in the lesson. */
export interface ProblemKind {
  /** Its key; where it is asked several times, with the time after it: `blank.2`. */
  readonly name: string;
  readonly declared: ProblemDeclaration;
  /** How much of the working is printed with it; `bare` where this is left out. */
  readonly fade?: FadeStage;
}

/** The key in the lesson of a kind, or of a problem that was drawn. */
export const keyOf = ({ name }: { readonly name: string }): string => name.split('.')[0] ?? name;
