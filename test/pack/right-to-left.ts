import { readFileSync } from 'node:fs';
import { inflateSync } from 'node:zlib';

const RIGHT_TO_LEFT = /[\p{Script=Hebrew}\p{Script=Arabic}]/u;

export const runsRightToLeft = (text: string): boolean => RIGHT_TO_LEFT.test(text);

/** The letters of a name alone, whichever shape of theirs is printed. */
export const lettersOf = (text: string): string => text.normalize('NFKC').replace(/[^\p{L}\p{N}]/gu, '');

/** The text of one or more glyphs, in the order of reading. */
interface Drawn {
  readonly text: string;
  readonly reversed: boolean;
}

/**
 * The letters of each page that are written from right to left, a string for each stretch of them, as somebody hears
 * them to whom the PDF is read: an Arabic letter is drawn in pieces, and beside them stands which letter they are.
 */
export function rightToLeftTexts(path: string): string[][] {
  const file = readFileSync(path).toString('latin1');
  const objects = new Map(
    [...file.matchAll(/(?<=\n)(\d+) 0 obj\n([^]*?)\nendobj/g)].map(([, number = '', body = '']) => [
      number,
      body,
    ]),
  );
  const referred = (from: string, key: string): string =>
    objects.get(new RegExp(`/${key} (\\d+) 0 R`).exec(from)?.[1] ?? '') ?? '';
  const pages = [...objects.values()].filter((body) => /\/Type \/Page\b/.test(body));
  return pages.map((page) => {
    const fonts = new Map(
      [...page.matchAll(/\/(F\d+) (\d+) 0 R/g)].map(([, name = '', number = '']) => [
        name,
        unicodeOf(streamOf(referred(objects.get(number) ?? '', 'ToUnicode'))),
      ]),
    );
    return stretchesOf(drawnBy(streamOf(referred(page, 'Contents')), fonts));
  });
}

function streamOf(body: string): string {
  const [, packed = ''] = /stream\r?\n([^]*?)\r?\nendstream/.exec(body) ?? [];
  return packed === '' ? '' : inflateSync(Buffer.from(packed, 'latin1')).toString('latin1');
}

const utf16 = (hex: string): string =>
  Buffer.from(hex, 'hex').swap16().toString('utf16le').replace('\uFEFF', '');

/** What a font says of its glyphs, by their number in hexadecimal digits. */
function unicodeOf(map: string): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  for (const [, glyph = '', text = ''] of map.matchAll(/^<(\w{4})> <(\w+)>$/gm))
    found.set(glyph, utf16(text));
  for (const [, from = '', to = '', text = ''] of map.matchAll(/^<(\w{4})> <(\w{4})> <(\w{4})>$/gm))
    for (let glyph = Number.parseInt(from, 16), at = 0; glyph + at <= Number.parseInt(to, 16); at++)
      found.set(
        (glyph + at).toString(16).toUpperCase().padStart(4, '0'),
        String.fromCodePoint(Number.parseInt(text, 16) + at),
      );
  return found;
}

/** Everything that is drawn, in the order that it is: along a line from left to right, whichever way it is read. */
function drawnBy(content: string, fonts: ReadonlyMap<string, ReadonlyMap<string, string>>): Drawn[] {
  const drawn: Drawn[] = [];
  const open: { readonly reversed: boolean; readonly said: boolean }[] = [];
  let font: ReadonlyMap<string, string> | undefined;
  const steps = /\/(F\d+) \S+ Tf|<(\w+)> Tj|ActualText <(\w*)> >> BDC|\/(\w+) BMC|\bBDC\b|\bEMC\b/g;
  for (const [step, face, glyphs, actual, mark] of content.matchAll(steps)) {
    const reversed = open.some((one) => one.reversed);
    if (face !== undefined) font = fonts.get(face);
    else if (step === 'EMC') open.pop();
    else if (glyphs === undefined) {
      open.push({ reversed: mark === 'ReversedChars', said: actual !== undefined });
      if (actual !== undefined) drawn.push({ text: utf16(actual), reversed });
    } else if (!open.some(({ said }) => said))
      for (const glyph of glyphs.match(/\w{4}/g) ?? [])
        drawn.push({ text: font?.get(glyph) ?? '', reversed });
  }
  return drawn;
}

/** Stretches that are read from right to left, with whatever has no direction between their letters. */
function stretchesOf(drawn: readonly Drawn[]): string[] {
  const stretches: string[][] = [[]];
  for (const { text, reversed } of drawn)
    if (reversed || !/[\p{L}\p{N}]/u.test(text)) stretches.at(-1)?.unshift(text);
    else stretches.push([]);
  return stretches.map((texts) => lettersOf(texts.join(''))).filter((text) => text !== '');
}
