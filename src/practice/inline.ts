import { createHash } from 'node:crypto';

/** `<` in these would end or change a script. In strings and patterns of JavaScript `\x3c` is the same. */
const MARKUP = /<(?=!--|\/?script)/gi;

/** A program as it stands in a page. */
export const inlineScript = (source: string): string => source.replace(MARKUP, '\\x3c').trim();

/** Data as it stands in a page. */
export const inlineData = (json: string): string => json.replaceAll('<', '\\u003c');

/**
 * What a page may do, as its content security policy: run and show what is written in it, to the letter, and nothing
 * else. It may not fetch, send or frame anything.
 */
export function policyFor({
  scripts = [],
  style,
}: {
  readonly scripts?: readonly string[];
  readonly style: string;
}): string {
  const rules = [
    "default-src 'none'",
    `script-src ${scripts.length === 0 ? "'none'" : scripts.map(hashOf).join(' ')}`,
    `style-src ${hashOf(style)}`,
    'font-src data:',
    "base-uri 'none'",
    "form-action 'none'",
  ];
  return rules.join('; ');
}

const hashOf = (text: string): string => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
