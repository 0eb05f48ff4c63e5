import { nearest } from '../diagnostics/suggest.js';
import type { TemplateFault } from './template.js';

type Place = Pick<TemplateFault, 'line' | 'column' | 'length'>;

/** What a reference may call a figure or a formula. */
export interface Labelled extends Place {
  readonly label: string;
  /** Whether it is a label of the author's, which comes before the name of a figure. */
  readonly own: boolean;
}

/** A `{{ref "…"}}` of a text. */
export interface Reference extends Place {
  readonly to: string;
}

/** A label, as an author writes it. */
export const LABEL = /^[a-z][a-z0-9-]{0,39}$/;

const EQUATION = /\\label\s*\{([^}\n]*)\}/g;

/** The formulas on lines of their own that a text names, `$$ … \label{rule}$$`. */
export function equationsIn(text: string): Labelled[] {
  return [...text.matchAll(/\$\$[^$]*\$\$/g)].flatMap(({ index, 0: formula }) =>
    [...formula.matchAll(EQUATION)].map((found): Labelled => {
      const before = text.slice(0, index + found.index).split('\n');
      const place = {
        line: before.length,
        column: (before.at(-1)?.length ?? 0) + 1,
        length: found[0].length,
      };
      return { label: found[1] ?? '', own: true, ...place };
    }),
  );
}

/** What is wrong with the labels of a text, and with what refers to them. */
export function checkReferences(
  labelled: readonly Labelled[],
  references: readonly Reference[],
): TemplateFault[] {
  const faults: TemplateFault[] = [];
  const say = ({ line, column, length }: Place, message: string, hint: string) =>
    faults.push({ rule: 'reference', message, line, column, length, hints: [hint] });
  const called = (label: string) => labelled.filter((one) => one.label === label);
  for (const one of labelled.filter(({ own }) => own)) {
    if (!LABEL.test(one.label)) say(one, `${JSON.stringify(one.label)} cannot be a label`, PLAIN);
    else if (called(one.label).find(({ own }) => own) !== one)
      say(one, `something else is labelled ${one.label}`, 'Choose another label.');
  }
  for (const reference of references) {
    const found = called(reference.to);
    if (found.length === 0) say(reference, unknown(reference.to), hintFor(reference.to, labelled));
    else if (found.length > 1 && found.every(({ own }) => !own))
      say(
        reference,
        `there are ${found.length} figures called ${reference.to}`,
        `Give the one that you mean a label: {{figure "${reference.to}" label="…"}}.`,
      );
  }
  return faults;
}

const PLAIN = 'Use small letters, figures and hyphens, starting with a letter.';

/** What is said of a reference that leads nowhere. */
export const unknown = (to: string): string =>
  `there is no figure or formula called ${JSON.stringify(to)} in this lesson`;

function hintFor(to: string, labelled: readonly Labelled[]): string {
  const known = [...new Set(labelled.map(({ label }) => label))];
  const near = nearest(to, known);
  if (near !== undefined) return `Did you mean ${near}?`;
  return known.length > 0
    ? `Known here: ${known.join(', ')}.`
    : 'Name a figure, or a formula with \\label{…}.';
}
