/**
 * Whether a word is another but for one letter put in, left out, changed, or swapped with its neighbour. The first
 * letter must be right, and a short word must be right altogether.
 *
 * @param shortest words of fewer letters must be right
 */
export function isSpelt(typed: string, word: string, shortest: number): boolean {
  if (typed === word) return true;
  if (word.length < shortest || typed[0] !== word[0] || Math.abs(typed.length - word.length) > 1)
    return false;
  let start = 0;
  while (start < word.length && typed[start] === word[start]) start++;
  let end = 0;
  const most = Math.min(typed.length, word.length) - start;
  while (end < most && typed.at(-1 - end) === word.at(-1 - end)) end++;
  const [left, wanted] = [typed.slice(start, typed.length - end), word.slice(start, word.length - end)];
  if (left.length <= 1 && wanted.length <= 1) return true;
  return left.length === 2 && wanted.length === 2 && left[0] === wanted[1] && left[1] === wanted[0];
}
