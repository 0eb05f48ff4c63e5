/** Letters that are not a plain letter with an accent. */
const SPELT: Readonly<Record<string, string>> = {
  ß: 'ss',
  æ: 'ae',
  œ: 'oe',
  ø: 'o',
  đ: 'd',
  ð: 'd',
  ł: 'l',
  þ: 'th',
  ı: 'i',
};

/** Accents, vowel points of Hebrew and Arabic, and apostrophes. */
const LEFT_OUT = /[\u0300-\u036F\u0591-\u05BD\u05BF-\u05C2\u05C4\u05C5\u05C7\u064B-\u0652\u0670'’]/g;

/** Longest part that comes from the name, in characters: with four bytes each it is still a name on every disk. */
const LONGEST = 40;

/**
 * A file name, without its ending, for what is made for one of many: `07-ada-brown`.
 *
 * The place in front makes it unique and keeps it from being a reserved name; a name of which nothing can stand in
 * a file name leaves the place alone. Accents and vowel points go; letters of other scripts stay.
 *
 * @param place from 1
 */
export function fileName({ name }: { readonly name: string }, place: number): string {
  const plain = name
    .toLowerCase()
    .replace(/[ßæœøđðłþı]/g, (letter) => SPELT[letter] ?? '')
    .normalize('NFKD')
    .replace(LEFT_OUT, '')
    .normalize('NFC')
    .toLowerCase();
  const words = plain.match(/[\p{L}\p{N}][\p{L}\p{N}\p{M}]*/gu) ?? [];
  const readable = [...words.join('-')].slice(0, LONGEST).join('').replace(/-$/, '');
  return [String(place).padStart(2, '0'), readable].filter((part) => part !== '').join('-');
}
