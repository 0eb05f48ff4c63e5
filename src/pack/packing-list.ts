import { sha256Of } from '../print/print-store.js';
import type { PackingList } from './packing-list-schema.js';
import type { Shard } from './shard.js';

const NAME = /^packing-list-(\d+)-of-(\d+)\.json$/;

export const packingListName = ({ number, of }: Shard): string => `packing-list-${number}-of-${of}.json`;

/** The shard that a file's name says it is the packing list of; none for other files. */
export function shardIn(name: string): Shard | undefined {
  const [, number, of] = NAME.exec(name) ?? [];
  return number === undefined || of === undefined ? undefined : { number: Number(number), of: Number(of) };
}

/** Lists that tell nothing true once a shard is delivered: its own from before, and those of other divisions. */
export const overtakenBy =
  ({ number, of }: Shard) =>
  (name: string): boolean => {
    const told = shardIn(name);
    return told !== undefined && (told.of !== of || told.number === number);
  };

/** The text of a packing list; each document has a line of its own. */
export function packingListText(list: Omit<PackingList, 'seal'>): string {
  const { documents, ...about } = list;
  const rest = JSON.stringify({ ...about, seal: sealOf(list) }, null, 2).slice(0, -2);
  const lines = documents.map((one) => `\n    ${JSON.stringify(one)}`);
  return `${rest},\n  "documents": [${lines.join(',')}${lines.length > 0 ? '\n  ' : ''}]\n}\n`;
}

/** What the seal of a list has to be. */
export function sealOf(list: Omit<PackingList, 'seal'>): string {
  const { seal: _, ...rest } = list as PackingList;
  return digestOfData(rest);
}

/** SHA-256 of data, in whatever order its names stand. */
export function digestOfData(data: unknown): string {
  return sha256Of(JSON.stringify(data, (_, value: unknown) => (isPlain(value) ? sorted(value) : value)));
}

const isPlain = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const sorted = (value: Record<string, unknown>): Record<string, unknown> =>
  Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)));
