import type { Fraction } from '../../geometry/fractions.js';

/** `16/11`; a whole number without the line. */
export const inWords = ({ numerator, denominator }: Fraction): string =>
  denominator === 1 ? `${numerator}` : `${numerator}/${denominator}`;
