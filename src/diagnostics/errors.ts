/** A failure to be told to the user in a line, and the exit code it ends with; any other error is a bug. */
export class ReportedError extends Error {
  constructor(
    message: string,
    /** 1 the content is wrong, 2 the command, 3 the machine. */
    readonly exitCode: 1 | 2 | 3,
    /** What to do about it, each a sentence. */
    readonly hints: readonly string[] = [],
  ) {
    super(message);
  }
}

/** A value refused at the door. The printed line names the key, the value and what is accepted. */
export class InputError extends ReportedError {
  override readonly name = 'InputError';
  constructor(
    readonly key: string,
    readonly value: unknown,
    readonly accepts: string,
  ) {
    super(
      value === undefined
        ? `${key} is missing; give ${accepts}`
        : `${key}: ${shown(value)} is not accepted; give ${accepts}`,
      2,
    );
  }
}

/** The command itself is wrong: unknown option, unknown calculation. */
export class CommandError extends ReportedError {
  override readonly name = 'CommandError';
  constructor(message: string, hints?: readonly string[]) {
    super(message, 2, hints);
  }
}

/** The machine cannot do it: no browser, no space, no permission. */
export class MachineError extends ReportedError {
  override readonly name = 'MachineError';
  constructor(message: string, hints?: readonly string[]) {
    super(message, 3, hints);
  }
}

/** The two routes to a number differ. Stops every print. */
export class DisagreementError extends ReportedError {
  override readonly name = 'DisagreementError';
  constructor(message: string) {
    super(message, 1);
  }
}

/** A value as a reader would recognise it, never longer than one short line. */
function shown(value: unknown): string {
  const text = typeof value === 'string' ? JSON.stringify(value) : plain(value);
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}

function plain(value: unknown): string {
  if (Array.isArray(value)) return isPlainList(value) ? value.join(', ') : 'that list';
  return typeof value === 'object' && value !== null ? 'that object' : String(value);
}

/** A list short enough to show, of numbers and words. */
const isPlainList = (list: readonly unknown[]): boolean =>
  list.length > 0 && list.length <= 100 && list.every((one) => ['number', 'string'].includes(typeof one));
