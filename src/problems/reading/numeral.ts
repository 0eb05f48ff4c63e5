/** One way to read a number as it was written. */
export interface Numeral {
  readonly value: number;
  /** Half of one in its last place: as far as it may be from what it was rounded from; 0 for a fraction. */
  readonly half: number;
  /** Whether it could be read otherwise. */
  readonly ambiguous: boolean;
}

/** Longest number that is read, in characters: more than any calculator shows. */
const LONGEST = 40;

/**
 * The ways to read `50.21`, `50,21`, `1,250`, `1.250,5`: a comma before three figures may stand before decimals or
 * thousands, and then both are told. A point stands before decimals, unless a comma does.
 */
export function numeralsOf(written: string): Numeral[] {
  if (written.length > LONGEST) return [];
  const commas = written.split(',').length - 1;
  const points = written.split('.').length - 1;
  if (commas === 0) return points <= 1 ? plain(written) : inGroups(written, '.');
  if (points === 0) {
    if (commas > 1) return inGroups(written, ',');
    const decimal = plain(written.replace(',', '.'));
    const both = [...decimal, ...inGroups(written, ',')];
    return both.map((one) => ({ ...one, ambiguous: both.length > 1 }));
  }
  const mark = written.lastIndexOf(',') > written.lastIndexOf('.') ? ',' : '.';
  const [whole = '', places = '', ...more] = written.split(mark);
  const grouped = inGroups(whole, mark === ',' ? '.' : ',');
  return more.length === 0 && grouped.length > 0 ? plain(`${whole.replace(/[.,]/g, '')}.${places}`) : [];
}

function plain(text: string): Numeral[] {
  const places = text.split('.')[1]?.length ?? 0;
  return [{ value: Number(text), half: 10 ** -places / 2, ambiguous: false }];
}

/** `1,250,000`; not `0,250`, nor `12,50`. */
function inGroups(text: string, mark: string): Numeral[] {
  const [first = '', ...rest] = text.split(mark);
  const fits =
    /^[1-9]\d{0,2}$/.test(first) && rest.length > 0 && rest.every((group) => /^\d{3}$/.test(group));
  return fits ? plain(text.replaceAll(mark, '')) : [];
}
