import type { ExpectedNumber } from '../../problems/expected.js';
import { roundTo } from '../../units/format.js';
import { near, type Tolerance } from './expressions.js';
import type { Xml } from './xml.js';

/** A whole count is judged as it stands, but for binary dust. */
const DUST = 1e-6;
/** A slip that comes to no whole count is written with two places, more or less. */
const WRITTEN = 0.005;

/**
 * The responses that come within reach of the value once they are rounded: half a step more than the steps that are
 * allowed. A response just halfway is rounded away from nought.
 */
export function accepted({ value, step, within }: ExpectedNumber): Tolerance {
  if (step === 0) return { by: DUST, atLower: true, atUpper: true };
  const by = (Math.floor((within + step / 100) / step) + 0.5) * step;
  return { by, atLower: value - by > 0, atUpper: value + by < 0 };
}

/** Whether a response is what a slip gives, as it is written down; one just halfway is rounded away from nought. */
export function slipNear(shown: number, step: number, response: Xml): Xml {
  if (step > 0) {
    const [value, by] = [roundTo(shown / step, 0) * step, step / 2];
    return near(value, response, { by, atLower: value - by > 0, atUpper: value + by < 0 });
  }
  const by = Math.abs(shown - Math.round(shown)) < DUST ? DUST : WRITTEN;
  return near(shown, response, { by, atLower: true, atUpper: true });
}
