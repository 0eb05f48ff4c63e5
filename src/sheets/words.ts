import { listInWords } from '../units/words.js';

/** A value as a reader expects it: a number without binary dust, a list with commas. */
export function inWords(value: unknown): string {
  if (typeof value === 'boolean') return value ? 'possible' : 'not possible';
  if (typeof value === 'number') return String(Number(value.toPrecision(9))).replace('-', '−');
  return Array.isArray(value) ? listInWords(value.map(inWords)) : String(value);
}
