import { InputError } from '../../diagnostics/errors.js';

/** A piece of XML, well formed in itself. */
export interface Xml {
  readonly xml: string;
}

/** Text is escaped; XML stands as it is. */
export type Child = Xml | string;

export type Attributes = Readonly<Record<string, string | number | boolean | undefined>>;

/** All but what XML 1.0 allows in a document: control characters, halves of pairs, U+FFFE and U+FFFF. */
const NOT_XML = /[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/u;

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  '\n': '&#10;',
  '\r': '&#13;',
  '\t': '&#9;',
};

/**
 * An element. Attributes without a value are left out; the others stand in the order given.
 *
 * @throws {InputError} for a character that no XML document may hold
 */
export function element(name: string, attributes: Attributes = {}, ...children: readonly Child[]): Xml {
  const told = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${escaped(String(value), /[&<>"\n\r\t]/g)}"`)
    .join('');
  const inside = children
    .map((child) => (typeof child === 'string' ? escaped(child, /[&<>\r]/g) : child.xml))
    .join('');
  return { xml: inside === '' ? `<${name}${told}/>` : `<${name}${told}>${inside}</${name}>` };
}

/** XML that another part of the program has made. */
export function markup(xml: string): Xml {
  if (NOT_XML.test(xml)) refuse(xml);
  return { xml };
}

/** A whole document, ready to be written. */
export function xmlDocument({ xml }: Xml): string {
  return `<?xml version="1.0" encoding="UTF-8"?>\n${xml}\n`;
}

function escaped(text: string, marks: RegExp): string {
  if (NOT_XML.test(text)) refuse(text);
  return text.replace(marks, (mark) => ENTITIES[mark] ?? mark);
}

function refuse(text: string): never {
  throw new InputError('text', text, 'text without control characters');
}
