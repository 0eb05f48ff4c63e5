import type { TemplateDelegate } from 'handlebars';
import type { Values } from '../problems/problem.js';
import { type Faults, offsetOf, type Written } from './fault.js';
import type { Filling } from './helpers.js';
import type { SheetStyle } from './model.js';

/** What is put in for `{{worked}}`, `{{figure}}` and `{{problems}}`: HTML, or undefined after a fault. */
export interface Blocks {
  worked(name: string, show: string, fail: Fail): string;
  figure(name: string, given: Record<string, unknown>, fail: Fail): string;
  problems(fail: Fail): string;
}

/** Says what is wrong at the place that is being filled. */
export type Fail = (message: string, hint: string, rule?: string) => string;

/** A text with its values in; its blocks stand as placeholders, each a line of its own. */
export interface Filled {
  readonly text: string;
  readonly blocks: readonly string[];
  /** What `{{ref}}` asks for, by the number in its mark. */
  readonly references: readonly Reference[];
}

/** A reference, whose number is known when the whole text is set. */
export interface Reference {
  readonly to: string;
  /** Says what is wrong, at its place. */
  readonly fail: Fail;
}

/** A text with `{{…}}` as a template. @throws {Error} one that Handlebars cannot read */
export type Templates = (text: string) => TemplateDelegate;

/** What a text is filled by. */
export interface Filler {
  readonly templates: Templates;
  readonly blocks?: Blocks;
  readonly faults: Faults;
}

/** Marks a placeholder; nobody's text may hold them. A number stands between them, and `ref` before that of a reference. */
export const MARKS = { open: '\uE000', close: '\uE001' } as const;

/**
 * Puts the values into a text with `{{…}}`.
 *
 * @param values what the text may name; plain data
 * @param templates makes a template of a text
 * @param blocks makes the blocks; none in a text that has none
 * @param faults gathers what is wrong, with its place
 */
export function fillTemplate(
  written: Written,
  values: Values,
  style: SheetStyle,
  { templates, blocks, faults }: Filler,
): Filled {
  const { text } = written;
  if (!text.includes('{{')) return { text: unmarked(text), blocks: [], references: [] };
  const made: string[] = [];
  const references: Reference[] = [];
  const filling: Filling = {
    style,
    fail: ({ start, end }, message, hint, rule = 'value') => {
      const offset = offsetOf(text, start);
      faults.add(
        rule,
        written,
        offset,
        start.line === end.line ? end.column - start.column : 1,
        message,
        hint,
      );
      return '';
    },
    block: ({ start, end }, make) => {
      const alone = text
        .split('\n')
        .slice(start.line - 1, end.line)
        .join('\n')
        .trim();
      if (!blocks || !/^\{\{[^{}]*\}\}$/.test(alone))
        return filling.fail({ start, end }, 'this may not stand inside a text', 'Give it a line of its own.');
      made.push(make(blocks));
      return `${MARKS.open}${made.length - 1}${MARKS.close}`;
    },
    reference: (place, to) => {
      references.push({ to, fail: (...fault) => filling.fail(place, ...fault) });
      return `${MARKS.open}ref${references.length - 1}${MARKS.close}`;
    },
  };
  try {
    const filled = templates(unmarked(text))(values, { data: { filling } });
    return { text: filled, blocks: made, references };
  } catch (error) {
    const { message, lineNumber, column = 0 } = error as Error & { lineNumber?: number; column?: number };
    const line = lineNumber ?? Number(/^Parse error on line (\d+)/.exec(message)?.[1]);
    if (!line) throw error;
    const what = message
      .replace(/^Parse error[^]*/, 'the braces here cannot be read')
      .replace(/ - \d+:\d+$/, '');
    faults.add(
      'template',
      written,
      offsetOf(text, { line, column }),
      1,
      what,
      'Check what is in the braces.',
    );
    return { text: '', blocks: [], references: [] };
  }
}

/** A text that holds no marks of placeholders, as its template is made of it. */
export const unmarked = (text: string): string => text.replace(/[\uE000\uE001]/g, '\uFFFD');
