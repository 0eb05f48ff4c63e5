import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ContentError } from '../../src/diagnostics/diagnostic.js';
import { CommandError } from '../../src/diagnostics/errors.js';
import { printDiagnostics } from '../../src/diagnostics/print.js';
import { readCourse } from '../../src/pack/course.js';

const SAMPLE = 'lessons/courses/larkfield.yaml';
/** Every lesson there is. */
const SHIPPED = readdirSync('lessons')
  .filter((name) => /^\d\d-/.test(name))
  .sort();
const folder = mkdtempSync(join(tmpdir(), 'benchleaf-course-'));
const file = join(folder, 'ours.yaml');

beforeAll(() => {
  for (const lesson of ['01-our-lathe', 'more/02-our-mill', '16-simple-indexing']) {
    mkdirSync(join(folder, lesson), { recursive: true });
    writeFileSync(join(folder, lesson, 'lesson.md'), '');
  }
  mkdirSync(join(folder, '03-not-written-yet'));
  writeFileSync(join(folder, 'kit.yaml'), '');
});
afterAll(() => rmSync(folder, { recursive: true }));

function read(text: string) {
  writeFileSync(file, text);
  return readCourse(file);
}

/** What is printed for a course, without the path; empty for one in order. */
function faultsOf(text: string): string {
  try {
    read(text);
    return '';
  } catch (error) {
    if (!(error instanceof ContentError)) throw error;
    expect(error.diagnostics.length).toBeGreaterThan(0);
    return printDiagnostics(error.diagnostics, error.sources).replaceAll(`${folder}/`, '');
  }
}

const head = 'course: Ours\nclub: A club\nkit: kit.yaml\n';
const lessons = 'lessons: [01-our-lathe]\n';
const job = (words: string) => `${head}${lessons}jobs:\n  - { name: Wheel, ${words} }\n`;
const wheel = 'teeth: 60, module: 0.8, blankThickness: 2';

describe('readCourse(file)', () => {
  it('reads the sample course, whose kit and lessons are there', () =>
    expect(readCourse(SAMPLE)).toEqual({
      file: resolve(SAMPLE),
      title: 'The Larkfield timepiece',
      club: 'Harrow Lane Model Engineers, evening class',
      kit: resolve('lessons/kits/harrow-lane.yaml'),
      variant: undefined,
      lessons: SHIPPED.map((name) => resolve('lessons', name, 'lesson.md')),
      jobs: [
        {
          name: 'Class wheel',
          teeth: 60,
          leaves: 8,
          module: 0.8,
          convention: '2.76',
          depthForm: '2.95',
          blankThickness: 2,
          blanks: 4,
          backing: 1.5,
          clearance: 1,
          cuttingSpeed: 60,
          hole: 6,
          crossing: {
            arms: 5,
            rimInsideDiameter: 40.8,
            hubDiameter: 14,
            armWidthAtRim: 2.4,
            armWidthAtHub: 3.4,
            filletRadius: 1,
          },
        },
      ],
    }));

  it('looks for lessons beside the course first, then among those that come with Benchleaf', () =>
    expect(
      read(
        `${head}lessons: [01-our-lathe, more/02-our-mill, 16-simple-indexing, 06-blank-and-pinion-sizes]\n`,
      ).lessons,
    ).toEqual([
      join(folder, '01-our-lathe/lesson.md'),
      join(folder, 'more/02-our-mill/lesson.md'),
      join(folder, '16-simple-indexing/lesson.md'),
      resolve('lessons/06-blank-and-pinion-sizes/lesson.md'),
    ]));

  it('reads lengths with their unit, and forms as numbers or as text', () =>
    expect(
      read(
        job(
          'teeth: 60, module: 1/32 in, blankThickness: 0,5mm, depthForm: 3, convention: 2.76'.replace(
            '0,5',
            '0.5',
          ),
        ),
      ).jobs[0],
    ).toMatchObject({ module: 0.79375, blankThickness: 0.5, depthForm: '3.00', convention: '2.76' }));

  it('reads a variant code as people write it', () =>
    expect(read(`${head}${lessons}variant: "ooo ooo o"\n`).variant).toBe('000-000-0'));
});

