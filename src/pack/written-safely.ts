import { closeSync, fsyncSync, openSync, writeFileSync } from 'node:fs';
import { open } from 'node:fs/promises';

/** Writes a file, and returns when it is on the disk itself: a power cut does not lose it. */
export function writeSafely(path: string, text: string): void {
  const file = openSync(path, 'w');
  try {
    writeFileSync(file, text);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

/** As many at once as keep a disk busy. */
const AT_ONCE = 16;

/** Returns when files that were written are on the disk itself; one that is not there is for others to miss. */
export async function settleOnDisk(paths: readonly string[]): Promise<void> {
  const left = paths.values();
  const worker = async (): Promise<void> => {
    for (const path of left) {
      const file = await open(path, 'r+').catch(() => undefined);
      if (!file) continue;
      try {
        await file.datasync();
      } finally {
        await file.close();
      }
    }
  };
  await Promise.all(Array.from({ length: AT_ONCE }, worker));
}
