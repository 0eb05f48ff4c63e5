/** Most rows of a list, and most letters of a text, that a terminal is given; data has them all. */
const ROWS = 24;
const LETTERS = 160;
/** What binary arithmetic leaves of nought. */
const DUST = 1e-11;

/** A found value as a person reads it, on as many lines as it takes. */
export function foundLines(key: string, value: unknown, unit: string): string[] {
  if (isRows(value)) {
    const shown = value.slice(0, ROWS).map((row) => `    ${plain(row)}`);
    return [`  ${key}:`, ...shown, ...(value.length > ROWS ? [`    and ${more(value.length - ROWS)}`] : [])];
  }
  const numbers = typeof value === 'number' || (Array.isArray(value) && value.length > 0);
  const label = value === 1 ? (ONE[unit] ?? unit) : unit;
  return [`  ${key}: ${plain(value)}${numbers && unit !== '' ? ` ${label}` : ''}`];
}

/** Units that are counted, for one of them. */
const ONE: Readonly<Record<string, string>> = {
  turns: 'turn',
  notches: 'notch',
  teeth: 'tooth',
  spaces: 'space',
  holes: 'hole',
  days: 'day',
};

const isRows = (value: unknown): value is readonly object[] =>
  Array.isArray(value) && value.length > 0 && typeof value[0] === 'object';

const more = (count: number): string => `${count} more (--json gives all)`;

function plain(value: unknown): string {
  if (Array.isArray(value)) return listed(value);
  if (typeof value === 'object' && value !== null) return recorded(value);
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'number') return String(Math.abs(value) < DUST ? 0 : Number(value.toPrecision(7)));
  const text = String(value ?? 'none');
  return text.length > LETTERS ? `${text.slice(0, LETTERS)}… (--json gives all)` : text;
}

function listed(values: readonly unknown[]): string {
  if (values.length === 0) return 'none';
  const shown = values.slice(0, ROWS).map(plain).join(', ');
  return values.length > ROWS ? `${shown} and ${more(values.length - ROWS)}` : shown;
}

/** A fraction as it is written, and any other record as its parts by name. */
function recorded(value: object): string {
  if ('numerator' in value && 'denominator' in value)
    return value.denominator === 1 ? `${value.numerator}` : `${value.numerator}/${value.denominator}`;
  return Object.entries(value)
    .map(([key, part]) => `${key} ${plain(part)}`)
    .join(', ');
}