describe('readCourse(file) points at what is wrong', () => {
  it.each([
    [
      'a lesson that is not there',
      `${head}lessons:\n  - 01-our-lahte\n`,
      '5:5',
      'course/lesson',
      'Did you mean "01-our-lathe"?',
    ],
    [
      'one in a folder',
      `${head}lessons: [more/02-our-mil]\n`,
      '4:11',
      'course/lesson',
      'Did you mean "more/02-our-mill"?',
    ],
    [
      'one of those that come with Benchleaf',
      `${head}lessons: [07-depth-and-cuter-choice]\n`,
      '4:11',
      'course/lesson',
      'Did you mean "07-depth-and-cutter-choice"?',
    ],
    [
      'a folder without a lesson',
      `${head}lessons: [03-not-written-yet]\n`,
      '4:11',
      'course/lesson',
      'Choose from 01-our-lathe, ',
    ],
    [
      'a folder that is not there',
      `${head}lessons: [some/where]\n`,
      '4:11',
      'course/lesson',
      'Write the path of the lesson',
    ],
    [
      'a lesson named twice',
      `${head}lessons: [01-our-lathe, ./01-our-lathe]\n`,
      '4:25',
      'course/lesson',
      'Name each lesson once.',
    ],
    [
      'a kit that is not there',
      `${head.replace('kit.yaml', 'kitt.yaml')}${lessons}`,
      '3:6',
      'course/kit',
      'Did you mean "kit.yaml"?',
    ],
    [
      'a kit that is a folder',
      `${head.replace('kit.yaml', 'more')}${lessons}`,
      '3:6',
      'course/value',
      'ends in .yaml',
    ],
    [
      'a word that means nothing',
      `${head}${lessons}lesons: [a]\n`,
      '5:1',
      'course/value',
      'Did you mean "lessons"?',
    ],
    ['no lessons', `${head}lessons: []\n`, '4:10', 'course/value', 'lessons'],
    [
      'a variant code with a slip',
      `${head}${lessons}variant: "000-000-1"\n`,
      '5:10',
      'course/value',
      'a symbol of it is wrong',
    ],
    [
      'a variant code that YAML takes for a number',
      `${head}${lessons}variant: 0000000\n`,
      '5:10',
      'course/value',
      'in quotation marks',
    ],
    [
      'a wheel without teeth',
      job('module: 0.8, blankThickness: 2'),
      '6:5',
      'course/value',
      'jobs.0.teeth: expected a whole number from 6 to 1000',
    ],
    [
      'negative teeth',
      job(wheel.replace('60', '-4')),
      '6:27',
      'course/value',
      'expected a whole number from 6 to 1000',
    ],
    [
      'a length in another unit',
      job(wheel.replace('0.8', '0.8 yards')),
      '6:39',
      'course/value',
      'expected a length from 0.05 to 20 mm',
    ],
    [
      'a length that is none',
      job(wheel.replace('0.8', '.nan')),
      '6:39',
      'course/value',
      'expected a length from 0.05 to 20 mm',
    ],
    [
      'a form that is not made',
      job(`${wheel}, depthForm: 3.1`),
      '6:74',
      'course/value',
      'expected one of 2.95, 3.38, 2.45, 3.00',
    ],
    [
      'a convention that wants leaves',
      job(`${wheel}, convention: leaves`),
      '6:5',
      'course/value',
      'jobs.0.leaves: expected a whole number from 5',
    ],
    [
      'a pinion larger than its wheel',
      job(`${wheel.replace('60', '8')}, convention: leaves, leaves: 40`),
      '6:',
      'course/value',
      'jobs.0.',
    ],
    ['half a blank', job(`${wheel}, blanks: 1.5`), '6:71', 'course/value', 'jobs.0.blanks'],
    ['a word that no job has', job(`${wheel}, teath: 1`), '6:63', 'course/value', 'Did you mean "teeth"?'],
    ['broken YAML', 'course: [\n', '2:1', 'course/yaml', 'Check the spaces'],
  ])('%s', (_, text, place, rule, words) => {
    const printed = faultsOf(text);
    expect(printed).toMatch(new RegExp(`^ours\\.yaml:${place}.*error\\[${rule}\\]`));
    expect(printed).toContain(words);
  });

  it('tells all at once, with the lines themselves', () => {
    const printed = faultsOf(`${head.replace('kit.yaml', 'none.yaml')}lessons:\n  - aaa\n  - bbb\n`);
    expect(printed.match(/error\[/g)).toHaveLength(3);
    expect(printed).toContain('  5 |   - aaa\n    |     ^^^');
  });

  it('says that there is no such file', () =>
    expect(() => readCourse(join(folder, 'none.yaml'))).toThrow(CommandError));

  it('gives a course or located faults after any damage', () => {
    const text = readFileSync(SAMPLE, 'utf8');
    fc.assert(
      fc.property(fc.nat(text.length), fc.nat(20), fc.string({ maxLength: 6 }), (at, cut, put) => {
        const printed = faultsOf(text.slice(0, at) + put + text.slice(at + cut));
        if (printed !== '') expect(printed).toMatch(/^ours\.yaml:\d+:\d+: error\[course\//);
      }),
      { numRuns: 300 },
    );
  });
});
