import type { Citation, FormulaRecord } from './record.js';

const derived = (at: string): Citation => ({ work: 'derived', at });

/** Published formulas, by id. Each symbol is the field's own; lengths mm unless the title says otherwise. */
export const formulas = {
  'pitch-diameter': {
    title: 'Pitch diameter',
    formula: 'd = m*z',
    source: { work: 'cutter-table', at: 'row “pitch circle diameter”' },
    worked: [{ given: { m: 1, z: 60 }, result: 60, tolerance: 0, source: derived('definition of module') }],
  },
  'diametral-pitch': {
    title: 'Diametral pitch from module',
    formula: 'P = 25.4/m',
    source: derived('definition of diametral pitch, teeth per inch'),
    worked: [{ given: { m: 1.5875 }, result: 16, tolerance: 1e-9, source: derived('25.4/16') }],
  },
  'module-of-pitch': {
    title: 'Module from diametral pitch and circular pitch',
    formula: 'm = sqrt(25.4*p/(pi*P))',
    source: derived('m = p/π and m = 25.4/P, multiplied'),
    worked: [
      {
        given: { p: 4.987278, P: 16 },
        result: 1.5875,
        tolerance: 1e-6,
        source: derived('16 teeth to the inch'),
      },
    ],
  },
  'circular-pitch': {
    title: 'Circular pitch',
    formula: 'p = pi*m',
    source: derived('circumference shared between the teeth'),
    worked: [
      { given: { m: 1.5875 }, result: 4.987, tolerance: 5e-4, source: derived('16 teeth to the inch') },
    ],
  },
  'centre-distance': {
    title: 'Centre distance of a wheel and pinion',
    formula: 'a = m*(z + n)/2',
    source: derived('pitch circles touch'),
    worked: [
      {
        given: { m: 0.4, z: 50, n: 10 },
        result: 12,
        tolerance: 1e-12,
        source: derived('twelve millimetre pair'),
      },
    ],
  },
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

/** The name of a published formula. */
export type FormulaId = keyof typeof formulas;
