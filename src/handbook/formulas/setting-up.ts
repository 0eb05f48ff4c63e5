import { derived, type FormulaRecord } from '../record.js';

/** Setting up and cutting: published formulas, by id. Lengths mm unless the title says otherwise. */
export const settingUpFormulas = {
  inches: {
    title: 'Inches in a length of millimetres',
    formula: 'y = 5*L/127',
    source: derived('127 mm are 5 in, since 25.4 mm are one by the agreement of 1959'),
    worked: [
      { given: { L: 25.4 }, result: 1, tolerance: 1e-12, source: derived('one inch') },
      { given: { L: 69.05625 }, result: 2.71875, tolerance: 1e-9, source: derived('2 23/32 in') },
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
  'cutter-height': {
    title: 'Height of the cutter’s upper face when the feeler is nipped',
    formula: 'y = H + t/2 - f',
    source: { work: 'cutter-height-page', at: 'centre height and half the thickness' },
    worked: [
      {
        given: { H: 95.25, t: 0.53, f: 0 },
        result: 95.515,
        tolerance: 0,
        source: { work: 'cutter-height-page', at: '3.75 in centres, cutter 0.53 mm thick' },
      },
    ],
  },
  'cutter-gauge': {
    title: 'Height of the gauge for the cutter’s upper face',
    formula: 'G = H + t/2',
    source: { work: 'cutter-height-page', at: 'centre height and half the thickness' },
    worked: [
      {
        given: { H: 95.25, t: 0.53 },
        result: 95.515,
        tolerance: 0,
        source: { work: 'cutter-height-page', at: '95.25 + 0.265' },
      },
    ],
  },
  'centre-from-touch': {
    title: 'From a touch on the rim to the centre',
    formula: 'y = (D + t)/2 + f',
    source: derived('half the blank, half the cutter, and the feeler'),
    worked: [
      {
        given: { D: 50, t: 2, f: 0.05 },
        result: 26.05,
        tolerance: 1e-12,
        source: derived('25 + 1 + 0.05'),
      },
    ],
  },
  'half-turn-step': {
    title: 'Step that the half-turn test shows',
    formula: 's = 2*e',
    source: derived('the first cut is as far to one side as the second is to the other'),
    worked: [{ given: { e: 0.08 }, result: 0.16, tolerance: 0, source: derived('twice 0.08') }],
  },
  lean: {
    title: 'Lean of teeth cut off centre',
    formula: 'A = asind(2*e/D)',
    source: derived('right triangle of offset and radius'),
    worked: [{ given: { e: 12, D: 48 }, result: 30, tolerance: 1e-12, source: derived('half the radius') }],
  },
  'lean-at-rim': {
    title: 'Lean of teeth cut off centre, along the rim',
    formula: 'b = pi*D*asind(2*e/D)/360',
    source: derived('arc of the angle of lean'),
    worked: [
      { given: { e: 12, D: 48 }, result: 12.566, tolerance: 5e-4, source: derived('a twelfth of the rim') },
    ],
  },
  'surface-speed': {
    title: 'Cutting speed of a cutter or of work',
    formula: 'V = pi*D*S/1000',
    source: derived('circumference times turns'),
    worked: [
      {
        given: { D: 12.7, S: 2292 },
        result: 91.44,
        tolerance: 0.02,
        source: { work: 'speed-table', at: '1/2 in at 300 ft/min' },
      },
    ],
  },
  'table-feed': {
    title: 'Feed of the work under a cutter',
    formula: 'F = S*T*f',
    source: { work: 'montana-milling', at: 'feed rate' },
    worked: [
      {
        given: { S: 136.4, T: 10, f: 0.008 },
        result: 10.91,
        tolerance: 5e-3,
        source: { work: 'groover', at: 'slab milling problem, in/min, from memory' },
      },
      {
        given: { S: 1000, T: 1, f: 0.1 },
        result: 100,
        tolerance: 1e-9,
        source: { work: 'turning-formulas', at: '0.1 mm a turn at 1000 rev/min' },
      },
    ],
  },
  'tooth-frequency': {
    title: 'Strikes of the cutter’s teeth, a second',
    formula: 'f = S*T/60',
    source: derived('turns a second times teeth'),
    worked: [
      { given: { S: 900, T: 12 }, result: 180, tolerance: 0, source: derived('15 turns of 12 teeth') },
    ],
  },
  'escape-offset': {
    title: 'Set-over of the cutter for a sloping face',
    formula: 'b = D/2*sind(A)',
    source: { work: 'escape-page', at: 'the slant is made by setting the cutter over' },
    worked: [{ given: { D: 30, A: 30 }, result: 7.5, tolerance: 1e-12, source: derived('half the radius') }],
  },
} as const satisfies Record<string, FormulaRecord>;
