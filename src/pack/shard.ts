import type { Document } from './plan.js';

/** Which part of a set, such as the third of eight. */
export interface Shard {
  /** From 1. */
  readonly number: number;
  readonly of: number;
}

/** More parts than this help nobody. */
export const MOST_SHARDS = 1000;

/**
 * The documents of one shard: a stretch of the set, as long as the others or one longer. What goes together stays
 * together: a sheet, its key and its data have one variant code. It follows from the documents alone, so every shard is
 * the same wherever it is made, and each document is in exactly one. A shard of a small set may have none.
 */
export function inShard<T extends Pick<Document, 'name' | 'variant'>>(
  documents: readonly T[],
  { number, of }: Shard,
): T[] {
  const groups = [...new Set(documents.map(groupOf))];
  const [from, to] = [number - 1, number].map((one) => Math.round((groups.length * one) / of));
  const mine = new Set(groups.slice(from, to));
  return documents.filter((one) => mine.has(groupOf(one)));
}

const groupOf = ({ name, variant }: Pick<Document, 'name' | 'variant'>): string => variant ?? `/${name}`;
