/** The page, from 1, on which each anchor of a document landed. */
export type Places = ReadonlyMap<string, number>;

/**
 * Where the anchors of a document landed: those that something in it links to, seen or not, by the names that the links
 * have.
 *
 * @param pdf as printed by Chromium, whose dictionaries are plain text
 * @throws {Error} when it is not such a file
 */
export function placesIn(pdf: Buffer): Places {
  const file = new Dictionaries(pdf.toString('latin1'));
  const catalog = file.at(refIn(file.trailer, 'Root'));
  const pages = new Map(file.pages(refIn(catalog, 'Pages')).map((id, place) => [id, place + 1]));
  const index = /\/Dests (\d+) 0 R/.exec(catalog)?.[1];
  if (index === undefined) return new Map();
  const places = new Map<string, number>();
  for (const [, name = '', id] of file.at(Number(index)).matchAll(/\/([^\s/[\]]+) \[(\d+) 0 R /g)) {
    const page = pages.get(Number(id));
    if (page === undefined) throw new Error(`the anchor ${name} is on no page`);
    places.set(unescaped(name), page);
  }
  return places;
}

/** The dictionaries of a file, found by its table of contents. */
class Dictionaries {
  readonly trailer: string;
  readonly #text: string;
  readonly #starts: readonly number[];

  constructor(text: string) {
    this.#text = text;
    const start = Number(/startxref\s+(\d+)\s+%%EOF\s*$/.exec(text.slice(-64))?.[1]);
    const head = /^xref\s+0 (\d+)\s+/.exec(text.slice(start, start + 40));
    if (!head) throw new Error('the browser made no PDF with a table of contents');
    const first = start + head[0].length;
    this.#starts = Array.from({ length: Number(head[1]) }, (_, at) =>
      Number(text.slice(first + 20 * at, first + 20 * at + 10)),
    );
    this.trailer = text.slice(first + 20 * this.#starts.length);
  }

  /** What an object that is a dictionary says. */
  at(id: number): string {
    const start = this.#starts[id];
    if (start === undefined) throw new Error(`the PDF has no object ${id}`);
    return this.#text.slice(start, this.#text.indexOf('endobj', start));
  }

  /** The pages under a branch of the page tree, in their order. */
  pages(id: number): number[] {
    const node = this.at(id);
    const kids = /\/Kids \[([^\]]*)\]/.exec(node)?.[1];
    if (kids === undefined) return [id];
    return [...kids.matchAll(/(\d+) 0 R/g)].flatMap(([, kid]) => this.pages(Number(kid)));
  }
}

function refIn(dictionary: string, key: string): number {
  const id = new RegExp(`/${key} (\\d+) 0 R`).exec(dictionary)?.[1];
  if (id === undefined) throw new Error(`the PDF does not say its ${key}`);
  return Number(id);
}

/** A name in a PDF has its odd characters by their codes, in UTF-8. */
function unescaped(name: string): string {
  const bytes = name.replace(/#([0-9A-F]{2})/gi, (_, code: string) =>
    String.fromCharCode(parseInt(code, 16)),
  );
  return Buffer.from(bytes, 'latin1').toString('utf8');
}
