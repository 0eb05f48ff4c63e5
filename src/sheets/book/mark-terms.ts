import { type Term, terms } from './terms.js';

/** Where a word stands in the book. */
export interface Mention {
  readonly anchor: string;
  /** The lesson marks it there, since it explains it. */
  readonly main: boolean;
}

/** A word of the trade or of a lesson, and all its places in their order. */
export interface Entry {
  readonly word: string;
  /** None for a word that only a lesson has marked. */
  readonly term?: Term;
  readonly mentions: Mention[];
}

/** What a page is made of: a drawing, what stands in every lesson, a tag, a text. */
const PIECES =
  /<svg\b[^]*?<\/svg>|<p class="strip">[^]*?<\/p>|<footer class="sources">[^]*?<\/footer>|<[^>]*>|[^<]+/g;
/** What a lesson marks as a term: a word or three in bold, not the first words of a sentence or a rule. */
const MARKED = /^(?!(?:and|or|the|an?|to|not?|by|in|of|all|each|every) )\p{Ll}[\p{L}-]*(?: [\p{L}-]+){0,2}$/u;
const HEADWORD = /^\p{Lu}[\p{L}-]*(?: [\p{L}-]+){0,2}$/u;

/** Finds the words of the trade in the lessons of a book, and gives each an anchor. */
export class TermMarks {
  readonly #entries = new Map<string, Entry>();
  #count = 0;

  /** The words that stand somewhere, in the order of the alphabet. */
  get entries(): Entry[] {
    return [...this.#entries.values()].sort((a, b) => a.word.localeCompare(b.word, 'en-GB'));
  }

  /** The same HTML of one lesson with an anchor at each word; formulas and drawings are left alone. */
  mark(html: string): string {
    const pieces = html.match(PIECES) ?? [];
    const known = new Known(pieces.filter((piece) => !piece.startsWith('<')).join(' '));
    let formula = 0;
    return pieces
      .map((piece, at) => {
        if (piece.startsWith('<')) {
          formula = depthAfter(piece, formula);
          return piece;
        }
        if (formula > 0 || piece.trim() === '') return piece;
        const bold = pieces[at - 1] === '<strong>' && pieces[at + 1] === '</strong>';
        const follows = bold ? (pieces[at + 2] ?? '') : '';
        const heads = /^<(?:li|td|th)\b/.test(pieces[at - 2] ?? '');
        const own = bold && isMarked(piece, heads, follows) ? piece.replace(/\s+/g, ' ') : undefined;
        return this.#markText(piece, known, bold, own);
      })
      .join('');
  }

  #markText(text: string, known: Known, bold: boolean, own: string | undefined): string {
    if (own !== undefined && known.whole(own) === undefined)
      return this.#anchored(text, { word: lowered(own) }, true);
    return text.replace(known.pattern, (said: string, ...rest: unknown[]) => {
      const term = known.termOf(rest);
      return term ? this.#anchored(said, { word: term.term, term }, bold && said === text) : said;
    });
  }

  #anchored(said: string, { word, term }: Pick<Entry, 'word' | 'term'>, main: boolean): string {
    this.#count += 1;
    const anchor = `term-${this.#count}`;
    const entry = this.#entries.get(word) ?? { word, ...(term ? { term } : {}), mentions: [] };
    entry.mentions.push({ anchor, main });
    this.#entries.set(word, entry);
    return `<span id="${anchor}">${said}</span>`;
  }
}

/** The terms that may stand in one lesson, as one pattern. */
class Known {
  readonly pattern: RegExp;
  readonly #terms: readonly Term[];

  constructor(text: string) {
    const forms = terms
      .filter(({ beside }) => !beside || new RegExp(`\\b(?:${beside.join('|')})`, 'i').test(text))
      .flatMap((term) => term.forms.map((form) => ({ term, form })))
      .sort((a, b) => b.form.length - a.form.length);
    this.#terms = forms.map(({ term }) => term);
    const any = forms.map(({ form }) => `(${form.replaceAll(' ', '\\s+')})`).join('|');
    this.pattern = new RegExp(`(?<![\\p{L}\\p{N}])(?:${any})s?(?![\\p{L}\\p{N}])`, 'giu');
  }

  /** Which term a match is of, by the group that it fell into. */
  termOf(groups: readonly unknown[]): Term | undefined {
    return this.#terms[groups.slice(0, this.#terms.length).findIndex((group) => group !== undefined)];
  }

  /** The term that a marked word is as a whole. */
  whole(word: string): Term | undefined {
    const [match] = [...word.matchAll(this.pattern)];
    return match?.[0] === word ? this.termOf(match.slice(1)) : undefined;
  }
}

const lowered = (word: string): string => word.replace(/^\p{Lu}(?=\p{Ll})/u, (first) => first.toLowerCase());

/** A word in bold that a lesson explains; with a capital only where it heads its explanation, as in a list. */
function isMarked(word: string, heads: boolean, follows: string): boolean {
  return MARKED.test(word.trim()) || (heads && HEADWORD.test(word.trim()) && /^[:,]/.test(follows));
}

/** How deep in a formula what comes after a tag is; 0 is outside. */
function depthAfter(tag: string, depth: number): number {
  if (depth === 0) return /^<span class="katex[" ]/.test(tag) ? 1 : 0;
  if (tag.startsWith('<span')) return depth + 1;
  return tag === '</span>' ? depth - 1 : depth;
}
