import { readFile } from 'node:fs/promises';
import {
  getDocument,
  type PDFDocumentProxy,
  type PDFPageProxy,
  VerbosityLevel,
} from 'pdfjs-dist/legacy/build/pdf.mjs';

/** What a reader of the PDF would notice at once. */
export interface Look {
  readonly pages: number;
  /** Width × height of each page in millimetres, to a tenth. */
  readonly sizes: readonly string[];
  readonly tagged: boolean;
  readonly title: string;
  readonly language: string;
  /** Bookmarks in order, two spaces further in for each level. */
  readonly outline: readonly string[];
  /** The text of each page, one line for each line. */
  readonly text: readonly string[];
}

/** What is compared of a PDF: bytes are not, from one browser to the next. */
export interface Fingerprint extends Look {
  /** PostScript names without the subset mark, sorted. One that is not in the file is followed by `(not embedded)`. */
  readonly fonts: readonly string[];
}

/** Reads a PDF. Its fonts take most of the time: where they do not matter, `lookAt` it. */
export function fingerprint(path: string): Promise<Fingerprint> {
  return withPdf(path, async (pdf) => {
    const fonts = await Promise.all((await pagesOf(pdf)).map(fontsOn));
    return { ...(await lookOf(pdf)), fonts: [...new Set(fonts.flat())].sort() };
  });
}

/** Reads a PDF, all but its fonts. */
export function lookAt(path: string): Promise<Look> {
  return withPdf(path, lookOf);
}

/** Where the links of a PDF lead that leave it, and what it would do by itself. */
export function linksIn(path: string): Promise<string[]> {
  return withPdf(path, async (pdf) => {
    const annotations = await Promise.all((await pagesOf(pdf)).map((page) => page.getAnnotations()));
    const links = annotations.flat().map(({ url, unsafeUrl, action }) => url ?? unsafeUrl ?? action);
    const acts = [await pdf.getOpenAction(), await pdf.getJSActions(), await pdf.getAttachments()];
    return [...links, ...acts.map((act) => act && JSON.stringify(act))].filter((one) => !!one);
  });
}

async function lookOf(pdf: PDFDocumentProxy): Promise<Look> {
  const pages = await pagesOf(pdf);
  const { info } = await pdf.getMetadata();
  const { Title, Language } = info as { Title?: string; Language?: string };
  return {
    pages: pdf.numPages,
    sizes: pages.map(sizeOf),
    tagged: (await pdf.getMarkInfo())?.Marked === true,
    title: Title ?? '',
    language: Language ?? '',
    outline: titles(await pdf.getOutline()),
    text: await Promise.all(pages.map(textOn)),
  };
}

/** Opens a PDF for as long as `use` runs. */
export async function withPdf<T>(path: string, use: (pdf: PDFDocumentProxy) => Promise<T>): Promise<T> {
  const data = new Uint8Array(await readFile(path));
  const task = getDocument({ data, fontExtraProperties: true, verbosity: VerbosityLevel.ERRORS });
  try {
    return await use(await task.promise);
  } finally {
    await task.destroy();
  }
}

function pagesOf(pdf: PDFDocumentProxy): Promise<PDFPageProxy[]> {
  return Promise.all(Array.from({ length: pdf.numPages }, (_, index) => pdf.getPage(index + 1)));
}

function sizeOf(page: PDFPageProxy): string {
  const [left = 0, bottom = 0, right = 0, top = 0] = page.view;
  return [right - left, top - bottom].map((points) => ((points * 25.4) / 72).toFixed(1)).join(' × ');
}

type Bookmarks = Awaited<ReturnType<PDFDocumentProxy['getOutline']>> | null;

function titles(bookmarks: Bookmarks, indent = ''): string[] {
  return (bookmarks ?? []).flatMap(({ title, items }) => [indent + title, ...titles(items, `${indent}  `)]);
}

async function fontsOn(page: PDFPageProxy): Promise<string[]> {
  await page.getOperatorList(); // fonts are loaded with it
  const { styles } = await page.getTextContent();
  return Object.keys(styles).map((id) => {
    const font = page.commonObjs.get(id) as { name?: string; missingFile?: boolean; isType3Font?: boolean };
    const name = (font.name ?? 'unnamed').replace(/^[A-Z]{6}\+/, '');
    return font.missingFile ? `${name} (not embedded)` : name;
  });
}

async function textOn(page: PDFPageProxy): Promise<string> {
  const { items } = await page.getTextContent();
  return items.map((item) => ('str' in item ? item.str + (item.hasEOL ? '\n' : '') : '')).join('');
}
