import { describe, expect, it } from 'vitest';
import { ContentError } from '../../src/diagnostics/diagnostic.js';
import { ITEM_SCHEMA, PACKAGE_SCHEMA } from '../../src/exchange/qti/namespaces.js';
import { qtiFiles } from '../../src/exchange/qti/package.js';
import type { Problem } from '../../src/problems/problem.js';
import { Faults } from '../../src/sheets/fault.js';
import { portableProblem } from '../../src/sheets/portable.js';
import { head, lesson, problem } from '../sheets/class-lessons.js';
import { misshapen, PACKAGE_SHAPES, QTI_SHAPES } from './shapes.js';
import { styleIn, VARIANT } from './sheets.js';
import { type Node, named, readXml, textOf } from './xml-reader.js';

const place = { folder: '../figures/', name: 'one' };

function portable(ask: string, changes: Partial<Problem> = {}) {
  const faults = new Faults();
  const made = portableProblem(
    lesson(),
    problem({ ask, ...changes }),
    { style: styleIn('mm'), place },
    faults,
  );
  faults.demandNone();
  return made;
}

const RICH = `A wheel of {{teeth}} teeth, **module** {{mm module}}, has $d_a = m(z + 2.76)$ for its rule.

$$z = \\VAL{teeth}$$

- one & two
- three < four

1. First
1. Then

| Teeth | Leaves |
|---:|---|
| {{teeth}} | 8 |

{{figure "spaces-not-holes" spaces=5}}
`;

