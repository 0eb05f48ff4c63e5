import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

const require = createRequire(import.meta.url);

/** One font file as the style sheet names it, and where it is taken from. */
export interface FontFile {
  readonly name: string;
  readonly from: string;
}

/** A face of a family in CSS: one file, and the characters that it is asked for. */
export interface Face {
  readonly family: string;
  readonly weight: 400 | 600 | 700;
  readonly italic: boolean;
  readonly file: FontFile;
  /** As `unicode-range` has it; none for all that the file has. */
  readonly range?: string;
}

/** The families that sheets are set in; figures ask for theirs by name. */
export const TEXT = 'Benchleaf Text';
export const FIGURES = 'Benchleaf Figures';

const SUBSETS = ['latin', 'latin-ext', 'vietnamese', 'greek', 'cyrillic', 'cyrillic-ext'] as const;

const text: readonly Face[] = [
  ...sourceFaces(TEXT, 'source-serif-4', 400, false),
  ...sourceFaces(TEXT, 'source-serif-4', 400, true),
  ...sourceFaces(TEXT, 'source-serif-4', 600, false),
  ...sourceFaces(FIGURES, 'source-sans-3', 400, false),
  ...sourceFaces(FIGURES, 'source-sans-3', 600, false),
];

/** Signs and letters that the text faces lack, from faces that have them. */
const SIGNS: readonly { readonly file: FontFile; readonly range: string }[] = [
  // → √ ∞ ∠ ≈ ≤ ≥
  { file: katexFont('KaTeX_Main-Regular'), range: 'U+2192,U+221A,U+221E,U+2220,U+2248,U+2264-2265' },
  // ⌀
  {
    file: packaged('@fontsource/noto-sans-symbols', 'noto-sans-symbols-symbols-400-normal'),
    range: 'U+2300',
  },
  // Names that are written from right to left.
  {
    file: packaged('@fontsource/noto-sans-hebrew', 'noto-sans-hebrew-hebrew-400-normal'),
    range: 'U+0591-05C7,U+05D0-05EA,U+05EF-05F4',
  },
  // With the marks that part and join letters, and Allah in one sign; not with marks that turn text round.
  {
    file: packaged('@fontsource/noto-sans-arabic', 'noto-sans-arabic-arabic-400-normal'),
    range: 'U+0606-061B,U+061D-06DC,U+06DE-06FF,U+0750-077F,U+200C-200D,U+FDF2',
  },
  // ≠ ✓
  { file: packaged('@fontsource/noto-sans-math', 'noto-sans-math-latin-400-normal'), range: 'U+2260,U+2713' },
];

const signs = [
  ...new Map(
    text.map(({ family, weight, italic }) => [`${family}${weight}${italic}`, { family, weight, italic }]),
  ).values(),
].flatMap((face) => SIGNS.map((sign): Face => ({ ...face, ...sign })));

/** Letters and figures in formulas come from the text face, all else from KaTeX's own. */
const LETTERS = 'U+0021-007E,U+00A0-00FF,U+2009';
const UPRIGHT = `${LETTERS},U+00B1,U+00D7,U+00F7,U+2212,U+200B`;
const maths: readonly Face[] = [
  { family: 'KaTeX_Main', weight: 400, italic: false, file: katexFont('KaTeX_Main-Regular') },
  {
    family: 'KaTeX_Main',
    weight: 400,
    italic: false,
    file: sourceFile('source-serif-4', 'latin', 400, false),
    range: UPRIGHT,
  },
  { family: 'KaTeX_Main', weight: 700, italic: false, file: katexFont('KaTeX_Main-Bold') },
  { family: 'KaTeX_Main', weight: 400, italic: true, file: katexFont('KaTeX_Main-Italic') },
  { family: 'KaTeX_Math', weight: 400, italic: true, file: katexFont('KaTeX_Math-Italic') },
  {
    family: 'KaTeX_Math',
    weight: 400,
    italic: true,
    file: sourceFile('source-serif-4', 'latin', 400, true),
    range: 'U+0041-005A,U+0061-007A',
  },
  {
    family: 'KaTeX_Math',
    weight: 400,
    italic: true,
    file: sourceFile('source-serif-4', 'greek', 400, true),
    range: 'U+03C0',
  },
  { family: 'KaTeX_AMS', weight: 400, italic: false, file: katexFont('KaTeX_AMS-Regular') },
  ...[1, 2, 3, 4].map(
    (size): Face => ({
      family: `KaTeX_Size${size}`,
      weight: 400,
      italic: false,
      file: katexFont(`KaTeX_Size${size}-Regular`),
    }),
  ),
];

/** Every face of the sheets. Of two with the same character the later one is used. */
export const faces: readonly Face[] = [...text, ...signs, ...maths];

function sourceFaces(family: string, font: string, weight: 400 | 600, italic: boolean): Face[] {
  const ranges = require(`@fontsource/${font}/unicode.json`) as Readonly<Record<string, string>>;
  return SUBSETS.map((subset) => ({
    family,
    weight,
    italic,
    file: sourceFile(font, subset, weight, italic),
    range: ranges[subset] ?? '',
  }));
}

function sourceFile(font: string, subset: string, weight: number, italic: boolean): FontFile {
  return packaged(`@fontsource/${font}`, `${font}-${subset}-${weight}-${italic ? 'italic' : 'normal'}`);
}

function packaged(pack: string, file: string): FontFile {
  return {
    name: `${file}.woff2`,
    from: join(dirname(require.resolve(`${pack}/package.json`)), 'files', `${file}.woff2`),
  };
}

function katexFont(font: string): FontFile {
  return { name: `${font}.woff2`, from: join(katexFolder(), 'fonts', `${font}.woff2`) };
}

/** Where KaTeX keeps its style sheet and fonts; of the same release as the code. */
export function katexFolder(): string {
  return dirname(require.resolve('katex/dist/katex.min.css'));
}
