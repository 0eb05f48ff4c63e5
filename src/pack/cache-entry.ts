import { sha256Of } from '../print/print-store.js';

/** A printed document in the cache. Its file is the PDF and nothing else; its name tells the rest. */
export interface Entry {
  /** SHA-256 of all that it depends on. */
  readonly key: string;
  /** Binds the content to the key. */
  readonly seal: string;
  /** When it was last used: days since 1970, by this machine's clock. */
  readonly day: number;
}

/** A content that was altered has another seal, and so has one that was put in the place of another. */
export const sealOf = (key: string, sha256: string): string => sha256Of(`${key} ${sha256}`).slice(0, 32);

export const fileOf = ({ key, seal, day }: Entry): string => `${key}.${seal}.${day}`;

const NAME = /^([0-9a-f]{64})\.([0-9a-f]{32})\.(\d{1,6})$/;

/** The entry that a file is; none where it is something else. */
export function entryIn(name: string): Entry | undefined {
  const [, key = '', seal = '', day] = NAME.exec(name) ?? [];
  return day === undefined ? undefined : { key, seal, day: Number(day) };
}

export const dayNow = (): number => Math.max(0, Math.floor(Date.now() / 86_400_000));

/**
 * Which entries to throw away: those not used for more days, and of the others, the latest used first, what goes beyond
 * the bytes. A clock that was wrong can make an entry seem to be of the future: that is no younger than as old.
 */
export function forgotten(
  entries: readonly { readonly entry: Entry; readonly size: number }[],
  { days, bytes }: { readonly days: number; readonly bytes: number },
): Entry[] {
  const today = dayNow();
  const age = ({ day }: Entry): number => Math.abs(today - day);
  let room = bytes;
  return [...entries]
    .sort((a, b) => age(a.entry) - age(b.entry))
    .filter(({ entry, size }) => {
      room -= size;
      return age(entry) > days || room < 0;
    })
    .map(({ entry }) => entry);
}
