// Peak memory and processor time of this process and everything it started, read from /proc (Linux only).
// A sample of a browser takes 10 to 20 ms: measure speed in another run than memory.
import { readdirSync, readFileSync } from 'node:fs';

/**
 * Starts sampling the process tree under `root`.
 *
 * RSS counts a page shared by two processes twice, PSS shares it out; PSS is the honest figure for a browser.
 *
 * @param {{ root?: number, everyMilliseconds?: number }} [options]
 * @returns {{ now(): Sample, stop(): { peak: Omit<Sample, 'times'> & { cpu: number }, samples: number } }} `cpu`: seconds
 *   of the processor, of all processes that were seen
 * @typedef {{ rss: number, pss: number, processes: number, times: Map<number, number> }} Sample sizes in MiB; seconds
 *   of the processor by process
 */
export function watchMemory({ root = process.pid, everyMilliseconds = 100 } = {}) {
  const peak = { rss: 0, pss: 0, processes: 0, cpu: 0 };
  /** The most that was seen of each process: a browser that a fresh one took over from takes its time along. */
  const times = new Map();
  let samples = 0;
  const take = () => {
    const sample = sampleTree(root);
    samples += 1;
    for (const key of ['rss', 'pss', 'processes']) peak[key] = Math.max(peak[key], sample[key]);
    for (const [pid, seconds] of sample.times) times.set(pid, Math.max(seconds, times.get(pid) ?? 0));
    peak.cpu = [...times.values()].reduce((sum, seconds) => sum + seconds, 0);
    return sample;
  };
  take();
  const timer = setInterval(take, everyMilliseconds);
  timer.unref();
  return {
    now: take,
    stop() {
      clearInterval(timer);
      take();
      return { peak, samples };
    },
  };
}

/**
 * The tree under `root` at this moment.
 * @returns {Sample}
 */
export function sampleTree(root) {
  let rss = 0;
  let pss = 0;
  let processes = 0;
  const times = new Map();
  for (const pid of descendants(root)) {
    const size = sizeOf(pid);
    if (size === undefined) continue; // ended since the listing
    rss += size.rss;
    pss += size.pss;
    processes += 1;
    times.set(pid, secondsOf(pid));
  }
  return { rss, pss, processes, times };
}

function descendants(root) {
  const children = new Map();
  for (const entry of readdirSync('/proc')) {
    if (!/^\d+$/.test(entry)) continue;
    const parent = parentOf(entry);
    if (parent !== undefined) children.set(parent, [...(children.get(parent) ?? []), Number(entry)]);
  }
  const found = [root];
  for (const pid of found) found.push(...(children.get(pid) ?? []));
  return found;
}

function parentOf(pid) {
  const stat = read(`/proc/${pid}/stat`);
  // The name in brackets may itself hold brackets and spaces; the parent is the second field after the last one.
  return stat === undefined ? undefined : Number(stat.slice(stat.lastIndexOf(')') + 2).split(' ')[1]);
}

/** Ticks of the kernel in a second, as /proc counts them. */
const TICKS = 100;

/** Its own time, its children's apart. */
function secondsOf(pid) {
  const stat = read(`/proc/${pid}/stat`) ?? '';
  const fields = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
  return fields.slice(11, 13).reduce((sum, ticks) => sum + Number(ticks || 0), 0) / TICKS;
}

function sizeOf(pid) {
  const rollup = read(`/proc/${pid}/smaps_rollup`);
  const rss = /^Rss:\s+(\d+) kB/m.exec(rollup ?? '')?.[1];
  const pss = /^Pss:\s+(\d+) kB/m.exec(rollup ?? '')?.[1];
  return rss && pss ? { rss: Number(rss) / 1024, pss: Number(pss) / 1024 } : undefined;
}

function read(path) {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return undefined;
  }
}