describe('an author’s text for another program', () => {
  it('is plain text without marks, its values in', () => {
    expect(portable(RICH).ask.plain.split('\n')).toEqual([
      'A wheel of 60 teeth, module 0.8\u202Fmm, has $d_a = m(z + 2.76)$ for its rule.',
      '$z = 60$',
      '– one & two',
      '– three < four',
      '1. First',
      '1. Then',
      'Teeth; Leaves',
      '60; 8',
      '[5 spaces lie between 6 holes, numbered 0 to 5.]',
    ]);
  });

  it('is well-formed XHTML with MathML, and its figure goes along as a file that is listed', async () => {
    const asked = problem({ ask: RICH });
    const sheet = { head, variant: VARIANT, lessons: [{ lesson: lesson(), problems: [asked] }] };
    const files = qtiFiles(sheet, styleIn('mm'));
    const read = new Map(
      (await readXml([...files.values()])).map((node, at) => [[...files.keys()][at], node]),
    );
    const item = read.get(`items/lesson_1_blank_${VARIANT}.xml`) as Node;
    expect(misshapen(item, ITEM_SCHEMA.namespace, QTI_SHAPES)).toEqual([]);
    const [body] = named(item, 'qti-item-body');
    const maths = named(body as Node, 'math');
    expect(maths.map(({ namespace }) => namespace)).toEqual(
      Array(2).fill('http://www.w3.org/1998/Math/MathML'),
    );
    const [image] = named(item, 'img');
    expect(image?.attributes.alt).toBe('5 spaces lie between 6 holes, numbered 0 to 5.');
    const file = (image?.attributes.src ?? '').replace('../', '');
    expect(read.get(file)?.name).toBe('svg');
    const manifest = read.get('imsmanifest.xml') as Node;
    expect(misshapen(manifest, PACKAGE_SCHEMA.namespace, PACKAGE_SHAPES)).toEqual([]);
    const figure = named(manifest, 'resource').find(({ attributes }) => attributes.href === file);
    expect(figure?.attributes.type).toBe('webcontent');
    const leaning = named(manifest, 'dependency').map(({ attributes }) => attributes.identifierref);
    expect(leaning).toContain(figure?.attributes.identifier);
  });

  it('of an example stands before the question, with its figure in a file of its own', async () => {
    const figure = 'A wheel.\n\n{{figure "spaces-not-holes" spaces=5}}';
    const options = [
      { letter: 'A', text: 'Every move was $\\frac{1}{2}$ a space long.' },
      { letter: 'B', text: 'None.' },
    ];
    const [part] = problem().parts;
    if (!part) throw new Error('the problem has a part');
    const expects = { kind: 'choice', letter: 'A', letters: ['A', 'B'] } as const;
    const lettered = { ...part, answer: 'A', accepted: 'only this', expects, options, slips: [] };
    const example = problem({ ask: figure, parts: [lettered, { ...part, ask: 'Second:' }] });
    const asked = problem({ ask: figure, parts: [lettered], example });
    const sheet = {
      head,
      variant: VARIANT,
      version: 'B',
      lessons: [{ lesson: lesson(), problems: [asked] }],
    };
    const files = qtiFiles(sheet, styleIn('mm'));
    const figures = [...files.keys()].filter((name) => name.endsWith('.svg'));
    const start = `figures/lesson_1_blank_${VARIANT}`;
    expect(figures).toEqual([`${start}-example-1.svg`, `${start}-1.svg`]);
    for (const name of figures) expect(files.get(name)).toMatch(/^<svg style="background: #fff" /);
    const names = ['imsmanifest.xml', `items/lesson_1_blank_${VARIANT}.xml`, `tests/lesson_1_${VARIANT}.xml`];
    const [manifest, item, test] = (await readXml(names.map((name) => files.get(name) ?? ''))) as [
      Node,
      Node,
      Node,
    ];
    expect(misshapen(manifest, PACKAGE_SCHEMA.namespace, PACKAGE_SHAPES)).toEqual([]);
    expect(misshapen(item, ITEM_SCHEMA.namespace, QTI_SHAPES)).toEqual([]);
    expect(test.attributes.title).toContain('Version B');
    const [body] = named(item, 'qti-item-body') as [Node];
    const sources = named(body, 'img').map(({ attributes }) => attributes.src);
    expect(sources).toEqual(figures.map((name) => `../${name}`));
    const [div, now] = body.children as [Node, Node];
    expect(div.attributes.class).toBe('worked-example');
    expect(textOf(now)).toBe('Now yours');
    const said = named(div, 'p').map(textOf);
    for (const line of ['(a)', 'A Every move was 12 a space long.', 'B None.', '(b)', 'Second:'])
      expect(said).toContain(line);
    expect(said).toContain('Answer: A Every move was 12 a space long.');
    const told = named(item, 'qti-modal-feedback').map(textOf);
    expect(told[0]).toBe('Right: A Every move was 12 a space long.');
    expect(told.at(-1)).not.toContain('accepted');
  });

  it('has under it what is printed of a working, with room for what is missing', () => {
    const { ask } = portable('Fill the gaps.', {
      shown: {
        kind: 'working',
        numbered: true,
        lines: [
          { left: 'd_a', formula: 'd_a = m*(z + 2.76)', numbers: { m: '0.8', z: '60' }, result: '50.208 mm' },
          { left: 'r' },
          { say: 'Turn to', blank: true },
        ],
      },
    });
    expect(ask.plain.split('\n')).toEqual([
      'Fill the gaps.',
      '1. d_a = m × (z + 2.76) = 0.8 × (60 + 2.76) = 50.208 mm',
      '2. r = ____',
      '3. Turn to ____',
    ]);
  });

  it('has under it a table, with what is missing left blank', () => {
    const { ask } = portable('Which row is wrong?', {
      shown: {
        kind: 'table',
        heads: ['Tooth', 'Angle'],
        rows: [{ head: '1', value: '6°' }, { head: '<2>' }],
      },
    });
    expect(ask.plain).toBe('Which row is wrong?\nTooth; Angle\n1; 6°\n<2>; ____');
  });

  it('tells what is wrong with its words, with the lesson and the problem', () => {
    for (const text of [
      'Bad $\\frac{$ here',
      '{{figure "spaces-not-holes" spaces=-1}}',
      '{{worked "wheel"}}',
      'A \u0001',
    ])
      expect(() => portable(text), text).toThrow(ContentError);
  });
});
