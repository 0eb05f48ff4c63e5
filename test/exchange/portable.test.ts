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
import { type Node, named, readXml } from './xml-reader.js';

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
    expect(ask.xhtml).toContain('<p>2. r = ____</p>');
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
    expect(ask.xhtml).toContain('<tr><td>&lt;2&gt;</td><td>____</td></tr>');
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
