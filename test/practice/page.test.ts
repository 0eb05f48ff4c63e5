import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'puppeteer';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { problemsOf } from '../../src/lesson/class-set.js';
import { practiceFile } from '../../src/practice/site.js';
import type { Problem } from '../../src/problems/problem.js';
import { kits, lessonNames, practiceOf, prepared } from './lessons.js';
import { Site, violations } from './window.js';

const site = new Site();
const [harrowLane] = kits;
const CODE = '7KQ-2M4-X';
const PHONE = [360, 740] as const;
const DESK = [1280, 900] as const;
/** 1280 pixels enlarged to four times their size. */
const ENLARGED = [320, 256] as const;

beforeAll(() => site.open(lessonNames.map((name) => practiceOf(name))));
afterAll(() => site.close());

const printedFor = (name: string, units: 'mm' | 'inch'): Problem[] =>
  problemsOf(prepared(name, harrowLane, units), CODE, { kit: harrowLane, units });

/** The text of a page's every match. */
const texts = (page: Page, selector: string): Promise<string[]> =>
  page.$$eval(selector, (all) => all.map((one) => one.textContent?.trim() ?? ''));

/** Types a code as a learner does, by keyboard alone. */
async function takeCode(page: Page, code: string): Promise<void> {
  await page.focus('#code');
  await page.keyboard.type(code);
  await page.keyboard.press('Enter');
}

describe.each(lessonNames)('the page of %s', (name) => {
  it('answers as the printed key does for the same code, in either units', async () => {
    const page = await site.window(practiceFile({ name }), ...DESK);
    for (const units of ['mm', 'inch'] as const) {
      await page.$eval('#code', (box) => {
        (box as unknown as { value: string }).value = '';
      });
      await takeCode(page, units === harrowLane.units ? CODE : `${CODE}-${units}`);
      await page.$$eval('.buttons [aria-expanded]', (all) => {
        for (const one of all) (one as unknown as { click(): void }).click();
      });
      const printed = printedFor(name, units).flatMap(({ parts }) => parts.map(({ answer }) => answer));
      expect(await texts(page, '.problem > .working strong')).toEqual(printed);
    }
    await page.close();
  });
});

describe.each([
  ['on a telephone', PHONE, lessonNames],
  ['on a desk', DESK, lessonNames.slice(-1)],
  ['enlarged four times', ENLARGED, lessonNames.slice(-1)],
] as const)('%s', (_, size, names) => {
  it.each(names)(
    'has nothing for axe-core to find in %s, answered and with its working open',
    async (name) => {
      const page = await site.window(practiceFile({ name }), size[0], size[1]);
      // One lesson is looked at in every state: the others have the same boxes and colours, and other words.
      const whole = name === lessonNames.at(-1);
      if (whole) expect(await violations(page)).toEqual([]);
      await page.$$eval('form.part', (all) => {
        for (const form of all) {
          const box = form.querySelector('input[type="text"]') as unknown as { value: string } | null;
          if (box) box.value = '7';
          else form.querySelector('input')?.setAttribute('checked', '');
          (form as unknown as { requestSubmit(): void }).requestSubmit();
        }
      });
      await page.$$eval('[aria-expanded], summary', (all) => {
        for (const one of all) (one as unknown as { click(): void }).click();
      });
      for (const scheme of whole ? ['light', 'dark'] : ['light']) {
        await page.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: scheme }]);
        expect(await violations(page)).toEqual([]);
      }
      const [wide, window] = await page.evaluate(() => {
        const { document, innerWidth } = globalThis as unknown as {
          document: { documentElement: { scrollWidth: number } };
          innerWidth: number;
        };
        return [document.documentElement.scrollWidth, innerWidth] as const;
      });
      expect(wide).toBeLessThanOrEqual(window);
      await page.close();
    },
  );
});

it('axe-core does find a box without a label', async () => {
  const page = await site.window('index.html', ...DESK);
  await page.evaluate(`document.querySelector('main').append(document.createElement('input'))`);
  expect((await violations(page)).join()).toContain('label: <input');
  await page.close();
});

