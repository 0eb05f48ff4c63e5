/** `D:20261125121007+00'00'`: as long as what the browser writes. */
function pdfDate(date: Date): string {
  return `D:${date.toISOString().replace(/\D/g, '').slice(0, 14)}+00'00'`;
}

/**
 * The same document with nothing in it that changes from print to print: the two dates are set, and structure
 * ids (`node00000035`), which the browser counts over its whole life, are numbered as they appear. Nothing
 * changes its length, so the table of contents of the file stays true.
 *
 * @param pdf as printed by Chromium, whose dictionaries are plain text
 * @param date for both dates; without it they stay
 */
export function settled(pdf: Buffer, date?: Date): Buffer {
  let text = pdf.toString('latin1');
  if (date) text = text.replace(/\/(CreationDate|ModDate) \(D:[^)]{21}\)/g, `/$1 (${pdfDate(date)})`);
  const numbers = new Map<string, string>();
  text = text.replace(/\((node\d{8})\)/g, (_, id: string) => {
    const known = numbers.get(id) ?? `node${String(numbers.size + 1).padStart(8, '0')}`;
    numbers.set(id, known);
    return `(${known})`;
  });
  return Buffer.from(text.replace(/\/Limits \[.*\]\n\/Names \[.*\]/g, inOrder), 'latin1');
}

/** The index of the ids has to be in their order, with the first and the last in front. */
function inOrder(index: string): string {
  const entries = (index.match(/\(node\d{8}\) \d+ 0 R/g) ?? []).sort();
  const ids = entries.map((entry) => entry.slice(0, entry.indexOf(' ')));
  return ids.length === 0 ? index : `/Limits [${ids[0]} ${ids.at(-1)}]\n/Names [${entries.join(' ')}]`;
}

/** How many pages the document says it has: the count in the root of its page tree. */
export function pageCount(pdf: Buffer): number {
  const text = pdf.toString('latin1');
  const root = /\/Pages (\d+) 0 R/.exec(text)?.[1];
  const start = text.indexOf(`\n${root} 0 obj\n`);
  const count = /\/Count (\d+)/.exec(text.slice(start, text.indexOf('endobj', start)))?.[1];
  if (root === undefined || start < 0 || count === undefined) throw new Error('the browser made no PDF');
  return Number(count);
}
