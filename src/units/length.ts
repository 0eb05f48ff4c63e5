/** Exactly 25.4 mm to the inch (international inch, 1959). */
export const MM_PER_INCH = 25.4;

const NUMBER = String.raw`[+-]?(?:\d+(?:[.,]\d+)?|[.,]\d+)(?:e[+-]?\d+)?`;
const LENGTH = new RegExp(
  String.raw`^(?:(?<whole>[+-]?\d+)[ -]+)?(?:(?<top>[+-]?\d+)/(?<bottom>\d+)|(?<number>${NUMBER}))\s*(?<unit>mm|in|"|″)?$`,
  'i',
);

/** A number as it is typed: sheets print a real minus sign before what is below 0. */
export const withHyphen = (text: string): string => text.trim().replace(/^−/, '-');

/**
 * Reads a length as people write it: `0.8`, `0,8 mm`, `1/32in`, `1 31/32 in`, `0.0315"`.
 *
 * @returns mm, or undefined when the text is no length; a bare number is mm
 */
export function parseLength(text: string): number | undefined {
  const found = LENGTH.exec(withHyphen(text))?.groups;
  if (!found) return undefined;
  const { whole, top, bottom, number, unit } = found;
  if (whole !== undefined && number !== undefined) return undefined;
  const part = number === undefined ? Number(top) / Number(bottom) : Number(number.replace(',', '.'));
  const base = Number(whole ?? 0);
  const value = base + (whole?.startsWith('-') ? -part : part);
  const mm = unit === undefined || unit.toLowerCase() === 'mm' ? value : value * MM_PER_INCH;
  return Number.isFinite(mm) ? mm : undefined;
}
