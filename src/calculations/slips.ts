import { evaluateFormula, NoValueError, type Scope } from '../formula/formula.js';
import type { Slip } from './calculation.js';

/** What a calculator set to radians makes of an angle. */
export const RADIANS = 'Your calculator is in radians: sin 30 should be 0.5.';

/** Nearer to the right answer than this, as a share of it, a wrong way cannot be told from it. */
const SHARE = 0.002;

/**
 * The slips that these numbers can show: Pythagoras on a right angle, or the sine of a third of a turn in place of
 * its half, comes out right and says nothing.
 *
 * @param scope numbers by symbol
 */
export function toldApart(
  slips: Readonly<Record<string, Slip>>,
  found: object,
  scope: Scope,
): Record<string, Slip> {
  const shows = ({ of, formula }: Slip): boolean => {
    const right = (found as Record<string, unknown>)[of];
    if (typeof right !== 'number') return false;
    try {
      return Math.abs(evaluateFormula(formula, scope) - right) > SHARE * Math.abs(right);
    } catch (error) {
      if (error instanceof NoValueError) return false;
      throw error;
    }
  };
  return Object.fromEntries(Object.entries(slips).filter(([, slip]) => shows(slip)));
}
