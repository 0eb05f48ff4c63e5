import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';

/** One thing that a program asked of the system: a call of strace, with the files it names as absolute paths. */
export interface Call {
  readonly name: string;
  readonly paths: readonly string[];
  /** As strace tells it, the arguments and what came of it where that is on the same line. */
  readonly line: string;
}

/** What is put before a command so that it is traced, with all that it starts: files by their names, and the network. */
export const traced = (to: string): readonly string[] => [
  'strace',
  ...['--follow-forks', '--decode-fds=path', '--quiet=all', '--seccomp-bpf', '--output', to],
  '--trace=%network,/^(open|creat|rename|mkdir|rmdir|unlink|link|symlink|mknod|truncate|chmod|chown|execve)',
];

/** @param folder in which the command was begun */
export function callsIn(trace: string, folder: string): Call[] {
  return readFileSync(trace, 'utf8')
    .split('\n')
    .flatMap((line) => {
      const [, name, rest = ''] = /^\d+ +(\w+)\((.*)$/.exec(line) ?? [];
      return name === undefined
        ? []
        : [{ name, paths: NETWORK.test(name) ? [] : pathsIn(rest, folder), line }];
    });
}

const NETWORK = /^(socket|socketpair|connect|bind|listen|accept|send|recv|get|set|shutdown)/;

/** A path stands after the folder it starts from, which is told where it is not the working one. */
function pathsIn(text: string, folder: string): string[] {
  const named = text.replace(/^(execve|"[^"]*", \[).*/, '$1');
  return [...named.matchAll(/(?:(?:AT_FDCWD|\d+)<([^>]*)>, )?"((?:[^"\\]|\\.)*)"/g)].map(
    ([, from, path = '']) => resolve(from ?? folder, path),
  );
}

/** Whether a call changes anything on a disk. */
export const changes = ({ name, line }: Call): boolean =>
  name.startsWith('open')
    ? /O_WRONLY|O_RDWR|O_CREAT|O_TRUNC|O_APPEND|O_TMPFILE/.test(line)
    : name !== 'execve';
