import type { Env, MarkdownIt, StateBlock, StateInline } from 'markdown-it';
import { LONGEST_FORMULA, type MathsOutput, setMaths } from './maths.js';
import type { Numbered } from './numbering.js';

/** What the rules for mathematics ask of the text that they stand in. */
export interface MathsContext {
  /** The plain number of `\VAL{name}`; undefined when there is none. */
  value(name: string): string | undefined;
  /** Numbers a formula that the author has named; none where formulas have no numbers. */
  number?(label: string): Numbered;
  /** @param source the piece of the text that is wrong, with its `$` signs, and where in that */
  fault(source: string, position: number, length: number, message: string, hint: string): void;
}

const HINT = 'Check the commands and brackets between the $ signs.';

/** `$…$` in a line, and `$$…$$` on lines of its own. */
export function mathsRules(md: MarkdownIt, output: MathsOutput = 'html'): void {
  md.inline.ruler.after('escape', 'maths', inline);
  md.block.ruler.before('fence', 'maths', block, { alt: ['paragraph', 'blockquote', 'list'] });
  md.renderer.rules.maths_inline = (tokens, at, _, env) =>
    withStop(
      set(tokens[at]?.content ?? '', '$', { how: 'inline', output }, contextIn(env)),
      tokens[at]?.info,
    );
  md.renderer.rules.maths_block = (tokens, at, _, env) => {
    const context = contextIn(env);
    const content = tokens[at]?.content ?? '';
    const label = context.number && LABEL.exec(content);
    const formula = set(content, '$$', { how: 'display', output }, context);
    if (!label) return `<p class="display">${formula}</p>\n`;
    const { anchor, number } = (context.number as (label: string) => Numbered)(label[1] ?? '');
    return `<p class="display numbered" id="${anchor}">${formula} <span class="equation-number">(${number})</span></p>\n`;
  };
}

/** A stop after a symbol never begins a line, as it might: a browser breaks after whatever is no text. */
function withStop(formula: string, stop = ''): string {
  const breaks = formula.split('katex-base').length > 2;
  return stop === '' || breaks ? formula + stop : `<span class="whole">${formula}${stop}</span>`;
}

/** The name of a formula, `\label{rule}`. */
const LABEL = /\\label\s*\{([^}]*)\}/;

const STOP = /^[.,;:?)”’]+/;

const contextIn = (env: Env | undefined): MathsContext => env?.maths as MathsContext;

function inline(state: StateInline, silent: boolean): boolean {
  if (state.src[state.pos] !== '$') return false;
  const end = closing(state.src, state.pos + 1);
  const content = state.src.slice(state.pos + 1, end);
  if (end < 0 || content.trim() !== content || content === '') {
    if (silent) return false;
    contextIn(state.env).fault(
      state.src.slice(state.pos),
      0,
      1,
      'this $ has no partner',
      'Close the formula with $ right after its last sign, or write \\$ for the sign itself.',
    );
    return false;
  }
  const [stop = ''] = STOP.exec(state.src.slice(end + 1)) ?? [];
  if (!silent) {
    const token = state.push('maths_inline', '', 0);
    token.content = content;
    token.info = stop;
  }
  state.pos = end + 1 + stop.length;
  return true;
}

/** Where the next `$` stands that is not `\$`, or -1. */
function closing(text: string, from: number): number {
  for (let at = from; at < text.length; at++) {
    if (text[at] === '\\') at++;
    else if (text[at] === '$') return at;
  }
  return -1;
}

function block(state: StateBlock, first: number, last: number, silent: boolean): boolean {
  const line = (n: number): string =>
    state.src.slice((state.bMarks[n] ?? 0) + (state.tShift[n] ?? 0), state.eMarks[n]);
  const opening = line(first).trim();
  if (!opening.startsWith('$$')) return false;
  let end = first;
  let content = opening.slice(2);
  for (let tail = content; !tail.endsWith('$$'); tail = line(end).trimEnd()) {
    end += 1;
    if (end >= last || content.length > LONGEST_FORMULA) return false;
    content += `\n${line(end)}`;
  }
  if (silent) return true;
  const token = state.push('maths_block', '', 0);
  token.content = content.trimEnd().slice(0, -2);
  token.block = true;
  token.map = [first, end + 1];
  state.line = end + 1;
  return true;
}

interface Setting {
  readonly how: 'inline' | 'display';
  readonly output: MathsOutput;
}

/** Puts the numbers into TeX for its `\VAL{name}`. */
export function withValues(
  tex: string,
  value: (name: string, call: string, offset: number) => string,
): string {
  return tex.replace(/\\VAL\s*\{([^}]*)\}/g, (call: string, name: string, offset: number) =>
    value(name.trim(), call, offset),
  );
}

function set(content: string, sign: '$' | '$$', { how, output }: Setting, context: MathsContext): string {
  const source = `${sign}${content}${sign}`;
  let known = true;
  const tex = withValues(content, (name, call, offset) => {
    const value = context.value(name);
    if (value !== undefined) return value;
    known = false;
    context.fault(
      source,
      sign.length + offset,
      call.length,
      `there is no number called "${name}"`,
      'Name a number that the lesson knows.',
    );
    return '0';
  });
  const named = how === 'display' && context.number !== undefined;
  // Blotted out, so that all else keeps its place.
  const unnamed = named ? tex.replace(LABEL, (label) => ' '.repeat(label.length)) : tex;
  const made = setMaths(unnamed, how, output);
  if ('html' in made) return made.html;
  // Numbers that were put in have moved what comes after them.
  if (known)
    context.fault(
      source,
      sign.length + (tex === content ? made.position : 0),
      made.length,
      made.message,
      HINT,
    );
  return '';
}
