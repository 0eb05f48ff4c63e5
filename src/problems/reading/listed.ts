/** What stands between the things of a list, whichever way commas are used. */
const BETWEEN: readonly RegExp[] = [
  /[;&+,]|\b(?:and|or|then)\b/,
  // A comma without a space may stand before decimals.
  /[;&+]|,(?!\d)|\b(?:and|or|then)\b/,
  /(?:[\s;,/&+]|\b(?:and|or|then)\b)+/,
  // A unit stays with its number.
  /[\s;,/&+]+(?=[\d.])/,
];
/** No list of ours is longer. */
const MOST = 24;

/** Words among the things of a list that tell nothing. */
const IDLE = /\b(?:the|only|just|both|heads?|cutters?|circles?)\b/g;

/** A tidied list, or a thing of one, without brackets and such words. */
export const withoutIdle = (text: string): string => text.replace(/[()[\]{}]/g, ' ').replace(IDLE, ' ');

/** The ways to take a tidied list apart; the first that can be read is meant. */
export function listsOf(text: string): string[][] {
  return BETWEEN.map((between) =>
    withoutIdle(text)
      .split(between)
      .map((one) => one.trim()),
  )
    .map((list) => list.filter((one) => one !== ''))
    .filter((list) => list.length > 0 && list.length <= MOST);
}
