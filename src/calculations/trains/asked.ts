import { listOf, type Quantity, whole } from '../quantity.js';
import { LONGEST } from './counts.js';

/** A count, or a question mark where it is missing. */
export type Count = number | '?';

/** Counts in order, as a list or as text with commas; `?` stands for a count that is missing. */
export function countsOrAsked(name: string, least: number, most: number): Quantity<readonly Count[]> {
  const count = whole('', name, least, most);
  const one: Quantity<Count> = {
    ...count,
    read: (raw) => (typeof raw === 'string' && raw.trim() === '?' ? '?' : count.read(raw)),
  };
  return {
    name,
    unit: '',
    accepts: `1 to ${LONGEST} whole numbers from ${least} to ${most}, or ? for the missing one, such as 80,?,60`,
    read: (raw) => listOf(one, raw, LONGEST),
  };
}
