import { derived, type FormulaRecord } from '../record.js';

/** Wheels, pinions and their pitch: published formulas, by id. Lengths mm unless the title says otherwise. */
export const wheelsFormulas = {
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
  'pitch-circle-gap': {
    title: 'Gap between the pitch circles at a measured centre distance',
    formula: 'g = a - m*(z + n)/2',
    source: derived('measured less right centre distance'),
    worked: [
      {
        given: { a: 27.34, m: 0.8, z: 60, n: 8 },
        result: 0.14,
        tolerance: 1e-9,
        source: derived('27.34 − 27.20, too shallow'),
      },
    ],
  },
  'mesh-ratio': {
    title: 'Turns of the pinion to one of the wheel',
    formula: 'i = z/n',
    source: derived('tooth for leaf'),
    worked: [{ given: { z: 60, n: 8 }, result: 7.5, tolerance: 0, source: derived('60 into 8') }],
  },
} as const satisfies Record<string, FormulaRecord>;
