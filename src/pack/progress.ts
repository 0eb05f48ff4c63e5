import { SingleBar } from 'cli-progress';
import { counted } from '../units/words.js';

/** Tells the user how far a run has come. */
export interface Progress {
  /** A document is done; a file of data has no pages. */
  done(file: string, pages: number): void;
  /** No more is to come: the bar is taken away. */
  end(): void;
}

/** What is asked for on the command line, and where it writes. */
export interface ProgressOptions {
  /** Documents to be made. */
  readonly total: number;
  readonly quiet?: boolean;
  /** Standard output is kept for data. */
  readonly json?: boolean;
  readonly streams?: { readonly stdout: NodeJS.WriteStream; readonly stderr: NodeJS.WriteStream };
}

/** A bar on a terminal, a line for each document elsewhere, nothing when it is to be quiet. */
export function showProgress({ total, quiet, json, streams = process }: ProgressOptions): Progress {
  const stream = json ? streams.stderr : streams.stdout;
  if (quiet) return { done: () => undefined, end: () => undefined };
  return stream.isTTY && process.env.TERM !== 'dumb' ? bar(stream, total) : lines(stream);
}

function lines(stream: NodeJS.WriteStream): Progress {
  // Whoever reads may leave early, as `head` does; the documents are wanted all the same.
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
  });
  return {
    done: (file, pages) => stream.write(pages === 0 ? `${file}\n` : `${file}  ${counted(pages, 'page')}\n`),
    end: () => undefined,
  };
}

function bar(stream: NodeJS.WriteStream, total: number): Progress {
  let pages = 0;
  let begun = false;
  const drawn = new SingleBar({
    stream,
    format: '[{bar}] {value} of {documents}, {pages}',
    barsize: 24,
    barCompleteChar: '#',
    barIncompleteChar: '.',
    linewrap: true, // leaves the terminal's own setting alone
    clearOnComplete: true,
  });
  const payload = () => ({ documents: counted(total, 'document'), pages: counted(pages, 'page') });
  return {
    // A bar that has been started keeps the program alive until it is stopped; so it is not until it is needed.
    done: (_, more) => {
      if (!begun) drawn.start(total, 0, payload());
      begun = true;
      pages += more;
      drawn.increment(payload());
    },
    end: () => drawn.stop(),
  };
}
