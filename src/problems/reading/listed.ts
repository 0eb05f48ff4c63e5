/** What stands between the things of a list, whichever way commas are used. */
const BETWEEN: readonly RegExp[] = [
  /[;&+,]|\band\b|\bthen\b/,
  // A comma without a space may stand before decimals.
  /[;&+]|,(?!\d)|\band\b|\bthen\b/,
  /[\s;,/]+/,
];
/** No list of ours is longer. */
const MOST = 24;

/** Words among the things of a list that tell nothing. */
const IDLE = /^(?:the|only|heads?|cutters?|circles?)?$/;

/** The ways to take a tidied list apart; the first that can be read is meant. */
export function listsOf(text: string): string[][] {
  const bare = text.replace(/^[a-z_' ]{1,40}:/, '').replace(/[()[\]{}]/g, ' ');
  return BETWEEN.map((between) => bare.split(between).map((one) => one.trim()))
    .map((list) => list.filter((one) => !IDLE.test(one)))
    .filter((list) => list.length > 0 && list.length <= MOST);
}
