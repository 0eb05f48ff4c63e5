import { createRequire } from 'node:module';
import { type Face, FIGURES, faces, TEXT } from '../../src/sheets/faces.js';

const { openSync } = createRequire(import.meta.url)('fontkit') as {
  openSync(path: string): { readonly characterSet: readonly number[] };
};

/** Every character that each text face can print, read from the font files as a browser would choose them. */
export function coverOf(wanted: Pick<Face, 'family' | 'weight' | 'italic'>): Set<number> {
  const cover = new Set<number>();
  for (const { family, weight, italic, file, range } of faces) {
    if (family !== wanted.family || weight !== wanted.weight || italic !== wanted.italic) continue;
    const asked = range === undefined ? undefined : new Set(codesIn(range));
    for (const code of charactersOf(file.from)) if (asked?.has(code) ?? true) cover.add(code);
  }
  return cover;
}

/** The code of every character in a font file. */
export const charactersOf = (path: string): readonly number[] => openSync(path).characterSet;

/** Every code in ranges, written `0020-007E 00A0` or as CSS has them. */
export function codesIn(ranges: string): number[] {
  return ranges.split(/[\s,]+/).flatMap((range) => {
    const [from = 0, to = from] = range
      .replace('U+', '')
      .split('-')
      .map((code) => Number.parseInt(code, 16));
    return Array.from({ length: to - from + 1 }, (_, i) => from + i);
  });
}

/** The faces that texts are set in. */
export const textFaces = [
  ...new Map(
    faces
      .filter(({ family }) => family === TEXT || family === FIGURES)
      .map(({ family, weight, italic }) => [`${family} ${weight} ${italic}`, { family, weight, italic }]),
  ).values(),
];

/** What all of them can print. */
export function commonCover(): number[] {
  const [first = new Set<number>(), ...rest] = textFaces.map(coverOf);
  return [...first].filter((code) => rest.every((cover) => cover.has(code))).sort((a, b) => a - b);
}
