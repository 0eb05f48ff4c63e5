import Handlebars from 'handlebars';
import type { Values } from '../problems/problem.js';
import { type Faults, offsetOf, type Written } from './fault.js';
import { type Filling, helpers } from './helpers.js';
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
}

/** Marks a placeholder; nobody's text may hold them. */
export const MARKS = { open: '\uE000', close: '\uE001' } as const;

const handlebars = Handlebars.create();
for (const [name, helper] of Object.entries(helpers)) handlebars.registerHelper(name, helper);
const KNOWN = Object.fromEntries(Object.keys(helpers).map((name) => [name, true]));
/** Of Handlebars' own only `if` and `unless` are for lessons. */
const REFUSED = { each: false, with: false, log: false, lookup: false };

/** Lessons and problems have a few hundred texts; a shop full of courses may have more. */
const MOST_KEPT = 2000;
const kept = new Map<string, Handlebars.TemplateDelegate>();

/**
 * Puts the values into a text with `{{…}}`.
 *
 * @param values what the text may name; plain data
 * @param blocks makes the blocks; none in a text that has none
 * @param faults gathers what is wrong, with its place
 */
export function fillTemplate(
  written: Written,
  values: Values,
  style: SheetStyle,
  { blocks, faults }: { readonly blocks?: Blocks; readonly faults: Faults },
): Filled {
  const { text } = written;
  if (!text.includes('{{')) return { text: unmarked(text), blocks: [] };
  const made: string[] = [];
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
  };
  try {
    const filled = templateOf(unmarked(text))(values, { data: { filling } });
    return { text: filled, blocks: made };
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
    return { text: '', blocks: [] };
  }
}

function templateOf(text: string): Handlebars.TemplateDelegate {
  const known = kept.get(text);
  if (known) return known;
  if (kept.size >= MOST_KEPT) kept.clear();
  const tree = handlebars.parse(text);
  new ShowBareNames().accept(tree);
  const template = handlebars.compile(tree, {
    noEscape: true, // Markdown comes after this, and escapes
    knownHelpersOnly: true,
    knownHelpers: { ...KNOWN, ...REFUSED } as unknown as CompileOptions['knownHelpers'] & object,
  });
  kept.set(text, template);
  return template;
}

/** `{{teeth}}` becomes `{{shown teeth}}`, so that a count, a word, true and false all print as a reader expects. */
class ShowBareNames extends Handlebars.Visitor {
  override MustacheStatement(statement: hbs.AST.MustacheStatement): void {
    const { path, params, loc } = statement;
    if (
      path.type !== 'PathExpression' ||
      params.length > 0 ||
      Object.hasOwn(KNOWN, (path as hbs.AST.PathExpression).original)
    )
      return;
    statement.params = [path];
    statement.path = {
      type: 'PathExpression',
      data: false,
      depth: 0,
      parts: ['shown'],
      original: 'shown',
      loc,
    } as hbs.AST.PathExpression;
  }
}

const unmarked = (text: string): string => text.replace(/[\uE000\uE001]/g, '\uFFFD');
