/** A value refused at the door. The printed line names the key, the value and what is accepted. Exit code 2. */
export class InputError extends Error {
  override readonly name = 'InputError';
  constructor(
    readonly key: string,
    readonly value: unknown,
    readonly accepts: string,
  ) {
    super(`${key}: ${shown(value)} is not accepted; give ${accepts}`);
  }
}

/** A geometry function was asked for a shape that cannot exist; the room that knows the place adds it. */
export class GeometryError extends Error {
  override readonly name = 'GeometryError';
  constructor(
    readonly code: string,
    message: string,
  ) {
    super(message);
  }
}

/** The command itself is wrong: unknown option, unknown calculation. Exit code 2. */
export class CommandError extends Error {
  override readonly name = 'CommandError';
  constructor(
    message: string,
    readonly hints: readonly string[] = [],
  ) {
    super(message);
  }
}

/** The machine cannot do it: no browser, no space, no permission. Exit code 3. */
export class MachineError extends Error {
  override readonly name = 'MachineError';
  constructor(
    message: string,
    readonly hints: readonly string[] = [],
  ) {
    super(message);
  }
}

/** The two routes to a number differ. Stops every print. */
export class DisagreementError extends Error {
  override readonly name = 'DisagreementError';
}

/** A value as a reader would recognise it, never longer than one short line. */
function shown(value: unknown): string {
  if (value === undefined) return 'nothing';
  const text = typeof value === 'string' ? JSON.stringify(value) : plain(value);
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}

function plain(value: unknown): string {
  if (typeof value === 'object' && value !== null) return Array.isArray(value) ? 'that list' : 'that object';
  return String(value);
}
