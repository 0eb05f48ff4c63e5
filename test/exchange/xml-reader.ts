import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { findBrowser } from '../../src/print/browser.js';
import { launch } from '../../src/print/launch.js';

/** An element as a reader of XML finds it; text without anything but space is left out. */
export interface Node {
  readonly name: string;
  readonly namespace: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly (Node | string)[];
}

/** What the browser's own XML parser makes of a document; it stops at the first thing that is not well formed. */
const READ = `(texts) => texts.map((text) => {
  const document = new DOMParser().parseFromString(text, 'application/xml');
  const error = document.querySelector('parsererror');
  if (error) return { error: error.textContent };
  const plain = (node) => ({
    name: node.localName,
    namespace: node.namespaceURI,
    attributes: Object.fromEntries([...node.attributes].map(({ name, value }) => [name, value])),
    children: [...node.childNodes]
      .map((child) => (child.nodeType === 1 ? plain(child) : child.nodeValue))
      .filter((child) => typeof child !== 'string' || child.trim() !== ''),
  });
  return plain(document.documentElement);
})`;

/**
 * Reads XML documents with the XML parser of the browser that prints the sheets.
 *
 * @throws {Error} for the first that is not well formed
 */
export async function readXml(texts: readonly string[]): Promise<Node[]> {
  const profile = mkdtempSync(join(tmpdir(), 'benchleaf-xml-'));
  const browser = await launch(await findBrowser(), profile);
  try {
    const page = await browser.newPage();
    const read = (await page.evaluate(`(${READ})(${JSON.stringify(texts)})`)) as (Node | { error: string })[];
    return read.map((one, place) => {
      if ('error' in one) throw new Error(`${one.error}\n${texts[place]}`);
      return one;
    });
  } finally {
    await browser.close();
    rmSync(profile, { recursive: true, force: true });
  }
}

/** Every element of a document, the root first. */
export function* elementsOf(node: Node): Generator<Node> {
  yield node;
  for (const child of node.children) if (typeof child !== 'string') yield* elementsOf(child);
}

/** The text in an element, in its order. */
export function textOf(node: Node): string {
  return node.children.map((child) => (typeof child === 'string' ? child : textOf(child))).join('');
}

/** The elements of one name in a document. */
export const named = (root: Node, name: string): Node[] =>
  [...elementsOf(root)].filter((node) => node.name === name);
