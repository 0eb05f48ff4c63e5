import { copyFile, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { type Face, faces, katexFolder } from './faces.js';
import { TEMPLATES } from './templates.js';

/** In this order: what is special comes after what is general. */
const STYLES = [
  'page',
  'text',
  'maths',
  'working',
  'handout',
  'problems',
  'key',
  'card',
  'card-sheet',
  'class',
  'reference',
  'template',
  'book',
] as const;

/**
 * Writes what every sheet refers to into the folder of its HTML: `benchleaf.css`, and the fonts.
 *
 * @throws {Error} when the folder cannot be written to
 */
export async function copyAssets(folder: string): Promise<void> {
  const files = new Map(faces.map(({ file }) => [file.name, file.from]));
  await Promise.all([
    writeFile(join(folder, 'benchleaf.css'), await styleSheet()),
    ...[...files].map(([name, from]) => copyFile(from, join(folder, name))),
  ]);
}

/** The whole style sheet: faces, KaTeX's rules, our own. */
async function styleSheet(): Promise<string> {
  const katex = await readFile(join(katexFolder(), 'katex.min.css'), 'utf8');
  const own = await Promise.all(
    STYLES.map((name) => readFile(new URL(`styles/${name}.css`, TEMPLATES), 'utf8')),
  );
  return [...faces.map((face) => faceRule(face)), katex.replace(/@font-face\{[^}]*\}/g, ''), ...own].join(
    '\n',
  );
}

/** The rule of a face, its file beside the style sheet or at another address. */
export function faceRule({ family, weight, italic, file, range }: Face, url = file.name): string {
  const style = italic ? 'italic' : 'normal';
  const only = range ? ` unicode-range: ${range};` : '';
  return `@font-face { font-family: "${family}"; font-weight: ${weight}; font-style: ${style}; src: url(${url}) format("woff2");${only} }`;
}
