/** Longest answer that is read, in characters; a real one has a few dozen. */
const LONGEST = 300;

/** Signs that are written for others, and what they stand for. */
const SIGNS: readonly (readonly [RegExp, string])[] = [
  [/[\u200B-\u200F\u202A-\u202E\u2060\u2066-\u2069]/g, ''],
  [/[\u2010-\u2015\u2212]/g, '-'],
  [/[\u2018\u2019\u201B\u2032\u00B4`\u02B9\u02BC]/g, "'"],
  [/[\u201C\u201D\u2033\u02BA\u3003]/g, '"'],
  [/[\u00BA\u02DA\u2218]/g, '°'],
  [/[⌀∅]/g, 'ø'],
  [/(?<=\d)[·∙⋅•](?=\d)/g, '.'],
  // A half is written against its whole: 1½ is 1 1/2.
  [/[¼-¾⅐-⅞]/g, ' $&'],
  // A raised figure is a power, unless it is the top of a fraction.
  [/[²³¹⁰⁴-⁹](?![²³¹⁰⁴-⁹]*\u2044)/g, '^$&'],
];

/**
 * A typed answer in small letters and plain signs: one kind of minus, quote, degree sign, figure and space; no spaces
 * or stops around it.
 *
 * @returns undefined when it is longer than any answer
 */
export function tidied(typed: string): string | undefined {
  let text = typed.replace(/\s+/g, ' ').trim();
  if (text.length > LONGEST) return undefined;
  for (const [sign, plain] of SIGNS) text = text.replace(sign, plain);
  return text
    .normalize('NFKC')
    .replaceAll('\u2044', '/')
    .replaceAll("''", '"')
    .toLowerCase()
    .replace(/\s+/g, ' ')
    .replace(/^[\s=:≈~]{1,20}/, '')
    .replace(/[\s.!?;:,]{1,20}$/, '')
    .replace(/^(['"])(.*)\1$/, '$2');
}

/** A tidied answer without what it is called: `answer: 12`, `the answer is 12`, `d_a: 50.21`. */
export const unnamed = (text: string): string =>
  text.replace(/^(?:[a-z_' ]{1,40}: ?|(?:(?:the|my|our) )?answer (?:is (?!=))?)/, '');

/** What people say beside a number. */
const ASIDE = /\b(?:or thereabouts|or so|i think|(?:i|we) (?:make it|get|got)|(?:it )?comes to)\b,?/g;

/** What a line of working comes to: after its last equals sign, without a tolerance behind. */
export function conclusion(text: string): string {
  const sides = text.split(/[=≈≅]/).map((side) => side.trim());
  const last = sides.findLast((side) => /[\d¼-¾]/.test(side)) ?? sides.at(-1) ?? '';
  return last
    .replace(ASIDE, ' ')
    .replace(/[, ]{1,9}$/, '')
    .replace(/(?:±|\+\/-|\+-) ?\d{1,9}(?:\.\d{1,9})?/, ' ')
    .trim();
}
