import { formatLength, formatNumber } from '../../units/format.js';
import type { FigureStyle } from '../figure.js';

/** A length for a label, `50.21 mm` or `1.977 in`, with the thin space that the figures' font has. */
export function length(mm: number, { units }: Pick<FigureStyle, 'units'>, places = 2): string {
  return formatLength(mm, units, places).replaceAll('\u202F', '\u2009');
}

/** A bare number with no more decimals than it needs, four at most: a module, a factor. */
export const plain = (value: number): string => String(Number(value.toFixed(4)));

/** An angle for a label or a list: `30.00°`. */
export const degrees = (angle: number): string => `${formatNumber(angle, 2)}°`;
