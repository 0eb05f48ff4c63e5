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

/** What the browser's own parser makes of a document; that of XML stops at the first thing that is not well formed. */
const READ = `(texts, type) => texts.map((text) => {
  const document = new DOMParser().parseFromString(text, type);
  const error = type === 'application/xml' && document.querySelector('parsererror');
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

/** Reads documents until it is closed. */
export interface XmlReader {
  /** @throws {Error} for the first document of XML that is not well formed */
  read(texts: readonly string[], type?: 'application/xml' | 'text/html'): Promise<Node[]>;
  close(): Promise<void>;
}

/** The parser of the browser that prints the sheets. */
export async function openReader(): Promise<XmlReader> {
  const profile = mkdtempSync(join(tmpdir(), 'benchleaf-xml-'));
  const browser = await launch(await findBrowser(), profile);
  const page = await browser.newPage();
  return {
    read: async (texts, type = 'application/xml') => {
      const call = `(${READ})(${JSON.stringify(texts)}, '${type}')`;
      const read = (await page.evaluate(call)) as (Node | { error: string })[];
      return read.map((one, place) => {
        if ('error' in one) throw new Error(`${one.error}\n${texts[place]}`);
        return one;
      });
    },
    close: async () => {
      await browser.close();
      rmSync(profile, { recursive: true, force: true });
    },
  };
}

/**
 * Reads XML documents.
 *
 * @throws {Error} for the first that is not well formed
 */
export async function readXml(texts: readonly string[]): Promise<Node[]> {
  const reader = await openReader();
  try {
    return await reader.read(texts);
  } finally {
    await reader.close();
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

/** The same as it is read: a space between elements, and no other space than one. */
export function wordsOf(node: Node): string {
  const words = node.children.map((child) => (typeof child === 'string' ? child : wordsOf(child))).join(' ');
  return words.replace(/\s+/g, ' ').trim();
}

/** The figures in a text, in their order of size: a formula's numbers are laid out in more than one way. */
export const figuresIn = (text: string): string => (text.match(/\d/g) ?? []).sort().join('');

/** The elements of a page that have a class. */
export const classed = (root: Node, name: string): Node[] =>
  [...elementsOf(root)].filter(({ attributes }) => (attributes.class ?? '').split(' ').includes(name));

/** The elements of one name in a document. */
export const named = (root: Node, name: string): Node[] =>
  [...elementsOf(root)].filter((node) => node.name === name);
