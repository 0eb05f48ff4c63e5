import { derived, type FormulaRecord } from '../record.js';

/** Setting up and cutting: published formulas, by id. Lengths mm unless the title says otherwise. */
export const settingUpFormulas = {
  approach: {
    title: 'Approach of a round cutter',
    formula: 'g = sqrt(h*(D - h))',
    source: { work: 'groover', at: 'A = √(d(D − d)), from memory' },
    worked: [
      {
        given: { h: 0.3, D: 3.5 },
        result: 0.98,
        tolerance: 5e-4,
        source: { work: 'groover', at: 'slab milling problem, from memory' },
      },
    ],
  },
  travel: {
    title: 'Travel of the slide past a round cutter',
    formula: 'T = b + 2*sqrt(h*(D - h)) + 2*c',
    source: derived('blank, and approach and clearance at each end'),
    worked: [
      {
        given: { b: 10, h: 2, D: 10, c: 1 },
        result: 20,
        tolerance: 1e-12,
        source: derived('approach 4 by 2 × 8 = 16'),
      },
    ],
  },
  'dial-divisions': {
    title: 'Divisions of a dial that reads depth',
    formula: 'N = h/w',
    source: derived('depth shared into divisions'),
    worked: [
      { given: { h: 2.36, w: 0.02 }, result: 118, tolerance: 1e-9, source: derived('118 × 0.02 = 2.36') },
    ],
  },
  hump: {
    title: 'Root left high by a short travel',
    formula: 'u = D/2 - sqrt((D/2)^2 - s^2)',
    source: derived('right triangle in the cutter’s circle'),
    worked: [{ given: { D: 10, s: 3 }, result: 1, tolerance: 1e-12, source: derived('3-4-5 triangle') }],
  },
  'spindle-speed': {
    title: 'Spindle speed for a cutting speed',
    formula: 'S = 1000*V/(pi*D)',
    source: derived('circumference times turns'),
    worked: [
      {
        given: { V: 36.576, D: 25.4 },
        result: 458.4,
        tolerance: 0.05,
        source: derived('120 ft/min at 1 in: 12 × 120/π'),
      },
      {
        given: { V: 91.44, D: 12.7 },
        result: 2292,
        tolerance: 0.5,
        source: { work: 'speed-table', at: '1/2 in at 300 ft/min' },
      },
      {
        given: { V: 36.576, D: 3.175 },
        result: 3667,
        tolerance: 0.5,
        source: { work: 'speed-table', at: '1/8 in at 120 ft/min' },
      },
    ],
  },
} as const satisfies Record<string, FormulaRecord>;
