import { execFileSync } from 'node:child_process';

/** A process of this machine; `memory` in MiB. */
export interface Running {
  readonly pid: number;
  readonly parent: number;
  readonly memory: number;
  readonly command: string;
}

function running(): Running[] {
  const args = ['-ww', '-eo', 'pid=,ppid=,rss=,stat=,args='];
  return execFileSync('ps', args, { encoding: 'utf8' })
    .split('\n')
    .flatMap((line) => {
      const [, pid, parent, memory, state = '', command = ''] =
        /^\s*(\d+)\s+(\d+)\s+(\d+)\s+(\S+)\s+(.*)$/.exec(line) ?? [];
      if (!pid || state.startsWith('Z')) return [];
      return [{ pid: Number(pid), parent: Number(parent), memory: Number(memory) / 1024, command }];
    });
}

/** Browsers that keep their files in a work folder. Their helpers say of what type they are. */
export function browsersIn(work: string): Running[] {
  const ours = running().filter(({ command }) => command.includes(`--user-data-dir=${work}`));
  return ours.filter(({ command }) => !command.includes('--type='));
}

/** The processes that lay out pages for a browser, however far down. */
export function renderers(browser: number): Running[] {
  const all = running();
  const family = [browser];
  for (const member of family) family.push(...all.filter((p) => p.parent === member).map(({ pid }) => pid));
  return all.filter((p) => family.includes(p.pid) && p.command.includes('--type=renderer'));
}
