import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { keyOf } from '../../src/exchange/key.js';
import type { Key } from '../../src/exchange/key-schema.js';
import { qtiFiles } from '../../src/exchange/qti/package.js';
import type { Problem } from '../../src/problems/problem.js';
import { problemSheetHtml } from '../../src/sheets/problem-sheet.js';
import { itemFile, KITS, sampleSheet, styleIn, UNITS, VARIANT } from './sheets.js';
import { classed, figuresIn, type Node, named, openReader, wordsOf, type XmlReader } from './xml-reader.js';

type KeyProblem = Key['lessons'][number]['problems'][number];

/** One problem in its three forms. */
interface Forms {
  readonly problem: Problem;
  readonly told: KeyProblem;
  readonly body: Node;
  readonly printed: Node;
  /** What is printed before it. */
  readonly example: Node | undefined;
}

const workshops = KITS.flatMap((kit) => UNITS.map((units) => ({ kit, units })));
let reader: XmlReader;
beforeAll(async () => {
  reader = await openReader();
});
afterAll(() => reader.close());

describe.each(workshops)('what a sheet for $kit prints in $units', ({ kit, units }) => {
  let all: Forms[];
  beforeAll(async () => {
    const sheet = sampleSheet(kit, units);
    const files = qtiFiles(sheet, styleIn(units));
    const told = keyOf(sheet, styleIn(units)).lessons.flatMap(({ problems }) => problems);
    const asked = sheet.lessons.flatMap(({ problems }, at) =>
      problems.map((problem) => ({ problem, item: files.get(itemFile(at, problem, VARIANT)) ?? '' })),
    );
    const items = await reader.read(asked.map(({ item }) => item));
    const [page] = (await reader.read([problemSheetHtml(sheet, styleIn(units))], 'text/html')) as [Node];
    const sections = [...named(page, 'section')];
    const printed = sections.filter(isProblem);
    expect(printed).toHaveLength(asked.length);
    all = asked.map(({ problem }, at) => {
      const section = printed[at] as Node;
      const before = sections[sections.indexOf(section) - 1];
      return {
        problem,
        told: told[at] as KeyProblem,
        body: named(items[at] as Node, 'qti-item-body')[0] as Node,
        printed: section,
        example: before && classed(before, 'example')[0] === before ? before : undefined,
      };
    });
  });

  it('before a problem, worked with other numbers, stands before it in both', () => {
    const examples = all.filter(({ example }) => example);
    expect(examples.length).toBeGreaterThan(1);
    for (const { problem, told, body, example } of all) {
      const [div] = classed(body, 'worked-example');
      expect([div !== undefined, told.example !== undefined], problem.name).toEqual([
        example !== undefined,
        example !== undefined,
      ]);
      if (!div || !example || !told.example) continue;
      expect(body.children.indexOf(div)).toBe(0);
      const [print, item] = [wordsOf(example), wordsOf(div)];
      // The number of the problem stands in the label of the one only.
      const figures = figuresIn(print.replace(/before you do \S+/, ''));
      expect(figuresIn(item), problem.name).toBe(figures);
      const key = [told.example.question, ...told.example.parts.flatMap(partWords)].join(' ');
      expect(figuresIn(key), problem.name).toBe(figures);
      for (const { answer } of told.example.parts)
        for (const form of [print, item]) expect(form).toContain(plain(answer));
    }
  });

  it('in a question and under it, of a working or a table, stands in both, with as many blanks', () => {
    let blanks = 0;
    for (const { problem, told, body, printed } of all) {
      const asked = TAKEN.flatMap((name) => classed(printed, name));
      const print = asked.map(textOutside).join(' ');
      const item = elements(body).filter(isAsked).map(wordsOf).join(' ');
      const key = [told.question, ...told.parts.flatMap(asksOf)].join(' ');
      expect(figuresIn(item), problem.name).toBe(figuresIn(print));
      expect(figuresIn(key.replace(FIGURE, '')), problem.name).toBe(figuresIn(print));
      const left = asked.flatMap((node) => classed(node, 'blank')).length + blanksIn(print);
      expect(blanksIn(item), problem.name).toBe(left);
      expect(blanksIn(key) > 0, problem.name).toBe(left > 0);
      blanks += left;
    }
    expect(blanks).toBeGreaterThan(8);
  });
});

/** What is printed of a question, by class; room to write and what stands in the margin is no part of it. */
const TAKEN = ['asked', 'options', 'begun'];
/** What an item says of how to answer, and how many marks there are. */
const HOW =
  /^(?:\([a-h]\) \d+ marks?$|Write (?:all that serve|spaces and circle)|Fill every box|Answer|In order:)/;
/** A figure told in words. */
const FIGURE = /\[[^\]]*\]/g;

const elements = (node: Node): Node[] => node.children.filter((child) => typeof child !== 'string') as Node[];
const isAsked = (node: Node): boolean =>
  classed(node, 'worked-example')[0] !== node && !HOW.test(wordsOf(node));
const blanksIn = (text: string): number => text.match(/____/g)?.length ?? 0;

/** The words of a page but those in a drawing. */
function textOutside(node: Node): string {
  if (node.name === 'figure') return '';
  return node.children.map((child) => (typeof child === 'string' ? child : textOutside(child))).join(' ');
}

const asksOf = ({
  question,
  options,
}: Pick<KeyProblem['parts'][number], 'question' | 'options'>): string[] => [
  question,
  ...options.map(({ text }) => text),
];

const isProblem = (node: Node): boolean => classed(node, 'problem')[0] === node;
const plain = (text: string): string => text.replace(/\s+/g, ' ').trim();

function partWords({
  question,
  options,
  method,
  answer,
}: NonNullable<KeyProblem['example']>['parts'][number]) {
  const steps = method.map((step) => ('say' in step ? step.say : step.line));
  return [question, ...options.map(({ text }) => text), ...steps, answer];
}
