import { derived, type FormulaRecord } from '../record.js';

/** Cutting: published formulas, by id. Lengths mm. */
export const cuttingFormulas = {
  'space-at-pitch-line': {
    title: 'Width of a space straight across at the pitch line',
    formula: 'w_p = m*z*sind(90/z)',
    source: derived('chord of half a tooth’s angle, 180°/z'),
    worked: [
      {
        given: { m: 2, z: 6 },
        result: 3.105829,
        tolerance: 1e-6,
        source: derived('12 sin 15° = 3 (√6 − √2)'),
      },
    ],
  },
} as const satisfies Record<string, FormulaRecord>;
