/**
 * Calls for every set of so many counts whose product lies in a closed range, smallest count first in each; a count
 * may come twice. Choosing a count divides the range by it, so that what cannot be made up is left at once: where
 * the range is a single number, only its divisors are followed.
 *
 * @param visit must not keep the list it is given, which is used again
 */
export function eachSet(
  size: number,
  [least, most]: readonly [number, number],
  [low, high]: readonly [number, number],
  visit: (counts: readonly number[]) => void,
  chosen: number[] = [],
): void {
  const largestRest = most ** (size - 1);
  for (let count = Math.max(least, Math.ceil(low / largestRest)); count <= most; count++) {
    if (count ** size > high) return;
    const rest = [Math.ceil(low / count), Math.floor(high / count)] as const;
    if (rest[0] > rest[1]) continue;
    chosen.push(count);
    if (size === 1) visit(chosen);
    else eachSet(size - 1, [count, most], rest, visit, chosen);
    chosen.pop();
  }
}
