import { expect } from 'vitest';
import type { Made } from './judge.js';

/** What no page of ours has, beside what a practice page has as its own. */
const ELEMENTS = /<(?:iframe|object|embed|img|image|base|foreignObject|audio|video|frame|applet|marquee)\b/i;
const HANDLERS = /<[a-z][^<>]*\son[a-z]+\s*=/i;
const ADDRESSES = /(?:href|src|action|data|poster|srcset)\s*=\s*["']?([^"'\s>]*)/gi;
/** Inside the page, the style sheet beside it, and other pages of the practice site. */
const HARMLESS = /^(?:#|benchleaf\.css$|[\w-]+\.html$|index\.html)/;

/** A page that can do nothing but be read. */
export function demandSafe({ name, text }: Made): void {
  if (!/\.(?:pdf|html)$/.test(name)) return;
  // The data and the program of a practice page are held by its policy: nothing of a lesson is run.
  const page = text.replace(/<script\b[^>]*>[^]*?<\/script>/g, '');
  expect(page, name).not.toMatch(ELEMENTS);
  expect(page, name).not.toMatch(HANDLERS);
  if (name.endsWith('.pdf')) expect(text, name).not.toMatch(/<(?:script|form|input)/i);
  expect(text.match(/<title>/g), name).toHaveLength(1);
  const tags = page.match(/<[a-z](?:[^<>"']|"[^"]*"|'[^']*')*>/gi) ?? [];
  for (const tag of tags)
    for (const [, address = ''] of tag.matchAll(ADDRESSES))
      expect(address, `${name}: ${tag}`).toMatch(HARMLESS);
  for (const [, css = ''] of text.matchAll(/<style>([^]*?)<\/style>/g)) {
    const bare = css.replace(/"(?:[^"\\\n]|\\.)*"/g, '""');
    expect(bare, name).not.toMatch(/@import|expression\(|url\((?!["']?(?:data:|""|fonts\/|[\w-]+\.woff2))/);
  }
}
