import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect } from 'vitest';
import { cpuTime } from '../cpu-time.js';
import { edited } from './edits.js';
import { placed, throughAll } from './judge.js';
import { mostMemory } from './memory.js';
import type { Nasty } from './nasty.js';
import { demandSafe } from './safe-page.js';

/** Of the processor, ms. */
const MOST_CPU = 5000;
/** On top of what the process held before, MiB. */
const MOST_MEMORY = 500;
/** What would move the reader's screen or turn words round; a line's end and the space of a sample may stand. */
const UNSEEN = /(?![\n\t])[\p{Cc}\u202a-\u202e\u2066-\u2069\u2028\u2029]/u;

/** What came of the texts: how many were told, how many made safe pages. */
export interface Tally {
  told: number;
  safe: number;
  slowest: number;
}

/** Takes edited texts of one kind through the readers: each is told at its place, or makes pages that are safe. */
export function fuzz(kind: Nasty['kind'], good: readonly string[], numRuns: number): Tally {
  const folder = mkdtempSync(join(tmpdir(), 'benchleaf-fuzz-'));
  const tally = { told: 0, safe: 0, slowest: 0 };
  try {
    fc.assert(
      fc.property(edited(good), (text) => {
        const file = placed({ kind, content: () => text }, folder);
        mostMemory();
        const had = process.memoryUsage.rss() / 2 ** 20;
        const began = cpuTime();
        const outcome = throughAll(kind, file);
        const took = cpuTime() - began;
        tally.slowest = Math.max(tally.slowest, took);
        if ('told' in outcome) {
          tally.told += 1;
          expect(outcome.told).toMatch(/nasty|class\.csv/);
          expect(outcome.told.length).toBeLessThan(100_000);
          expect(outcome.told).not.toMatch(UNSEEN);
        } else {
          tally.safe += 1;
          for (const document of outcome.documents) demandSafe(document);
        }
        expect(took).toBeLessThan(MOST_CPU);
        expect(mostMemory() - had).toBeLessThan(MOST_MEMORY);
        expect(Object.hasOwn(Object.prototype, 'polluted')).toBe(false);
      }),
      { numRuns },
    );
  } finally {
    rmSync(folder, { recursive: true });
  }
  return tally;
}
