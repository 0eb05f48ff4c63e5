import { run } from '../../src/cli/program.js';

/** What a command printed, and how it ended. */
export interface Ended {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Runs the command line as one types it. */
export async function benchleaf(...words: string[]): Promise<Ended> {
  let [out, err] = ['', ''];
  const code = await run(words, {
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
  });
  return { code, out, err };
}
