import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { keyOf } from '../../src/exchange/key.js';
import type { Key } from '../../src/exchange/key-schema.js';
import { codeFor } from '../../src/problems/code.js';
import { answerKeyHtml } from '../../src/sheets/answer-key.js';
import { KITS, sheetsFor, styleIn, UNITS } from './sheets.js';
import { classed, figuresIn, type Node, named, openReader, wordsOf, type XmlReader } from './xml-reader.js';

type KeyProblem = Key['lessons'][number]['problems'][number];
type KeyPart = KeyProblem['parts'][number];

const workshops = KITS.flatMap((kit) => UNITS.map((units) => ({ kit, units })));
const VARIANTS = 2;

/** Spaces of every kind as one, as a page is read. */
const plain = (text: string): string => text.replace(/\s+/g, ' ').trim();

let reader: XmlReader;
beforeAll(async () => {
  reader = await openReader();
});
afterAll(() => reader.close());

describe.each(workshops)('the printed key for $kit in $units, read as a page', ({ kit, units }) => {
  const draw = sheetsFor(kit, units);
  const codes = Array.from({ length: VARIANTS }, (_, place) => codeFor(`key/${kit}/${units}/${place}`));

  it.each(codes)('says of variant %s what key.json says, and no more', async (variant) => {
    const sheet = { ...draw(variant, 'Ada Brown'), version: 'B' };
    const key = keyOf(sheet, styleIn(units));
    const [page] = (await reader.read([answerKeyHtml(sheet, styleIn(units))], 'text/html')) as [Node];
    const head = classed(page, 'total').map(wordsOf);
    expect(head[0]).toContain(`Version ${key.version} , variant ${key.variant} , ${key.learner}`);
    const printed = classed(page, 'problem');
    const told = key.lessons.flatMap(({ problems }) => problems);
    expect(printed).toHaveLength(told.length);
    for (const [at, problem] of told.entries()) {
      const parts = classed(printed[at] as Node, 'key-part');
      expect(parts).toHaveLength(problem.parts.length);
      for (const [place, part] of parts.entries())
        comparePart(part, problem.parts[place] as KeyPart, problem);
    }
  });
});

function comparePart(printed: Node, part: KeyPart, problem: KeyProblem): void {
  const about = `${problem.number} ${part.letter}`.trim();
  const one = (name: string): string => classed(printed, name).map(wordsOf).join(' ');
  expect(one('problem-number')).toBe(about);
  expect(one('answer'), about).toBe(plain(part.answer));
  const lettered = part.options.length > 0;
  expect(one('accepted'), about).toBe(lettered ? '' : plain(`accept ${part.accepted}`));
  expect(one('marks'), about).toBe(part.marks.map(({ code, for: what }) => `${code} ${what}`).join(' '));

  const steps = classed(printed, 'method');
  expect(steps, about).toHaveLength(part.method.length);
  for (const [at, step] of part.method.entries()) {
    const words = wordsOf(steps[at] as Node);
    if ('say' in step) expect(words, about).toBe(plain(step.say));
    else {
      expect(words, about).toContain(plain(step.result));
      expect(figuresIn(words), `${about}: ${step.line}`).toBe(figuresIn(step.line));
    }
  }

  const slips = named(printed, 'tr').map((row) => [named(row, 'th'), named(row, 'td')].map(([cell]) => cell));
  expect(
    slips.map(([gives, says]) => [wordsOf(gives as Node), wordsOf(says as Node)]),
    about,
  ).toEqual(part.slips.map(({ gives, says }) => [plain(`${gives} ${optionOf(gives, part)}`), plain(says)]));

  const lines = classed(printed, 'check').map(wordsOf);
  expect(
    lines.filter((line) => line.startsWith('ft ')),
    about,
  ).toEqual(followLines(part, problem));
  compareChecks(
    lines.filter((line) => line.startsWith('Check ')),
    part,
    about,
  );
}

/** What an option says, TeX and all; the sample course has none with a formula. */
const optionOf = (gives: string, { options }: KeyPart): string =>
  options.find(({ letter }) => letter === gives)?.text ?? '';

function followLines({ follows = [] }: KeyPart, { parts }: KeyProblem): string[] {
  return parts.flatMap(({ letter }, at) => {
    const from = follows.filter((line) => line.part === at);
    const said = from.map(({ gives, answer }) => plain(`${gives} gives ${answer}`)).join(' ; ');
    return from.length === 0 ? [] : [`ft from ${letter}: ${said} .`];
  });
}

/** Checks from one work stand in one line: every one is there, and every line is from a work that the key has. */
function compareChecks(lines: readonly string[], { checks }: KeyPart, about: string): void {
  const works = [...new Set(checks.map(({ source }) => plain(source.split('; ')[0] ?? '')))];
  expect(lines, about).toHaveLength(works.length);
  for (const { source, value, agreement } of checks) {
    const [work = '', ...places] = source.split('; ').map(plain);
    const line = lines.find((one) => one.startsWith(`Check ${work}:`)) ?? '';
    for (const said of [...places, value, agreement]) expect(line, about).toContain(plain(said));
  }
}
