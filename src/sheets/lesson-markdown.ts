import MarkdownIt, { type MarkdownIt as Markdown } from 'markdown-it';
import { numberTex } from '../formula/tex.js';
import type { Values } from '../problems/problem.js';
import type { Faults, Written } from './fault.js';
import type { MathsOutput } from './maths.js';
import { type MathsContext, mathsRules } from './maths-rule.js';
import { placeholderRule } from './placeholder-rule.js';
import { inWords } from './words.js';

/** The Markdown of lessons: no HTML of the author's, no links, no pictures. */
export function lessonMarkdown(output: MathsOutput): Markdown {
  return new MarkdownIt({ html: false, linkify: false, typographer: false, xhtmlOut: output === 'mathml' })
    .use(mathsRules, output)
    .use(placeholderRule)
    .disable(['link', 'image', 'autolink', 'reference', 'html_block', 'html_inline']);
}

/** What a formula in an author's text may ask. */
export function mathsContext(
  written: Written,
  { values, faults }: { readonly values: Values; readonly faults: Faults },
): MathsContext {
  return {
    value: (name) => {
      const value = name.split('.').reduce<unknown>(own, values);
      return typeof value === 'number' || typeof value === 'string' ? numberTex(inWords(value)) : undefined;
    },
    fault: (source, position, length, message, hint) => {
      const { start, whole } = findIn(written.text, source);
      faults.add('tex', written, start + (whole ? position : 0), whole ? length : 1, message, hint);
    },
  };
}

/** So much of a formula is looked for, the longest first. */
const STARTS = [80, 40, 20, 10, 5, 2, 1];

/** A formula holds no `{{`, so it stands in the author's text as it does after filling, or at least its start does. */
function findIn(text: string, source: string): { readonly start: number; readonly whole: boolean } {
  for (const kept of [source.length, ...STARTS]) {
    const start = text.indexOf(source.slice(0, kept));
    if (start >= 0) return { start, whole: kept >= source.length };
  }
  return { start: 0, whole: false };
}

function own(value: unknown, key: string): unknown {
  return typeof value === 'object' && value !== null && Object.hasOwn(value, key)
    ? (value as Record<string, unknown>)[key]
    : undefined;
}
