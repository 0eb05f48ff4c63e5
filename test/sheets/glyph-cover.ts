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
    for (const code of openSync(file.from).characterSet) if (inRange(code, range)) cover.add(code);
  }
  return cover;
}

function inRange(code: number, range: string | undefined): boolean {
  return (
    range === undefined ||
    range.split(',').some((piece) => {
      const [from = '', to = from] = piece.trim().replace('U+', '').split('-');
      return code >= Number.parseInt(from, 16) && code <= Number.parseInt(to, 16);
    })
  );
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