describe('by keyboard alone', () => {
  it('a learner goes round a whole lesson: a slip first, then every answer right', async () => {
    const name = '06-blank-and-pinion-sizes';
    const page = await site.window(practiceFile({ name }), ...PHONE);
    await takeCode(page, CODE);
    const problems = printedFor(name, 'mm');
    await page.focus('#problems');
    for (const problem of problems)
      for (const part of problem.parts) {
        await toNext(page, 'input');
        const [slip] = part.slips;
        if (slip && !part.options) {
          await page.keyboard.type(slip.gives);
          await page.keyboard.press('Enter');
          expect(await remark(page)).toContain(slip.says);
          await page.keyboard.down('Control');
          await page.keyboard.press('a');
          await page.keyboard.up('Control');
        }
        if (part.expects.kind === 'choice') await choose(page, part.expects.letter);
        else await page.keyboard.type(part.answer.replaceAll('\u202F', ' '));
        await page.keyboard.press('Enter');
        expect(await remark(page)).toMatch(/^Right\./);
      }
    expect(await texts(page, '#tally')).toEqual([`${problems.length} of ${problems.length} problems right.`]);
    expect(await page.$$eval('.state:not([hidden])', (all) => all.length)).toBe(problems.length);
    // What was answered is there again after the page was closed.
    await page.reload({ waitUntil: 'load' });
    expect(await texts(page, '#tally')).toEqual([`${problems.length} of ${problems.length} problems right.`]);
    await page.close();
  });

  it('draws the wheel that a slip would make', async () => {
    const name = '16-simple-indexing';
    const page = await site.window(practiceFile({ name }), ...DESK);
    await takeCode(page, CODE);
    const setting = printedFor(name, 'mm').find((one) => one.name === 'setting') as Problem;
    await page.focus('#problem-setting-1');
    await page.keyboard.type(setting.parts[0]?.slips.at(-1)?.gives ?? '');
    await page.keyboard.press('Enter');
    const drawn = await page.$eval(
      '#problem-setting-1-remark svg',
      (svg) => svg.getAttribute('aria-label') ?? '',
    );
    expect(drawn).toContain(`a wheel of ${setting.drawn.divisions} teeth`);
    await page.close();
  });

  it('takes fresh numbers for one problem, and its code is one that a sheet could have', async () => {
    const name = '16-simple-indexing';
    const page = await site.window(practiceFile({ name }), ...DESK);
    await takeCode(page, CODE);
    const before = await texts(page, '#problem-possible .ask');
    await page.focus('#problem-possible .buttons button:last-child');
    await page.keyboard.press('Enter');
    expect(await page.evaluate('document.activeElement.id')).toBe('problem-possible-name');
    const [code = ''] = await texts(page, '#problem-possible .code');
    expect(code).not.toContain(CODE);
    const fresh = problemsOf(prepared(name, harrowLane), code.replace('Numbers ', ''), {
      kit: harrowLane,
      units: 'mm',
    });
    await page.focus('#problem-possible .buttons button');
    await page.keyboard.press('Enter');
    const answer = fresh.find((one) => one.name === 'possible')?.parts[0]?.answer;
    expect(await texts(page, '#problem-possible-working strong')).toEqual([answer]);
    expect(await texts(page, '#problem-possible .ask')).not.toEqual(before);
    await page.close();
  });

  it('says what is wrong with a code, and keeps the numbers', async () => {
    const page = await site.window(practiceFile({ name: '16-simple-indexing' }), ...DESK);
    await takeCode(page, CODE);
    await takeCode(page, 'Z');
    expect(await texts(page, '#code-said')).toEqual([expect.stringContaining('is not a variant code')]);
    expect(await texts(page, '#code-now')).toEqual([CODE]);
    await page.close();
  });
});

it('saves the answers as a file', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'benchleaf-saved-'));
  const name = '06-blank-and-pinion-sizes';
  const page = await site.window(practiceFile({ name }), ...DESK);
  const protocol = await page.createCDPSession();
  await protocol.send('Browser.setDownloadBehavior', { behavior: 'allow', downloadPath: folder });
  await takeCode(page, CODE);
  await page.focus(`#problem-${printedFor(name, 'mm')[0]?.name}-1`);
  await page.keyboard.type('=1+1');
  await page.keyboard.press('Enter');
  await page.focus('#save');
  await page.keyboard.press('Enter');
  const file = join(folder, `practice-${name}.csv`);
  await expect.poll(() => readdirSync(folder), { timeout: 10_000 }).toContain(`practice-${name}.csv`);
  expect(readFileSync(file, 'utf8')).toMatch(/,6\.1,7KQ-2M4-X,'=1\+1,/);
  await page.close();
  rmSync(folder, { recursive: true });
});

it('has nothing that moves', async () => {
  const page = await site.window(practiceFile({ name: '16-simple-indexing' }), ...DESK);
  expect(await page.evaluate('document.getAnimations().length')).toBe(0);
  const moving = await page.evaluate(`[...document.querySelectorAll('*')].map((one) => getComputedStyle(one))
    .filter((style) => style.transitionDuration !== '0s' || style.scrollBehavior === 'smooth').length`);
  expect(moving).toBe(0);
  await page.close();
});

it('can send nothing, though it tried', async () => {
  const page = await site.window('index.html', ...DESK);
  const tried = await page.evaluate(`fetch('https://example.org/').then(() => 'sent', () => 'refused')`);
  expect(tried).toBe('refused');
  site.complaints.splice(
    0,
    site.complaints.length,
    ...site.complaints.filter((one) => !one.includes('example.org')),
  );
  await page.close();
});

it('no page asked for anything or complained', () => expect(site.complaints).toEqual([]));

/** Presses Tab until the focus stands on such an element. */
async function toNext(page: Page, tag: string): Promise<void> {
  for (let press = 0; press < 40; press++) {
    await page.keyboard.press('Tab');
    if ((await page.evaluate('document.activeElement.localName')) === tag) return;
  }
  throw new Error(`no ${tag} within 40 presses of Tab`);
}

/** Chooses by the arrows, from the first. */
async function choose(page: Page, letter: string): Promise<void> {
  await page.keyboard.press('Space');
  for (let press = 0; press < 8; press++) {
    if ((await page.evaluate('document.activeElement.value')) === letter) return;
    await page.keyboard.press('ArrowDown');
  }
  throw new Error(`no choice ${letter}`);
}

/** What is said of the answer that has the focus. */
const remark = (page: Page): Promise<string> =>
  page.evaluate(
    `document.activeElement.closest('form').querySelector('.remark').textContent`,
  ) as Promise<string>;
