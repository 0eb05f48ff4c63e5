import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { shopCards } from '../../src/reference/cards/index.js';
import { benchleaf } from '../cli/benchleaf.js';
import { lookAt } from '../print/fingerprint.js';

const folder = mkdtempSync(join(tmpdir(), 'benchleaf-card-make-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const made = (...words: string[]) => benchleaf('make', ...words, '--quiet');

/** Without a dividing head. */
const kit = join(folder, 'lathe.yaml');
writeFileSync(kit, 'kit: A lathe and no more\nunits: mm\nspindleSpeeds: [400, 800]\n');

/** A course whose lesson wants nothing of a kit. */
const course = join(folder, 'plain.yaml');
mkdirSync(join(folder, 'plain'));
writeFileSync(
  join(folder, 'plain/lesson.md'),
  '---\ntitle: Nothing wanted\ncautions: [isolate-first]\n---\nRead this.\n',
);
writeFileSync(
  course,
  `course: Plain\nclub: Ours\nkit: ${kit}\nlessons: [plain]\n` +
    'jobs:\n  - { name: Class wheel, teeth: 60, leaves: 8, module: 0.8, blankThickness: 2 }\n',
);

describe('cards', () => {
  it('of a course are the set-up card of each job, and every family', async () => {
    const out = join(folder, 'all');
    expect(await made('--only', 'cards', '--out', out)).toEqual({ code: 0, out: '', err: '' });
    expect(readdirSync(join(out, 'larkfield')).sort()).toEqual([
      'card-class-wheel.pdf',
      'cards',
      'packing-list-1-of-1.json',
    ]);
    expect(readdirSync(join(out, 'larkfield', 'cards')).sort()).toEqual(
      shopCards.map(({ name }) => `${name}.pdf`).sort(),
    );
    const { text } = await lookAt(join(out, 'larkfield', 'cards', 'sector-arms.pdf'));
    expect(text[0]).toContain('Harrow Lane class workshop');
    // The same circle as the set-up card has.
    const setUp = (await lookAt(join(out, 'larkfield', 'card-class-wheel.pdf'))).text.join();
    expect(setUp.replaceAll(/\s+/g, ' ')).toContain('10 on 15');
    expect(text[0]?.replaceAll(/\s+/g, ' ')).toContain('10 on 15');
  });

  it('are made by name, without the set-up cards, on the other paper and in the other units', async () => {
    const out = join(folder, 'some');
    const how = ['--paper', 'letter', '--print', 'large', '--kit', 'lessons/kits/mill-yard.yaml'];
    expect((await made('card:brass', 'card:guards', ...how, '--out', out)).code).toBe(0);
    expect(readdirSync(join(out, 'cards'))).toEqual(['cards', 'packing-list-1-of-1.json']);
    expect(readdirSync(join(out, 'cards', 'cards')).sort()).toEqual(['brass.pdf', 'guards.pdf']);
    const { text } = await lookAt(join(out, 'cards', 'cards', 'brass.pdf'));
    expect(text.join()).toContain('ft/min');
  });

  it('that a kit has nothing for are left out, or refused by name', async () => {
    const out = join(folder, 'lathe');
    expect(await made(course, '--only', 'cards', '--out', out)).toEqual({ code: 0, out: '', err: '' });
    expect(readdirSync(join(out, 'plain', 'cards')).sort()).toEqual([
      'brass.pdf',
      'centring-test.pdf',
      'diagnosis.pdf',
      'guards.pdf',
      'readings.pdf',
      'tally.pdf',
    ]);
    const { code, err } = await made('card:sector-arms', '--kit', kit, '--out', out);
    expect([code, err]).toEqual([
      2,
      'benchleaf: the cards sector-arms need a dividing head with its plates, and A lathe and no more has none. Name another kit with --kit.\n',
    ]);
  });

  it('are told nearly right by one who types them nearly right, and listed', async () => {
    const { code, err } = await made('card:diagnosi');
    expect([code, err]).toEqual([
      2,
      'benchleaf: there are no cards "card:diagnosi". Did you mean card:diagnosis?\n',
    ]);
    const { out } = await benchleaf('list', 'sheets');
    for (const { name, title } of shopCards) expect(out).toContain(`card:${name}: ${title}; `);
  });

  it('of a job that cannot be are refused at its course', async () => {
    const giants = join(folder, 'giant.yaml');
    const lesson = join(process.cwd(), 'lessons/16-simple-indexing');
    writeFileSync(
      giants,
      `course: Giants\nclub: Ours\nkit: ${process.cwd()}/lessons/kits/harrow-lane.yaml\nlessons: [${lesson}]\n` +
        'jobs:\n  - { name: Giant, teeth: 1000, module: 10, blankThickness: 2 }\n',
    );
    const { code, err } = await made(giants, '--only', 'cards', '--out', folder);
    expect([code, err]).toEqual([
      1,
      expect.stringMatching(/giant\.yaml:1:1: error\[course\/job\] the cards /),
    ]);
  });
});
