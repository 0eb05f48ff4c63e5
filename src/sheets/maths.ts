import katex, { type ParseError } from 'katex';

/** Typeset mathematics, or what is wrong with it. */
export type SetMaths = { readonly html: string } | MathsFault;

export interface MathsFault {
  readonly message: string;
  /** Where in the TeX, from 0, and over how many characters. */
  readonly position: number;
  readonly length: number;
}

/** The same formula stands on every learner's sheet; a class has a few hundred different ones. */
const MOST_KEPT = 2000;
const kept = new Map<string, SetMaths>();

/**
 * TeX as HTML. Only what is seen is made, and it is not hidden from those who hear the page.
 *
 * @param how `display` stands on its own line; `line` is as tall as that, but stands in a line; `inline` is in text
 */
export function setMaths(tex: string, how: 'display' | 'line' | 'inline' = 'inline'): SetMaths {
  const key = `${how}:${tex}`;
  const known = kept.get(key);
  if (known) return known;
  if (kept.size >= MOST_KEPT) kept.clear();
  const made = typeset(how === 'line' ? `\\displaystyle ${tex}` : tex, how === 'display');
  kept.set(key, made);
  return made;
}

/** TeX that the program itself made: a fault in it is a bug. */
export function setOwnMaths(tex: string, how: 'display' | 'line' | 'inline' = 'inline'): string {
  const made = setMaths(tex, how);
  if ('html' in made) return made.html;
  throw new Error(`${made.message} in ${tex}`);
}

function typeset(tex: string, displayMode: boolean): SetMaths {
  let doubt: MathsFault | undefined;
  try {
    const html = katex.renderToString(tex, {
      displayMode,
      output: 'html',
      throwOnError: true,
      trust: ({ command }) => {
        doubt ??= {
          message: `${command} is not for lessons`,
          position: tex.indexOf(command),
          length: command.length,
        };
        return false;
      },
      maxExpand: 200,
      maxSize: 20,
      macros: {},
      strict: (_code, message, token) => {
        const { start = 0, end = 1 } = token?.loc ?? {};
        doubt ??= { message, position: start, length: end - start };
        return 'ignore';
      },
    });
    return doubt ?? { html: html.replaceAll(' aria-hidden="true"', '') };
  } catch (error) {
    if (!(error instanceof katex.ParseError)) throw error;
    const { rawMessage, position = 0, length = 1 } = error as ParseError;
    return { message: rawMessage, position, length };
  }
}
