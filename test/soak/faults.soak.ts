import { appendFileSync, existsSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { verify } from '../../src/pack/verify.js';
import { entriesOf, FaultRuns, hashes, leftIn, setIn } from '../pack/fault-runs.js';

const KILLS = Number(process.env.KILLS ?? 200);
const LEARNERS = Number(process.env.KILLS_LEARNERS ?? 24);
/** Where a line is added for each run that was ended, for who wants to look closer. */
const LOG = process.env.KILLS_LOG;

let runs: FaultRuns;
let whole: Record<string, string>;
/** How long a whole run takes, in milliseconds, and one that has everything. */
let longest = 0;
let shortest = 0;
beforeAll(async () => {
  runs = new FaultRuns(LEARNERS);
  const out = join(runs.folder, 'reference');
  const begun = performance.now();
  expect(await runs.make(out)).toEqual({ printed: LEARNERS, kept: 0 });
  longest = performance.now() - begun;
  await runs.make(out);
  shortest = performance.now() - begun - longest;
  whole = hashes(setIn(out));
}, 600_000);
afterAll(() => rmSync(runs.folder, { recursive: true, force: true }));

/** What was seen of the runs that were ended one way. */
interface Tally {
  ended: number;
  finished: number;
  moving: number;
  kept: number;
  printed: number;
}

const table = new Map<string, Tally>();

/**
 * Ends a run by force, at a random moment of all it takes or as soon as it begins to move its documents, looks at what
 * is there, and makes the set again.
 */
async function endOne(
  kind: string,
  signal: NodeJS.Signals,
  out: string,
  when: number | 'moving',
): Promise<void> {
  const tally = table.get(kind) ?? { ended: 0, finished: 0, moving: 0, kept: 0, printed: 0 };
  table.set(kind, tally);
  const earlier = hashes(setIn(out));
  const run = runs.begin(out, '--quiet');
  let over = false;
  void run.ended.then(() => {
    over = true;
  });
  if (when === 'moving') while (!over && !isMoving(out)) await sleep(0);
  else await Promise.race([sleep(when), run.ended]);
  run.stop(signal);
  const { code } = await run.ended;
  const moving = isMoving(out);
  tally.ended += 1;
  tally.finished += code === 0 ? 1 : 0;
  tally.moving += moving ? 1 : 0;
  // Each file that can be seen is whole, and of this run or of the one before.
  const seen = hashes(setIn(out));
  for (const [name, hash] of Object.entries(seen)) expect([whole[name], earlier[name]]).toContain(hash);
  if (code === 0) expect(seen).toMatchObject(whole);
  else if (!moving && Object.keys(seen).length > 0) expect([whole, earlier]).toContainEqual(seen);
  const before = entriesOf(out).length;
  const { printed, kept } = await runs.make(out);
  tally.kept += kept;
  tally.printed += printed;
  expect([printed, kept]).toEqual([LEARNERS - before, before]); // nothing that was kept is lost
  expect(hashes(setIn(out))).toEqual(whole);
  expect(leftIn(setIn(out))).toEqual([]);
  expect((await verify(setIn(out))).whole).toBe(true);
  if (LOG !== undefined)
    appendFileSync(
      LOG,
      `${kind}\t${when}\t${code}\t${moving}\t${Object.keys(seen).length}\t${kept}\t${printed}\n`,
    );
}

const isMoving = (out: string): boolean =>
  leftIn(setIn(out)).some((name) => existsSync(join(setIn(out), name, 'moves.json')));

it(
  `${KILLS} runs that are ended lose nothing`,
  async () => {
    for (let round = 0; round < KILLS; round++) {
      const out = join(runs.folder, `out-${round}`);
      const signal = (['SIGKILL', 'SIGKILL', 'SIGINT', 'SIGTERM'] as const)[round % 4] ?? 'SIGKILL';
      const kind = round % 8;
      if (kind === 5) {
        // Everything was printed by an earlier run, in whose place this one moves its own.
        await runs.make(out);
        await endOne('SIGKILL as it moves over an earlier set', 'SIGKILL', out, 'moving');
      } else if (kind === 1) await endOne('SIGKILL as it moves', 'SIGKILL', out, 'moving');
      else if (kind === 7) {
        await runs.make(out, '--shard', '1/2');
        await endOne(
          `${signal} over the half of a set`,
          signal,
          out,
          shortest + Math.random() * (longest - shortest) * 0.6,
        );
      } else await endOne(`${signal} at a random moment`, signal, out, Math.random() * longest * 1.05);
      rmSync(out, { recursive: true });
    }
    const lines = [...table].map(
      ([kind, { ended, finished, moving, kept, printed }]) =>
        `${kind}: ${ended} ended, ${finished} of them too late, ${moving} amid the moves; then ${kept} documents were kept and ${printed} printed`,
    );
    console.log(lines.join('\n'));
  },
  4 * 3600_000,
);
