import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { practiceFile, practiceIndex, practicePage } from '../../src/practice/site.js';
import { practiceOf } from './lessons.js';

const page = practiceOf('16-simple-indexing');
const html = practicePage(page);

/** What stands between the tags of a kind. */
const inside = (text: string, tag: string): string[] =>
  [...text.matchAll(new RegExp(`<${tag}[^>]*>([^]*?)</${tag}>`, 'g'))].map(([, one = '']) => one);
const hash = (text: string): string => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;

describe('the page of a lesson', () => {
  it('is one file: nothing in it is fetched', () => {
    const markup = html.replace(/<script[^]*?<\/script>/g, '');
    expect(/<(?:link|img|iframe|object|embed|base)\b/i.exec(markup)).toBeNull();
    const [style = ''] = inside(html, 'style');
    expect([...style.matchAll(/url\(([^)]{0,20})/g)].every(([, to]) => to?.startsWith('data:font/'))).toBe(
      true,
    );
    expect(html.includes('__vite-browser-external')).toBe(false);
  });

  it('may do what is written in it, to the letter, and nothing else', () => {
    const [, policy = ''] = /Content-Security-Policy" content="([^"]*)"/.exec(html) ?? [];
    const rules = policy.replaceAll('&#x27;', "'").replaceAll('&#x3D;', '=').split('; ');
    const [data = '', templates = '', app = ''] = inside(html, 'script');
    expect(rules).toEqual([
      "default-src 'none'",
      `script-src ${hash(templates)} ${hash(app)}`,
      `style-src ${hash(inside(html, 'style')[0] ?? '')}`,
      'font-src data:',
      "base-uri 'none'",
      "form-action 'none'",
    ]);
    expect(JSON.parse(data).name).toBe(page.name);
    expect(inside(html, 'script')).toHaveLength(4);
  });

  it('carries the licences of what it is made with: it is handed on', () => {
    const licences = inside(html, 'script').at(-1) ?? '';
    const parts = licences.split(/^## /m).slice(1);
    for (const name of ['handlebars', 'katex', 'markdown-it', 'mathjs', 'zod'])
      expect(parts.find((one) => one.startsWith(`${name} - `))?.length, name).toBeGreaterThan(500);
  });

  it('is made the same each time', () => expect(practicePage(page) === html).toBe(true));

  it('keeps a hostile title as words', () => {
    const title = '</script><script>alert(1)</script><!--';
    const made = practicePage({ ...page, title, goals: [title] });
    expect(inside(made, 'script')).toHaveLength(4);
    expect(JSON.parse(inside(made, 'script')[0] ?? '').title).toBe(title);
  });
});

it('the index leads to each page, and runs no script', () => {
  const lessons = [practiceOf('06-blank-and-pinion-sizes'), page];
  const index = practiceIndex(page.head, lessons);
  for (const lesson of lessons) expect(index).toContain(`href="${practiceFile(lesson)}"`);
  expect(index).toContain('script-src &#x27;none&#x27;');
  expect(inside(index, 'script')).toEqual([]);
});
