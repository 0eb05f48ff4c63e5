import { withHyphen } from './length.js';

const TEXT =
  /^(?<sign>[+-])?(?:(?:(?<whole>\d{1,9})[ -]+)?(?<top>\d{1,12})\/(?<bottom>\d{1,12})|(?<int>\d{1,9})(?:\.(?<places>\d{1,9}))?|\.(?<only>\d{1,9}))$/;

/**
 * Reads an exact number as people write it: `12`, `7.5`, `5/7`, `1 1/14`. A decimal is taken at its word: 7.5 is 15/2.
 *
 * @returns numerator and denominator, whole numbers not yet in lowest terms; undefined when the text is none
 */
export function parseFraction(text: string): { numerator: number; denominator: number } | undefined {
  const found = TEXT.exec(withHyphen(text))?.groups;
  if (!found) return undefined;
  const { sign, whole, top, bottom, int, places, only } = found;
  const decimals = places ?? only ?? '';
  const denominator = bottom === undefined ? 10 ** decimals.length : Number(bottom);
  const numerator =
    bottom === undefined ? Number(`${int ?? ''}${decimals}`) : Number(whole ?? 0) * denominator + Number(top);
  if (denominator === 0 || !Number.isSafeInteger(numerator)) return undefined;
  return { numerator: sign === '-' ? -numerator : numerator, denominator };
}
