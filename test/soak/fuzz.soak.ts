import { expect, it } from 'vitest';
import { fuzz } from '../hostile/fuzz.js';
import { ownLessons, samples } from '../hostile/samples.js';

/** Of each kind: `FUZZ=100000 npm run soak` for more. */
const RUNS = Number(process.env.FUZZ ?? 10_000);

it.each([
  ['lesson', [...samples.lesson, ...ownLessons()]],
  ['kit', samples.kit],
  ['course', samples.course],
  ['list', samples.list],
] as const)(
  'each of many files that were spoilt is told or made safe: %s',
  (kind, good) => {
    const { told, safe, slowest } = fuzz(kind, good, RUNS);
    console.log(
      `${kind}: ${told} told, ${safe} made safe, the slowest ${Math.round(slowest)} ms of the processor`,
    );
    expect(told + safe).toBeGreaterThanOrEqual(RUNS);
  },
  24 * 3600_000,
);
