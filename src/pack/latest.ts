import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Document } from './plan.js';

/** What folders were last given, so that only what has changed is made again. */
export class Latest {
  /** Digest of what each document was made from, by its file. */
  readonly #given = new Map<string, string>();
  readonly #making = new Map<string, string>();

  /** Those documents that are not what the folder has already; one that somebody took away is made again. */
  changed(documents: readonly Document[], folder: string): Document[] {
    this.#making.clear();
    return documents
      .filter((one) => {
        const file = resolve(folder, one.name);
        const given = this.#given.get(file);
        return given === undefined || !existsSync(file) || given !== digestOf(contentOf(one));
      })
      .map((one) => noted(one, (content) => this.#making.set(resolve(folder, one.name), digestOf(content))));
  }

  /** What was changed is in its folder now. */
  delivered(): void {
    for (const [file, digest] of this.#making) this.#given.set(file, digest);
  }

  /** Whether the file at this absolute path is one of them. */
  has(file: string): boolean {
    return this.#given.has(file);
  }
}

type Content = string | Uint8Array;

/** A document that tells its own page numbers is as it is where none is known. */
function contentOf(document: Document): Content {
  if ('html' in document) return document.html();
  return 'paged' in document ? document.paged(new Map()) : document.data();
}

/** The same document, noting what it is made from as it is made: a class's sheets are not all kept. */
function noted(document: Document, note: (content: Content) => void): Document {
  const noting = <T extends Content>(content: T): T => {
    note(content);
    return content;
  };
  if ('html' in document) return { ...document, html: () => noting(document.html()) };
  if ('data' in document) return { ...document, data: () => noting(document.data()) };
  const { paged } = document;
  return { ...document, paged: (places) => (places.size === 0 ? noting(paged(places)) : paged(places)) };
}

const digestOf = (content: Content): string => createHash('sha256').update(content).digest('base64');
