import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { openKits } from '../../src/kit/open.js';
import type { Kit } from '../../src/kit/schema.js';
import { problemsOf } from '../../src/lesson/class-set.js';
import { prepareLesson } from '../../src/lesson/prepare.js';
import { readLesson } from '../../src/lesson/source.js';
import { codeFor } from '../../src/problems/code.js';
import { answerKeyHtml } from '../../src/sheets/answer-key.js';
import type { SheetStyle } from '../../src/sheets/model.js';
import { problemSheetHtml } from '../../src/sheets/problem-sheet.js';

const kits = openKits(['lessons/kits/harrow-lane.yaml', 'lessons/kits/mill-yard.yaml']) as [Kit, Kit];
const names = ['06-blank-and-pinion-sizes', '16-simple-indexing'];

function sheetOf(name: string, kit: Kit, code: string) {
  const file = `lessons/${name}/lesson.md`;
  const setting = { kit, units: kit.units };
  const prepared = prepareLesson(readLesson(readFileSync(file, 'utf8'), file), setting);
  const problems = problemsOf(prepared, code, setting);
  const head = { course: 'Class', club: '', kit: kit.kit };
  return { head, variant: code, lessons: [{ lesson: prepared.lesson, problems }] };
}

const styleOf = ({ units }: Kit): SheetStyle => ({ paper: 'a4', print: 'plain', units });
/** What stands after one problem's number and before the next. */
const problemHtml = (html: string, number: string): string =>
  html.split('<p class="problem-number">').find((part) => part.startsWith(`${number}<`)) ?? '';

describe.each(kits.map((kit) => [kit.kit, kit] as const))('%s', (_, kit) => {
  it('prints options with letters, tables, numbered lines, and a blank for each thing left out', () => {
    const sheet = sheetOf('16-simple-indexing', kit, codeFor('one'));
    const html = problemSheetHtml(sheet, styleOf(kit));
    const [{ problems = [] } = {}] = sheet.lessons;
    problems.forEach((problem, at) => {
      const own = problemHtml(html, `16.${at + 1}`);
      const options = problem.parts.flatMap((part) => part.options ?? []);
      expect(own.match(/class="option-letter"/g) ?? []).toHaveLength(options.length);
      if (problem.shown?.kind === 'table') {
        expect(own.match(/<th scope="row">/g)).toHaveLength(problem.shown.rows.length);
        expect(own.match(/class="blank/g)).toHaveLength(1);
      }
      if (problem.shown?.kind === 'working') expect(own.match(/class="line-number"/g)).toHaveLength(5);
    });
    expect(html.match(/<section class="example">/g)).toHaveLength(1);
    expect(html).not.toMatch(/\{\{|undefined|\[object/);
  });

  it('tells what is wrong with each letter by the option it stands for, and what follows from a slip', () => {
    const html = answerKeyHtml(sheetOf('16-simple-indexing', kit, codeFor('one')), styleOf(kit));
    expect(html).toMatch(/<th scope="row"[^>]*>[A-E] [^<]+\.<\/th><td>Then /);
    expect(html).toMatch(
      /class="label">ft<\/span> from \(a\): 40 gives|class="label">ft<\/span> from \(a\): 60 gives/,
    );
    expect(html).not.toMatch(/\{\{|undefined|\[object/);
  });
});

it('a gap in a question is wide enough to write in, and keeps its equals sign', () => {
  const html = problemSheetHtml(sheetOf('16-simple-indexing', kits[0], codeFor('one')), styleOf(kits[0]));
  const gaps = problemHtml(html, '16.1');
  expect(gaps.match(/class="blank gap"/g)).toHaveLength(5);
  expect(gaps).toMatch(/<span class="whole">= <span class="blank gap"/);
  expect(html).not.toContain('____');
});

it('a figure stands beside the number of its problem without being wider than the page', () => {
  const style: SheetStyle = { paper: 'a4', print: 'plain', units: 'inch' };
  const widths = Array.from({ length: 30 }, (_, code) => {
    const html = problemSheetHtml(sheetOf('16-simple-indexing', kits[1], codeFor(`${code}`)), style);
    return Number(/<svg[^>]*width="([\d.]+)mm"/.exec(problemHtml(html, '16.18'))?.[1]);
  });
  expect(Math.min(...widths)).toBeGreaterThan(40);
  // A4 less its margins, less the column of numbers: 3.2 em of 11.25 points.
  expect(Math.max(...widths)).toBeLessThanOrEqual(162 - (3.2 * 11.25 * 25.4) / 72);
}, 60_000);

it('in inches what was tried is compared in inches', () => {
  const html = answerKeyHtml(sheetOf('12-over-travel-and-stacks', kits[1], codeFor('one')), styleOf(kits[1]));
  const tried = html.match(/travel ≤ slide travel, [^<]*/g) ?? [];
  expect(tried).toHaveLength(3);
  for (const one of tried) expect(one).toMatch(/^travel ≤ slide travel, [0-2]\.\d+ ≤ [01]\.\d+, in inches: /);
});

it('a problem whose working is begun tells no answer on the sheet', () => {
  for (const name of names)
    for (let code = 0; code < 25; code++) {
      const sheet = sheetOf(name, kits[0], codeFor(`${code}`));
      const html = problemSheetHtml(sheet, styleOf(kits[0]));
      const [{ lesson, problems = [] } = { lesson: undefined }] = sheet.lessons;
      problems.forEach(({ parts, example }, at) => {
        if (!example && !parts.some(({ shown }) => shown)) return;
        const own = problemHtml(html, `${lesson?.number}.${at + 1}`).split('<section class="example">')[0];
        for (const { answer } of parts) {
          expect(own).not.toContain(answer);
          expect(own).not.toContain(answer.replace('\u202F', '\u00A0'));
        }
      });
    }
}, 60_000);
