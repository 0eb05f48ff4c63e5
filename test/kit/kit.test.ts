import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ContentError } from '../../src/diagnostics/diagnostic.js';
import { printDiagnostics } from '../../src/diagnostics/print.js';
import { listCalculations, work } from '../../src/index.js';
import { givensFromKit } from '../../src/kit/givens.js';
import { openKits } from '../../src/kit/open.js';
import { readKit } from '../../src/kit/read.js';
import type { Kit } from '../../src/kit/schema.js';

const [metric, inch] = openKits(['lessons/kits/harrow-lane.yaml', 'lessons/kits/mill-yard.yaml']) as [
  Kit,
  Kit,
];

function faultsOf(text: string): string {
  try {
    readKit(text, 'ours.yaml');
  } catch (error) {
    if (error instanceof ContentError)
      return printDiagnostics(error.diagnostics, new Map([['ours.yaml', text]]));
    throw error;
  }
  return '';
}

describe('the sample kits', () => {
  it('differ, and change the answer: 53 and 96 divisions', () => {
    const simple = (kit: Kit, divisions: number) =>
      work('dividing.simple', {
        divisions,
        ...givensFromKit(kit, 'dividing.simple', ['divisions', 'ratio', 'circles']),
      }).found;
    expect(simple(metric, 53).possible).toBe(false);
    expect(simple(inch, 53)).toMatchObject({ possible: true, turns: 1 });
    expect(simple(metric, 96).possible).toBe(false);
    expect(simple(inch, 96)).toMatchObject({
      possible: true,
      settings: expect.arrayContaining([{ holes: 15, circle: 24 }]),
    });
  });

  it('read lengths in inches', () => expect(inch.lathe?.centreHeight).toBeCloseTo(88.9, 10));

  it('a dial that reads diameter goes in by half of what it shows', () => {
    expect(givensFromKit(metric, 'setup.passes', ['dialPerDivision'])).toEqual({ dialPerDivision: 0.02 });
    expect(givensFromKit(inch, 'setup.passes', ['dialPerDivision']).dialPerDivision).toBeCloseTo(0.0127, 10);
  });
});

describe('a faulty kit is refused with the place of each fault', () => {
  it.each([
    ['kit: A\nunits: mm\nheds: []\n', 'ours.yaml:3:1: error[kit/value] heds: there is no "heds" here'],
    ['kit: A\nunits: yard\n', 'ours.yaml:2:8: error[kit/value] units: '],
    [
      'kit: A\nunits: mm\nheads:\n  - name: H\n    ratio: 40\n',
      'ours.yaml:4:5: error[kit/value] heads.0.plates: ',
    ],
    [
      'kit: A\nunits: mm\nheads: [{name: H, ratio: -40, plates: [[15]]}]\n',
      'ours.yaml:3:26: error[kit/value] heads.0.ratio: ',
    ],
    ['kit: A\nunits: mm\ndrills: [1 mile]\n', 'ours.yaml:3:10: error[kit/value] drills.0: expected a length'],
    ['kit: [A\nunits: mm\n', 'error[kit/yaml]'],
    ['', 'error[kit/value]'],
    ['kit: A\nkit: B\nunits: mm\n', 'error[kit/yaml]'],
  ])('%j', (text, message) => expect(faultsOf(text)).toContain(message));

  it('says what a mistyped name may have meant', () =>
    expect(faultsOf('kit: A\nunits: mm\nheds: []\n')).toContain('Did you mean "heads"?'));

  it('reports every fault, not only the first', () =>
    expect(faultsOf('kit: 3\nunits: yard\n').match(/error\[/g)).toHaveLength(2));

  it('is not brought down by aliases that multiply', () => {
    const bomb = [
      'a0: &a0 [x, x]',
      ...Array.from({ length: 30 }, (_, i) => `a${i + 1}: &a${i + 1} [*a${i}, *a${i}]`),
    ].join('\n');
    expect(faultsOf(bomb)).toContain('error[kit/');
  });

  it('does not open a file that is not UTF-8, or not a file', () => {
    expect(() => openKits(['lessons'])).toThrow(/there is no file/);
    expect(() =>
      openKits(['node_modules/@fontsource/source-serif-4/files/source-serif-4-latin-400-normal.woff2']),
    ).toThrow(/UTF-8/);
  });

  it('any damage to a kit gives a kit or a located fault', () => {
    const text = readFileSync('lessons/kits/harrow-lane.yaml', 'utf8');
    fc.assert(
      fc.property(fc.nat(text.length), fc.nat(20), fc.string({ maxLength: 6 }), (at, cut, put) => {
        const printed = faultsOf(text.slice(0, at) + put + text.slice(at + cut));
        if (printed !== '') expect(printed).toMatch(/^ours\.yaml:\d+:\d+: error\[kit\//);
      }),
      { numRuns: 500 },
    );
  });
});

it('a notched plate is on the spindle: no kit’s worm comes between', () => {
  expect(givensFromKit(metric, 'dividing.plateError', ['ratio', 'holeError'])).toEqual({});
  expect(givensFromKit(metric, 'dividing.simple', ['ratio'])).toHaveProperty('ratio');
});

describe('what a kit answers', () => {
  const answered = (kit: Kit, name: string, typed: Record<string, unknown>) =>
    work(
      name,
      givensFromKit(
        kit,
        name,
        [
          'leadPitch',
          'leadTpi',
          'wheels',
          'drills',
          'plates',
          'ratio',
          'gears',
          'circles',
          'notches',
          'centreHeight',
        ].filter((key) => given(name).includes(key)),
        typed,
      ),
    ).found;
  const given = (name: string) =>
    listCalculations()
      .find((one) => one.name === name)
      ?.given.map(({ key }) => key) ?? [];

  it('change wheels for its own lead screw, in either system', () => {
    expect(answered(metric, 'screwcut.changeWheels', { pitch: 1 })).toMatchObject({ possible: true });
    expect(answered(inch, 'screwcut.changeWheels', { tpi: 20 })).toMatchObject({ possible: true });
  });

  it('nothing about the lead screw when another is typed', () => {
    expect(answered(inch, 'screwcut.changeWheels', { pitch: 1, leadPitch: 4 })).toMatchObject({
      possible: true,
    });
    expect(
      Object.keys(givensFromKit(inch, 'screwcut.changeWheels', ['leadTpi', 'leadPitch'], { leadPitch: 4 })),
    ).toEqual(['leadPitch']);
  });

  it('compound and differential indexing, direct plates and drills', () => {
    expect(answered(metric, 'dividing.compound', { divisions: 69 })).toMatchObject({ possible: true });
    expect(answered(metric, 'dividing.differential', { divisions: 127 })).toMatchObject({ possible: true });
    expect(answered(metric, 'dividing.direct', { divisions: 12 })).toMatchObject({ possible: true });
    expect(
      answered(metric, 'thread.tappingDrill', { series: 'iso', size: 'M6', base: 'external' }).nearestDrill,
    ).toBe(5);
  });
});
