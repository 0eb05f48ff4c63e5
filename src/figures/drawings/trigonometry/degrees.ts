import { formatNumber } from '../../../units/format.js';

/** An angle for a label or a list: `30.00°`. */
export const degrees = (angle: number): string => `${formatNumber(angle, 2)}°`;
