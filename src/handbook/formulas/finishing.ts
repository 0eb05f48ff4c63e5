import { derived, type FormulaRecord, practice } from '../record.js';

/** Finishing: published formulas, by id. Lengths mm unless the title says otherwise. */
export const finishingFormulas = {
  'arm-chord': {
    title: 'Chord between the middles of neighbouring arms',
    formula: 'c = D*sind(180/N)',
    source: { work: 'chord-sheet', at: 'chord = diameter × sin(180°/n)' },
    worked: [
      {
        given: { D: 1, N: 5 },
        result: 0.58779,
        tolerance: 5e-6,
        source: { work: 'chord-sheet', at: '5 holes' },
      },
    ],
  },
  'arm-at-rim': {
    title: 'Half-angle of an arm at the rim',
    formula: 'A = asind(w_r/D)',
    source: derived('half the arm over the radius'),
    worked: [
      { given: { w_r: 10, D: 20 }, result: 30, tolerance: 1e-12, source: derived('sin 30° is a half') },
    ],
  },
  'arm-at-hub': {
    title: 'Half-angle of an arm at the hub',
    formula: 'B = asind(w_h/d)',
    source: derived('half the arm over the radius'),
    worked: [
      { given: { w_h: 6, d: 12 }, result: 30, tolerance: 1e-12, source: derived('sin 30° is a half') },
    ],
  },
  'opening-at-hub': {
    title: 'Opening between neighbouring arms at the hub',
    formula: 'g = d*sind(180/N - asind(w_h/d))',
    source: derived('chord of what the arms leave of the hub'),
    worked: [
      {
        given: { d: 10, N: 3, w_h: 5 },
        result: 5,
        tolerance: 1e-12,
        source: derived('60° between arms of 30° each side, a chord of 60° on 10'),
      },
    ],
  },
  'arm-taper': {
    title: 'Half the taper of an arm whose widths are across its corners on two circles',
    formula: 'a = atand((w_h - w_r)/(sqrt(4*R^2 - w_r^2) - sqrt(4*q^2 - w_h^2)))',
    source: derived('Pythagoras for both corners'),
    worked: [
      {
        given: { w_h: 6, w_r: 6, R: 20, q: 5 },
        result: 0,
        tolerance: 1e-12,
        source: derived('a parallel arm has none'),
      },
      {
        given: { w_h: 16, w_r: 10, R: 13, q: 10 },
        result: 26.565,
        tolerance: 5e-4,
        source: derived('5-12-13 and 6-8-10 triangles: 3 in 6, a slope of a half'),
      },
    ],
  },
  'print-scale': {
    title: 'Scale of a print, by a bar that was measured',
    formula: 'k = q/b',
    source: derived('what is measured over what should be'),
    worked: [
      { given: { q: 96.5, b: 100 }, result: 0.965, tolerance: 1e-12, source: derived('96.5 hundredths') },
    ],
  },
  'print-percent': {
    title: 'How far a print is over, per cent',
    formula: 'p = 100*(q - b)/b',
    source: derived('the difference in hundredths of the bar'),
    worked: [
      { given: { q: 99.8, b: 100 }, result: -0.2, tolerance: 1e-9, source: derived('0.2 mm short in 100') },
    ],
  },
  'printed-length': {
    title: 'A length as it comes out of the printer',
    formula: 'y = L*q/b',
    source: derived('as the bar, so the length'),
    worked: [
      {
        given: { L: 50.21, q: 96.5, b: 100 },
        result: 48.45,
        tolerance: 5e-3,
        source: derived('a twentieth and a bit short: 50.21 less 1.76'),
      },
    ],
  },
  'drawn-length': {
    title: 'What to draw, so that a length comes out right',
    formula: 'w = L*b/q',
    source: derived('the other way about'),
    worked: [
      { given: { L: 48, q: 96, b: 100 }, result: 50, tolerance: 1e-12, source: derived('48 is 96 % of 50') },
    ],
  },
  'rim-inside-by-rule': {
    title: 'Inside diameter of a rim as wide as the teeth are deep',
    formula: 'D = d_f - 2*h',
    source: practice('a rim as wide below the teeth as they are deep'),
    worked: [
      {
        given: { d_f: 45.488, h: 2.36 },
        result: 40.768,
        tolerance: 1e-9,
        source: derived('45.488 less 4.72'),
      },
    ],
  },
  'disc-mass': {
    title: 'Mass of a disc with a hole, g',
    formula: 'M = pi/4*(D^2 - d^2)*t*q/1000',
    source: derived('area, thickness and density'),
    worked: [
      {
        given: { D: 100, d: 0, t: 3, q: 8.47 },
        result: 199.57,
        tolerance: 5e-3,
        source: derived('7853.98 mm² of 3 mm, 23.562 cm³'),
      },
    ],
  },
  'out-of-flat-micrometres': {
    title: 'Rise over some interference bands, in thousandths of a millimetre for a wavelength in mm',
    formula: 'y = 500*b*L',
    source: { work: 'lapping-page', at: 'half a wavelength for each band' },
    worked: [
      {
        given: { b: 1, L: 0.0005876 },
        result: 0.3,
        tolerance: 0.01,
        source: { work: 'seal-page', at: 'a helium light band, 0.3 micron' },
      },
    ],
  },
  'out-of-flat': {
    title: 'Rise over some interference bands',
    formula: 'u = b*L/2',
    source: { work: 'lapping-page', at: 'half a wavelength for each band' },
    worked: [
      {
        given: { b: 1, L: 23.2 },
        result: 11.6,
        tolerance: 1e-12,
        source: { work: 'lapping-page', at: 'millionths of an inch, sodium light' },
      },
      {
        given: { b: 9, L: 23.2 },
        result: 104.4,
        tolerance: 1e-12,
        source: { work: 'munitions-course', at: '9 bands, millionths of an inch' },
      },
    ],
  },
} as const satisfies Record<string, FormulaRecord>;
