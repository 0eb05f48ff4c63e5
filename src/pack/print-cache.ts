import { randomUUID } from 'node:crypto';
import type { Stats } from 'node:fs';
import { lstat, mkdir, readdir, readFile, rename, rm, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { type Printed, type PrintStore, sha256Of } from '../print/print-store.js';
import { later } from '../problems/later.js';
import { dayNow, type Entry, entryIn, fileOf, forgotten, sealOf } from './cache-entry.js';
import { digestOf, keyOf } from './cache-key.js';

/** Changes with the way that entries are named or keyed: one version never reads what another wrote. */
const FOLDER = 'prints-1';
/** What a run writes before it has the name of an entry. */
const PART = /^part-[\da-f-]{36}$/;
const DAY = 86_400_000;

/** What is thrown away at the end of a run: days that it was not used for, and bytes of what this run did not use. */
export interface CacheLimits {
  readonly days: number;
  readonly bytes: number;
}
const LIMITS: CacheLimits = { days: 14, bytes: 2 * 1024 ** 3 };

/**
 * Printed documents on disk, so that a run that was stopped goes on where it was, and one after an edit prints what
 * changed. An entry is found by all that its PDF depends on, and is believed only if its content is what was put there.
 * Nothing here is ever needed: what cannot be read or written is done without.
 */
export class PrintCache implements PrintStore {
  readonly #folder: string;
  /** SHA-256 of what the HTML refers to: style and fonts. */
  readonly #assets: () => Promise<string>;
  readonly #entries = later(() => this.#read());
  readonly #used = new Set<string>();

  /**
   * @param folder absolute path; made when there is something to keep
   * @param assets folder of what the HTML refers to, complete before anything is printed
   */
  constructor(folder: string, assets: string) {
    this.#folder = join(folder, FOLDER);
    this.#assets = later(() => digestOf(assets));
  }

  async printed(dependsOn: readonly string[], print: () => Promise<Buffer>): Promise<Printed> {
    const key = keyOf([await this.#assets(), ...dependsOn]);
    this.#used.add(key);
    const found = await this.#found(key);
    if (found) return found;
    const pdf = await print();
    const sha256 = sha256Of(pdf);
    const file = await this.#keep({ key, seal: sealOf(key, sha256), day: dayNow() }, pdf);
    return { pdf, sha256, kept: false, ...(file === undefined ? {} : { file }) };
  }

  /** Throws away what was not used for long, what is too much, and what a stopped run left half-written. */
  async clear(limits = LIMITS): Promise<void> {
    const names = await readdir(this.#folder).catch(() => []);
    const unused = names.flatMap((name) => entryIn(name) ?? []).filter(({ key }) => !this.#used.has(key));
    const sizes = await Promise.all(
      unused.map(async (entry) => (await this.#about(fileOf(entry)))?.size ?? 0),
    );
    const old = forgotten(
      unused.map((entry, at) => ({ entry, size: sizes[at] ?? 0 })),
      limits,
    );
    await Promise.all([...old.map(fileOf), ...(await this.#strays(names))].map((name) => this.#remove(name)));
  }

  /** Entries by their keys, the latest used first. */
  async #read(): Promise<Map<string, Entry[]>> {
    const names = await readdir(this.#folder).catch(() => []);
    const entries = new Map<string, Entry[]>();
    for (const entry of names.flatMap((name) => entryIn(name) ?? []).sort((a, b) => b.day - a.day))
      entries.set(entry.key, [...(entries.get(entry.key) ?? []), entry]);
    return entries;
  }

  async #found(key: string): Promise<Printed | undefined> {
    for (const entry of (await this.#entries()).get(key) ?? []) {
      const path = this.#path(fileOf(entry));
      const isFile = (await lstat(path).catch(() => undefined))?.isFile();
      const pdf = isFile ? await readFile(path).catch(() => undefined) : undefined;
      if (!pdf) continue; // another run has used it, or thrown it away
      const sha256 = sha256Of(pdf);
      if (sealOf(key, sha256) === entry.seal)
        return { pdf, sha256, kept: true, file: await this.#use(entry) };
      await this.#remove(fileOf(entry));
    }
    return undefined;
  }

  /** Its name tells the day: the file itself has other names, and what is seen by those should not change. */
  async #use(entry: Entry): Promise<string> {
    const from = this.#path(fileOf(entry));
    const to = this.#path(fileOf({ ...entry, day: dayNow() }));
    return from === to
      ? from
      : rename(from, to).then(
          () => to,
          () => from,
        );
  }

  /** Whole or not at all. A disk that is full gets a second try without what is not needed now. */
  async #keep(entry: Entry, pdf: Buffer): Promise<string | undefined> {
    const path = this.#path(fileOf(entry));
    const part = this.#path(`part-${randomUUID()}`);
    for (const last of [false, true])
      try {
        await mkdir(this.#folder, { recursive: true });
        await writeFile(part, pdf);
        await rename(part, path);
        return path;
      } catch (error) {
        await rm(part, { force: true }).catch(() => undefined);
        if (last || (error as NodeJS.ErrnoException).code !== 'ENOSPC') return undefined;
        await this.clear({ days: 0, bytes: 0 });
      }
    return undefined;
  }

  /** What became no entry, for a day at least: a run that is under way may be writing one. Nothing else is ours. */
  async #strays(names: readonly string[]): Promise<string[]> {
    const others = names.filter((name) => PART.test(name));
    const changed = await Promise.all(others.map(async (name) => (await this.#about(name))?.mtimeMs ?? 0));
    return others.filter((_, at) => Math.abs(Date.now() - (changed[at] ?? 0)) > DAY);
  }

  #about(name: string): Promise<Stats | undefined> {
    return stat(this.#path(name)).catch(() => undefined);
  }

  async #remove(name: string): Promise<void> {
    await rm(this.#path(name), { force: true }).catch(() => undefined);
  }

  #path(name: string): string {
    return join(this.#folder, name);
  }
}
