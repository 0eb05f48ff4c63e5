import { describe, expect, it } from 'vitest';
import { ContentError } from '../../src/diagnostics/diagnostic.js';
import { InputError } from '../../src/diagnostics/errors.js';
import { keyOf } from '../../src/exchange/key.js';
import { qtiFiles } from '../../src/exchange/qti/package.js';
import { element, markup, xmlDocument } from '../../src/exchange/qti/xml.js';
import type { Problem } from '../../src/problems/problem.js';
import type { ProblemSheet } from '../../src/sheets/model.js';
import { lesson, problem } from '../sheets/class-lessons.js';
import { styleIn } from './sheets.js';
import { type Node, named, readXml, textOf } from './xml-reader.js';

const HOSTILE = [
  '</p><script>alert(1)</script>',
  '<qti-item-body>',
  'a & b &amp; c &#60;',
  '"quoted" and \'quoted\'',
  ']]> <![CDATA[ <!-- -->',
  '=1+1',
];

/** A sheet with a hostile text wherever a text may stand. */
function sheetWith(text: string): ProblemSheet {
  const [part] = problem().parts;
  if (!part) throw new Error('the problem has a part');
  const asked: Problem = problem({
    ask: `How far? ${text}`,
    values: {},
    parts: [
      {
        ...part,
        ask: text,
        answer: text,
        accepted: text,
        expects: { kind: 'word', word: text, other: 'no' },
        method: [{ say: text }],
        slips: [{ gives: text, says: text }],
      },
      { ...part, ask: `Again: ${text}`, expects: { kind: 'set', items: [text, 'x'] }, slips: [] },
      { ...part, ask: text, expects: { kind: 'word', word: text }, slips: [] },
    ],
  });
  return {
    head: { course: text, club: text, kit: text },
    variant: '7KQ-2M4-X',
    learner: text,
    lessons: [{ lesson: lesson({ title: text, name: text }), problems: [asked] }],
  };
}

describe.each(HOSTILE)('the text %s', (text) => {
  it('stays text in every file of a package, and is read back as it was', async () => {
    const files = qtiFiles(sheetWith(text), styleIn('mm'));
    const [manifest, test, item] = (await readXml([...files.values()])) as [Node, Node, Node];
    for (const name of files.keys()) expect(name).toMatch(/^[A-Za-z0-9_./-]+$/);
    expect(named(manifest, 'resource')).toHaveLength(2);
    expect(test.attributes.title).toContain(text);
    expect(item.attributes.title).toContain(text);
    expect(named(item, 'qti-item-body')).toHaveLength(1);
    expect(named(item, 'script')).toHaveLength(0);
    const choices = named(item, 'qti-simple-choice').map(textOf);
    expect(choices).toContain(text);
    expect(named(item, 'qti-map-entry').map(({ attributes }) => attributes['map-key'])).toContain(text);
    const [method] = named(item, 'qti-modal-feedback').filter(
      ({ attributes }) => attributes.identifier === 'shown',
    );
    expect(textOf(method as Node)).toContain(text);
  });

  it('stays text in a key', () => {
    const key = keyOf(sheetWith(text), styleIn('mm'));
    expect(key).toMatchObject({ course: text, learner: text });
    expect(key.lessons[0]?.problems[0]?.parts[0]).toMatchObject({ answer: text, slips: [{ gives: text }] });
  });
});

it('a right-to-left name stays whole in a key, and its letters in their order', () => {
  const name = 'דוד בן־אהרן';
  const sheet = { ...sheetWith('plain'), learner: name };
  const read = JSON.parse(JSON.stringify(keyOf(sheet, styleIn('mm'))));
  expect(read.learner).toBe(name);
});

describe('what XML cannot hold', () => {
  it.each(['\0', '\u0008', '\u001F', '\uFFFE', '\uD800', 'a\u000Bb'])(
    '%j is refused wherever it stands',
    (text) => {
      expect(() => element('p', {}, text)).toThrow(InputError);
      expect(() => element('p', { title: text })).toThrow(InputError);
      expect(() => markup(`<p>${text}</p>`)).toThrow(InputError);
    },
  );

  it('is told with its lesson and problem when a lesson has it', () => {
    const make = () => qtiFiles(sheetWith('a\u0007b'), styleIn('mm'));
    expect(make).toThrow(ContentError);
    try {
      make();
    } catch (error) {
      const [fault] = (error as ContentError).diagnostics;
      expect(fault).toMatchObject({ file: lesson().file, message: expect.stringContaining('problem blank') });
    }
  });

  it('is not what other letters, line ends and tabs are', async () => {
    const text = 'Åsa\u202F\u00A0𝔸\tб\nא';
    const [read] = await readXml([xmlDocument(element('p', { title: text }, text))]);
    expect(textOf(read as Node)).toBe(text);
    expect((read as Node).attributes.title).toBe(text);
  });
});
