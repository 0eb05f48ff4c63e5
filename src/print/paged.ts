import { type Places, placesIn } from './places.js';
import { PrintError } from './print-error.js';

/** A document that tells its own page numbers: its HTML, for where its anchors are; none is known at first. */
export type PagedHtml = (places: Places) => string;

/** A page number that changes a line may move a page; more often than this it moves for ever. */
const MOST_ROUNDS = 5;

/**
 * Prints a document again and again, until the page numbers in it are those of the pages they name.
 *
 * @param print prints HTML, and gives the PDF
 * @throws {PrintError} when they never are; what `print` throws
 */
export async function untilSettled(
  paged: PagedHtml,
  print: (html: string) => Promise<Buffer>,
): Promise<Buffer> {
  let html = paged(new Map());
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const pdf = await print(html);
    const next = paged(placesIn(pdf));
    if (next === html) return pdf;
    html = next;
  }
  throw new PrintError(['its page numbers move pages each time they are put in']);
}
