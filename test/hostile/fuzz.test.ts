import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { fuzz } from './fuzz.js';
import { placed, throughAll } from './judge.js';
import { samples } from './samples.js';

const RUNS = Number(process.env.FUZZ ?? 40);

it.each(
  Object.entries(samples).flatMap(([kind, all]) =>
    all.map((text) => [kind as keyof typeof samples, text] as const),
  ),
)('a %s that is not spoilt makes pages', (kind, text) => {
  const folder = mkdtempSync(join(tmpdir(), 'benchleaf-fuzz-'));
  expect(throughAll(kind, placed({ kind, content: () => text }, folder))).not.toHaveProperty('told');
  rmSync(folder, { recursive: true });
});

describe('a file that was spoilt at random is told at its place, or makes pages that are safe', () => {
  it.each(['lesson', 'kit', 'course', 'list'] as const)(
    '%s',
    (kind) => {
      const { told, safe, slowest } = fuzz(kind, samples[kind], RUNS);
      expect(told + safe).toBeGreaterThanOrEqual(RUNS);
      if (process.env.BENCHLEAF_MEASURE)
        console.log(`${kind}: ${told} told, ${safe} safe, slowest ${Math.round(slowest)} ms`);
    },
    3_600_000,
  );
});
