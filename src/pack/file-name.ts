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

/** Longest part that comes from the name, in characters: with four bytes each it is still a name on every disk. */
const LONGEST = 40;

/**
 * A file name, without its ending, for what is made for one of many: `07-ada-brown`.
 *
 * The place in front makes it unique and keeps it from being a reserved name; a name of which nothing can stand in
 * a file name leaves the place alone. Accents go; letters of other scripts stay.
 *
 * @param place from 1
 */
export function fileName({ name }: { readonly name: string }, place: number): string {
  const plain = name
    .toLowerCase()
    .replace(/[ßæœøđðłþı]/g, (letter) => SPELT[letter] ?? '')
    .normalize('NFKD')
    .replace(/[\u0300-\u036F'’]/g, '')
    .normalize('NFC')
    .toLowerCase();
  const words = plain.match(/[\p{L}\p{N}][\p{L}\p{N}\p{M}]*/gu) ?? [];
  const readable = [...words.join('-')].slice(0, LONGEST).join('').replace(/-$/, '');
  return [String(place).padStart(2, '0'), readable].filter((part) => part !== '').join('-');
}
