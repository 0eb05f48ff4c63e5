import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ContentError } from '../../src/diagnostics/diagnostic.js';
import { printDiagnostics } from '../../src/diagnostics/print.js';
import { openKits } from '../../src/kit/open.js';
import type { Kit } from '../../src/kit/schema.js';
import { prepareLesson } from '../../src/lesson/prepare.js';
import { readLesson } from '../../src/lesson/source.js';

const [kit] = openKits(['lessons/kits/harrow-lane.yaml']) as [Kit];
const FILE = '08-ours/lesson.md';
const good = readFileSync('test/lesson/held/08-centre-distance.md', 'utf8');

function prepare(text: string) {
  return prepareLesson(readLesson(text, FILE), { kit, units: 'mm' });
}

function told(text: string): string {
  try {
    prepare(text);
  } catch (error) {
    if (error instanceof ContentError) return printDiagnostics(error.diagnostics, new Map([[FILE, text]]));
    throw error;
  }
  return '';
}

it('a lesson of one problem is read, worked and proven', () => {
  const { lesson } = prepare(good);
  expect(lesson).toMatchObject({ number: 8, title: 'Centre distance and depthing', level: 2 });
  expect(lesson.workings.get('mesh.centreDistance')?.found[0]?.value).toBe('27.20\u202Fmm');
  expect(lesson.cautions).toHaveLength(2);
  expect(lesson.sources).toEqual(['Elementary geometry and arithmetic']);
});

describe('each fault is told at its place', () => {
  const changed = (from: string, to: string) => {
    expect(good).toContain(from);
    return good.replace(from, to);
  };
  it.each([
    [
      'an unknown field',
      'level: 2',
      'levle: 2',
      '4:1: error[lesson/value] levle: there is no "levle" here',
      'Did you mean "level"?',
    ],
    ['a value of the wrong kind', 'level: 2', 'level: two', '4:8: error[lesson/value] level: ', ''],
    ['an unknown caution', 'pivots,', 'pivot,', '8:12: error[lesson/value] cautions.0: ', ''],
    [
      'an unknown name',
      'teeth=teeth',
      'teeth=tooth',
      '25:32: error[lesson/name] there is no value called tooth here',
      '',
    ],
    [
      'an unknown helper',
      '{{problems}}',
      '{{problms}}',
      '27:3: error[lesson/name] there is no value called problms',
      'Did you mean problems?',
    ],
    [
      'an unknown name in a problem',
      '{{leaves}}',
      '{{leavs}}',
      '16:58: error[lesson/name] there is no value called leavs here',
      'Did you mean leaves?',
    ],
    [
      'an unknown figure',
      '"pitch-circles"',
      '"pitch-circle"',
      '25:10: error[lesson/figure] there is no figure called "pitch-circle"',
      'Did you mean pitch-circles?',
    ],
    [
      'a value that a figure does not take',
      'module=module',
      'modul=module',
      '25:52: error[lesson/figure] the figure pitch-circles has no modul',
      'Did you mean module?',
    ],
    [
      'an unknown calculation',
      'calculation: mesh.centreDistance',
      'calculation: mesh.centerDistance',
      '12:18: error[lesson/problem] no calculation is called',
      'Did you mean mesh.centreDistance?',
    ],
    [
      'a working of nothing',
      '{{worked "mesh.centreDistance"}}',
      '{{worked "wheel"}}',
      '23:10: error[lesson/worked] cannot work wheel: ',
      '',
    ],
    [
      'a range that cannot be read',
      '48..96 by 4',
      '48..',
      '14:20: error[lesson/value] problems.centres.vary.teeth: expected a range',
      '',
    ],
    [
      'a number in words',
      'answer: {',
      'choose: four\n    answer: {',
      '17:13: error[lesson/value] problems.centres.choose: expected a number, or names with values',
      '',
    ],
    [
      'a name of another place',
      'vary: {',
      'part: {',
      '"part" does not belong here, or what it holds cannot be read',
      'Did you mean "parts"?',
    ],
    [
      'a kind of working that is misspelt',
      'problems:\n',
      'works:\n  order: { ranks: { one: "1", two: "2", three: "3" } }\nproblems:\n',
      'error[lesson/value] works.order.ranks: there is no "ranks" here',
      'Did you mean "rank"?',
    ],
    [
      'a range with no solution',
      'teeth / leaves >= 5',
      'teeth / leaves >= 50',
      '14:11: error[lesson/problem/no-solution] no values within vary',
      'Mostly because of this: keep does not hold',
    ],
    [
      'braces that do not close',
      '{{teeth}} teeth',
      '{{teeth} teeth',
      '16:21: error[lesson/braces] the braces here cannot be read',
      '',
    ],
    [
      'braces inside a formula',
      'roll on one another …',
      'have $a = {{module}}$',
      'error[lesson/braces-in-maths]',
      'Write \\VAL{module} there.',
    ],
    [
      'three braces',
      'roll on one another …',
      'roll {{{module}}}',
      'error[lesson/braces] three braces',
      'Write {{ and }}.',
    ],
    ['a block inside a line', 'roll on one another …', 'see {{problems}}', 'stands on a line of its own', ''],
    [
      'another file taken in',
      'roll on one another …',
      '{{> secret}}',
      'error[lesson/helper] a lesson cannot take in other files',
      '',
    ],
    [
      'a look behind the names',
      'roll on one another …',
      '{{constructor.name}}',
      'there is no value called constructor.name',
      '',
    ],
    ['a prototype', 'roll on one another …', '{{teeth.__proto__}}', 'teeth has no __proto__', ''],
    [
      'no front matter',
      '---\ntitle',
      'title',
      '1:1: error[lesson/front-matter] a lesson starts with front matter',
      '',
    ],
    ['bad YAML', 'goals:', 'goals: [', 'error[lesson/yaml]', 'Check the spaces'],
  ])('%s', (_, from, to, message, hint) => {
    const text = told(changed(from, to));
    expect(text).toContain(message.includes(': error') ? `${FILE}:${message}` : message);
    expect(text).toContain(hint);
    expect(text).toMatch(/\n {2}\d+ \| /);
  });

  it('all of them at once, in order', () => {
    const text = told(
      changed('{{leaves}}', '{{leavs}}')
        .replace('teeth=teeth', 'teeth=tooth')
        .replace('{{problems}}', '{{problms}}'),
    );
    expect([...text.matchAll(/^08-ours\/lesson\.md:(\d+)/gm)].map(([, line]) => Number(line))).toEqual([
      16, 25, 27,
    ]);
  });
});

it('any damage to a lesson gives a lesson or a located fault, soon', () => {
  fc.assert(
    fc.property(
      fc.nat({ max: good.length - 1 }),
      fc.nat({ max: 12 }),
      fc.oneof(fc.string({ maxLength: 12 }), fc.constantFrom('{{', '}}', '$', '---\n', '[', ': ', '\t', '#')),
      (at, cut, put) => {
        told(good.slice(0, at) + put + good.slice(at + cut));
      },
    ),
    { numRuns: 400 },
  );
}, 120_000);
