/**
 * Moves labels along a line just far enough that none overlaps the next; order is kept, and the whole stays as near
 * as may be to where it was wanted.
 *
 * @param wanted where the middle of each label would like to be, in rising order
 * @param sizes how much room each takes
 */
export function spread(wanted: readonly number[], sizes: readonly number[]): number[] {
  interface Cluster {
    /** Sum of where its first label would have to stand for each member to be where it is wanted. */
    sum: number;
    count: number;
    length: number;
    offsets: number[];
  }
  const clusters: Cluster[] = [];
  for (const [i, want] of wanted.entries()) {
    const size = sizes[i] ?? 0;
    clusters.push({ sum: want - size / 2, count: 1, length: size, offsets: [size / 2] });
    for (;;) {
      const [before, last] = clusters.slice(-2);
      if (!before || !last || before.sum / before.count + before.length <= last.sum / last.count) break;
      clusters.splice(-2, 2, {
        sum: before.sum + last.sum - last.count * before.length,
        count: before.count + last.count,
        length: before.length + last.length,
        offsets: [...before.offsets, ...last.offsets.map((offset) => offset + before.length)],
      });
    }
  }
  return clusters.flatMap(({ sum, count, offsets }) => offsets.map((offset) => sum / count + offset));
}
