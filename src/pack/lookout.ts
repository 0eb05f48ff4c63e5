import { type FSWatcher, readdirSync, type Stats, statSync, watch } from 'node:fs';
import { dirname, join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';

/** What is looked after. Paths are absolute. */
export interface Watched {
  /** These have to be there. */
  readonly files: readonly string[];
  /** Any file in these counts, new ones too, but for hidden ones and those that editors keep beside. */
  readonly folders: readonly string[];
  /** A file in the folders that does not count all the same. */
  readonly except?: (file: string) => boolean;
}

/** What was last seen of each file: its size, its date, and which file it is. */
export type Seen = ReadonlyMap<string, string>;

/** A save has ended when nothing has stirred for so long, in milliseconds: editors save in several steps. */
const QUIET = 40;
/** How long a file may be away or empty before that is taken for its author's wish. */
const AWAY = 1000;
/** Some disks, such as those over a network, tell of nothing: then all is looked at so often. */
const ROUND = 1000;

/** Sees when files are saved. */
export class Lookout {
  readonly #watchers = new Map<string, { readonly inode: number; readonly watcher: FSWatcher }>();
  #stir = (): void => undefined;

  /** Waits until what is watched is no longer as it was seen, and has come to rest; gives the time when it stirred. */
  async changed(watched: Watched, seen: Seen): Promise<number> {
    for (;;) {
      this.#follow(watched);
      if (same(seenOf(watched), seen)) await this.#stirred();
      const start = performance.now();
      if (same(seenOf(watched), seen)) continue;
      await rest(watched, start);
      if (!same(seenOf(watched), seen)) return start;
    }
  }

  close(): void {
    for (const { watcher } of this.#watchers.values()) watcher.close();
    this.#watchers.clear();
  }

  async #stirred(): Promise<void> {
    let timer: NodeJS.Timeout | undefined;
    await new Promise<void>((resolve) => {
      this.#stir = resolve;
      timer = setTimeout(resolve, ROUND);
    });
    clearTimeout(timer);
  }

  /** Folders are watched, not files: a file that is saved by renaming is another one each time. */
  #follow({ files, folders }: Watched): void {
    const wanted = new Set([...files.map((file) => dirname(file)), ...folders]);
    for (const [folder, { inode, watcher }] of this.#watchers) {
      if (wanted.has(folder) && inode === inodeOf(folder)) continue;
      watcher.close();
      this.#watchers.delete(folder);
    }
    for (const folder of wanted) if (!this.#watchers.has(folder)) this.#watch(folder);
  }

  #watch(folder: string): void {
    try {
      const watcher = watch(folder, () => this.#stir());
      watcher.on('error', () => watcher.close()); // the rounds go on
      this.#watchers.set(folder, { inode: inodeOf(folder), watcher });
    } catch {
      // It is not there at present, or the machine watches no more folders: the rounds go on.
    }
  }
}

/** What is there now. */
export function seenOf({ files, folders, except = () => false }: Watched): Seen {
  const all = new Set([...files, ...folders.flatMap(filesIn).filter((file) => !except(file))]);
  return new Map([...all].flatMap((file) => stampOf(file)));
}

async function rest(watched: Watched, start: number): Promise<void> {
  for (;;) {
    const before = seenOf(watched);
    await sleep(QUIET);
    const now = seenOf(watched);
    const away = watched.files.some((file) => now.get(file)?.startsWith(EMPTY) ?? true);
    if (same(before, now) && !(away && performance.now() - start < AWAY)) return;
  }
}

const EMPTY = '0 ';

function stampOf(file: string): [string, string][] {
  const about = lookAt(file);
  return about?.isFile() ? [[file, `${about.size} ${about.mtimeMs} ${about.ino}`]] : [];
}

function lookAt(path: string): Stats | undefined {
  try {
    return statSync(path, { throwIfNoEntry: false });
  } catch {
    return undefined; // whoever reads it tells why it may not be
  }
}

function filesIn(folder: string): string[] {
  try {
    return readdirSync(folder)
      .filter((name) => !/^\.|~$|^#|\.(swp|tmp|part|bak)$/i.test(name))
      .map((name) => join(folder, name));
  } catch {
    return []; // it is not there at present
  }
}

const inodeOf = (folder: string): number => lookAt(folder)?.ino ?? 0;

/** Whether nothing was saved between the two. */
export const same = (one: Seen, other: Seen): boolean =>
  one.size === other.size && [...one].every(([file, stamp]) => other.get(file) === stamp);
