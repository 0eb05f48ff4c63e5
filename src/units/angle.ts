import { withHyphen } from './length.js';

const DMS =
  /^(?<sign>[+-])?(?:(?<d>\d+(?:\.\d+)?)\s*(?:d|°|deg))\s*(?:(?<m>\d+(?:\.\d+)?)\s*(?:m|'|′))?\s*(?:(?<s>\d+(?:\.\d+)?)\s*(?:s|"|″))?$/i;

/**
 * Reads an angle as people write it: `5.625`, `5d37m30s`, `5°37′30″`.
 *
 * @returns decimal degrees, or undefined when the text is no angle
 */
export function parseAngle(text: string): number | undefined {
  const value = angleOf(withHyphen(text));
  return value === undefined || Number.isFinite(value) ? value : undefined;
}

function angleOf(trimmed: string): number | undefined {
  if (/^[+-]?(?:\d+(?:\.\d+)?|\.\d+)$/.test(trimmed)) return Number(trimmed);
  const found = DMS.exec(trimmed)?.groups;
  if (!found) return undefined;
  const minutes = Number(found.m ?? 0);
  const seconds = Number(found.s ?? 0);
  if (minutes >= 60 || seconds >= 60) return undefined;
  const size = Number(found.d) + minutes / 60 + seconds / 3600;
  return found.sign === '-' ? -size : size;
}

/** Degrees, minutes and seconds for the reader, e.g. `5° 37′ 30″`; seconds are rounded, and carried. */
export function formatAngle(degrees: number, secondPlaces = 0): string {
  const unit = 10 ** secondPlaces;
  const total = Math.round(Math.abs(degrees) * 3600 * unit);
  const d = Math.floor(total / (3600 * unit));
  const m = Math.floor((total - d * 3600 * unit) / (60 * unit));
  const s = (total - (d * 60 + m) * 60 * unit) / unit;
  return `${degrees < 0 && total > 0 ? '−' : ''}${d}° ${m}′ ${s.toFixed(secondPlaces)}″`;
}
