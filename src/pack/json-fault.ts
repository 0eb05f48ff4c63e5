const TOKEN =
  /\s*(?:("[^"\\\0-\x1f]*(?:\\(?:["\\/bfnrt]|u[\da-f]{4})[^"\\\0-\x1f]*)*")|(-?(?:0|[1-9]\d*)(?:\.\d+)?(?:e[+-]?\d+)?|true|false|null)|([{}[\],:]))/iy;

type Wanted = 'value' | 'value or end' | 'key' | 'key or end' | 'colon' | 'comma or end' | 'nothing';

/** Where a text stops being JSON, in characters from 0; its length where more should come, or nothing is wrong. */
export function faultInJson(text: string): number {
  const open: ('{' | '[')[] = [];
  let wanted: Wanted = 'value';
  let at = 0;
  for (;;) {
    TOKEN.lastIndex = at;
    const [all = '', words, plain, sign] = TOKEN.exec(text) ?? [];
    const start = at + (all === '' ? (/\S/.exec(text.slice(at, at + 1000))?.index ?? 0) : all.search(/\S/));
    const next: Wanted | undefined = all === '' ? undefined : after(wanted, { words, plain, sign }, open);
    if (next === undefined) return all === '' && text.slice(at).trim() === '' ? text.length : start;
    wanted = next;
    at += all.length;
  }
}

interface Token {
  readonly words: string | undefined;
  readonly plain: string | undefined;
  readonly sign: string | undefined;
}

/** What is wanted after a token; nothing where it should not be there. */
function after(wanted: Wanted, { words, plain, sign }: Token, open: ('{' | '[')[]): Wanted | undefined {
  const value = wanted === 'value' || wanted === 'value or end';
  const key = wanted === 'key' || wanted === 'key or end';
  if (value && (words !== undefined || plain !== undefined)) return ended(open);
  if (key && words !== undefined) return 'colon';
  if (value && (sign === '{' || sign === '[')) {
    open.push(sign);
    return sign === '{' ? 'key or end' : 'value or end';
  }
  if (wanted === 'colon' && sign === ':') return 'value';
  if (wanted === 'comma or end' && sign === ',') return open.at(-1) === '{' ? 'key' : 'value';
  const mayEnd = wanted.endsWith('end') && sign === (open.at(-1) === '{' ? '}' : ']');
  if (!mayEnd) return undefined;
  open.pop();
  return ended(open);
}

const ended = (open: readonly string[]): Wanted => (open.length > 0 ? 'comma or end' : 'nothing');
