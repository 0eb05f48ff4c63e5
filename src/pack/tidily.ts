type TidyUp = () => void | Promise<void>;

const SIGNALS = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;
/** How long tidying up may hold up the end, in milliseconds. */
const PATIENCE = 5000;

/** What is to be tidied up at present, the oldest first. */
const pending: (() => Promise<void>)[] = [];
let stopping = false;
/** Called in place of ending as one who was interrupted, where Ctrl-C is the way to end. */
let ended: (() => void) | undefined;

/**
 * Works, and then tidies up: when it is done, when it fails, and also when somebody presses Ctrl-C meanwhile or
 * the system ends the program. May be nested; the inner tidies up first. Told to stop, the program ends as it was
 * told, and nothing after `work` is done.
 *
 * @param onCtrlC where that is how the work ends: called at the very end, and the exit code is 0
 */
export async function tidily<T>(work: () => Promise<T>, tidyUp: TidyUp, onCtrlC?: () => void): Promise<T> {
  let tidied: Promise<void> | undefined;
  const once = (): Promise<void> => (tidied ??= Promise.resolve().then(tidyUp));
  if (pending.length === 0) for (const signal of SIGNALS) process.on(signal, stop);
  pending.push(once);
  ended = onCtrlC ?? ended;
  try {
    return await work();
  } finally {
    // What fails now only fails because its things are being taken away.
    if (stopping) await new Promise(() => undefined);
    try {
      await once();
    } finally {
      pending.splice(pending.indexOf(once), 1);
      if (pending.length === 0) release();
    }
  }
}

/** npm passes a Ctrl-C on that has come already, so a second one means nothing. */
async function stop(signal: NodeJS.Signals): Promise<void> {
  if (stopping) return;
  stopping = true;
  const end = (): void => {
    release();
    if (signal === 'SIGINT' && ended) {
      ended();
      process.exit(0);
    }
    process.kill(process.pid, signal);
  };
  setTimeout(end, PATIENCE);
  for (const tidyUp of pending.toReversed()) await tidyUp().catch(() => undefined);
  end();
}

function release(): void {
  for (const signal of SIGNALS) process.off(signal, stop);
}
