import katex, { type ParseError } from 'katex';

/** Typeset mathematics, or what is wrong with it. */
export type SetMaths = { readonly html: string } | MathsFault;

export interface MathsFault {
  readonly message: string;
  /** Where in the TeX, from 0, and over how many characters. */
  readonly position: number;
  readonly length: number;
}

/** What a formula is made into: HTML to be seen on a page, or MathML for another program. */
export type MathsOutput = 'html' | 'mathml';

/** The same formula stands on every learner's sheet; a class has a few hundred different ones. Characters of HTML. */
const MOST_KEPT = 20_000_000;
const kept = new Map<string, SetMaths>();
let keptSize = 0;

/** Longest formula, in characters; the longest of a lesson that comes with Benchleaf has 90. */
export const LONGEST_FORMULA = 1000;
/** What defines commands, and so may grow without end, and what moves or covers what stands beside the formula. */
const REFUSED =
  /\\(?:[gex]?def|let|futurelet|(?:re)?newcommand|providecommand|global|long|expandafter|noexpand|[hmv]?kern|[hm]skip|hspace|raisebox|rule|[lrc]lap|math[lrc]lap|smash|[hv]?phantom|f?colorbox|textcolor|color|cancel|[bx]cancel|sout|Huge|huge|LARGE|Large|large)(?![A-Za-z])\*?/;

/**
 * TeX as HTML. Only what is seen is made, and it is not hidden from those who hear the page.
 *
 * @param how `display` stands on its own line; `line` is as tall as that, but stands in a line; `inline` is in text
 */
export function setMaths(
  tex: string,
  how: 'display' | 'line' | 'inline' = 'inline',
  output: MathsOutput = 'html',
): SetMaths {
  const key = `${output}:${how}:${tex}`;
  const known = kept.get(key);
  if (known) return known;
  const made = typeset(tex, how, output);
  keptSize += key.length + ('html' in made ? made.html.length : 0);
  if (keptSize > MOST_KEPT) {
    kept.clear();
    keptSize = 0;
  }
  kept.set(key, made);
  return made;
}

/** TeX that the program itself made: a fault in it is a bug. */
export function setOwnMaths(
  tex: string,
  how: 'display' | 'line' | 'inline' = 'inline',
  output: MathsOutput = 'html',
): string {
  const made = setMaths(tex, how, output);
  if ('html' in made) return made.html;
  throw new Error(`${made.message} in ${tex}`);
}

/** Slanted letters and the bar of a size are characters of their own, for which many machines have no typeface. */
const everyday = (mathml: string): string =>
  mathml.replaceAll('<mi>', '<mi mathvariant="normal">').replaceAll('\u2223', '|');

function typeset(tex: string, how: 'display' | 'line' | 'inline', output: MathsOutput): SetMaths {
  if (tex.length > LONGEST_FORMULA)
    return { message: `a formula may have ${LONGEST_FORMULA} characters at most`, position: 0, length: 1 };
  const [refused] = REFUSED.exec(tex) ?? [];
  if (refused !== undefined)
    return {
      message: `${refused} is not for lessons`,
      position: tex.indexOf(refused),
      length: refused.length,
    };
  let doubt: MathsFault | undefined;
  try {
    const html = katex.renderToString(how === 'line' ? `\\displaystyle ${tex}` : tex, {
      displayMode: how === 'display',
      output,
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
    return doubt ?? { html: output === 'html' ? html.replaceAll(' aria-hidden="true"', '') : everyday(html) };
  } catch (error) {
    if (error instanceof RangeError)
      return { message: 'too much stands one inside the other here', position: 0, length: 1 };
    if (!(error instanceof katex.ParseError)) throw error;
    const { rawMessage, position = 0, length = 1 } = error as ParseError;
    return { message: rawMessage, position, length };
  }
}
