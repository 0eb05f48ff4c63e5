import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { cpuTime } from '../cpu-time.js';
import { courseNasties } from './corpus/courses.js';
import { lessonNasties } from './corpus/lessons.js';
import { listNasties } from './corpus/lists.js';
import { yamlNasties } from './corpus/yaml.js';
import { placed, throughAll } from './judge.js';
import { mostMemory } from './memory.js';
import { demandSafe } from './safe-page.js';

/** Of the processor, ms. */
const MOST_CPU = 5000;
/** On top of what the process held before, MiB. */
const MOST_MEMORY = 500;

const folder = mkdtempSync(join(tmpdir(), 'benchleaf-hostile-'));
afterAll(() => rmSync(folder, { recursive: true }));

const all = [...yamlNasties, ...listNasties, ...courseNasties, ...lessonNasties];

describe.each(['kit', 'list', 'course', 'lesson'] as const)('a nasty %s is told or made safe', (kind) => {
  it.each(all.filter((one) => one.kind === kind).map((one) => [one.name, one] as const))('%s', (_, one) => {
    const file = placed(one, mkdtempSync(join(folder, 'one-')));
    mostMemory();
    const had = process.memoryUsage.rss() / 2 ** 20;
    const began = cpuTime();
    const outcome = throughAll(kind, file);
    const took = cpuTime() - began;
    const more = mostMemory() - had;
    report(one.name, took, more, outcome);
    if (one.ends !== 'either')
      expect('told' in outcome ? outcome.told : 'safe').toMatch(
        one.ends === 'safe' ? /^safe$/ : /nasty|class\.csv/,
      );
    if (one.says) expect('told' in outcome ? outcome.told : 'safe').toMatch(one.says);
    if ('told' in outcome) expect(outcome.told.length).toBeLessThan(100_000);
    else for (const document of outcome.documents) demandSafe(document);
    expect(took).toBeLessThan(MOST_CPU);
    expect(more).toBeLessThan(MOST_MEMORY);
    expect(Object.hasOwn(Object.prototype, 'polluted')).toBe(false);
  });
});

/** With BENCHLEAF_MEASURE=1: what each took. */
function report(name: string, took: number, more: number, outcome: ReturnType<typeof throughAll>): void {
  if (!process.env.BENCHLEAF_MEASURE) return;
  const end = 'told' in outcome ? outcome.told.split('\n')[0] : 'safe';
  process.stdout.write(`${Math.round(took)} ms\t${Math.round(more)} MiB\t${name}\t${end}\n`);
}
