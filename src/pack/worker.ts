import { readFileSync, readlinkSync } from 'node:fs';
import { hostname } from 'node:os';
import { z } from 'zod';

const text = z.string().max(200);

/** A process, told so that another can find out later whether it still runs. */
export const workerSchema = z.strictObject({
  pid: z.number().int().positive(),
  host: text,
  /** Changes when the machine is started; empty where the system does not tell. */
  boot: text,
  /** Processes of another space, as another container is, cannot be seen. */
  space: text,
  /** When the process began, by the machine's own count: a number may be given to another process later. */
  born: text,
  /** When the run began, by this machine's clock: for a reader. */
  started: text,
});
export type Worker = z.output<typeof workerSchema>;

/** Whether a process still runs; one on another machine cannot be asked. */
export type Life = 'alive' | 'dead' | 'unknown';

const BOOT = '/proc/sys/kernel/random/boot_id';

/** This process. */
export function thisWorker(): Worker {
  return {
    pid: process.pid,
    host: hostname(),
    boot: told(() => readFileSync(BOOT, 'utf8')),
    space: told(() => readlinkSync('/proc/self/ns/pid')),
    born: statOf('self')?.born ?? '',
    started: new Date().toISOString(),
  };
}

export function lifeOf(worker: Worker): Life {
  const here = thisWorker();
  if ((['host', 'boot', 'space'] as const).some((one) => worker[one] !== here[one])) return 'unknown';
  try {
    process.kill(worker.pid, 0);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ESRCH') return 'dead';
  }
  if (worker.born === '') return 'alive';
  const now = statOf(worker.pid);
  return now && now.born === worker.born && !'ZX'.includes(now.state) ? 'alive' : 'dead';
}

/** What Linux tells of a process: after its name, which may hold anything, its state and 18 further on its birth. */
function statOf(pid: number | 'self'): { readonly state: string; readonly born: string } | undefined {
  const line = told(() => readFileSync(`/proc/${pid}/stat`, 'utf8'));
  const fields = line.slice(line.lastIndexOf(')') + 2).split(' ');
  const [state, born] = [fields[0], fields[19]];
  return state && born ? { state, born } : undefined;
}

function told(read: () => string): string {
  try {
    return read().trim();
  } catch {
    return '';
  }
}
