import { derived, type FormulaRecord } from '../record.js';

/** Screws: published formulas, by id. Lengths mm, angles degrees. */
export const screwsFormulas = {
  'best-wire': {
    title: 'Best wire for a thread',
    formula: 'w_b = P_t/(2*cosd(A/2))',
    source: { work: 'handbook-wires', at: 'touches the flanks on the pitch line, from memory' },
    worked: [
      {
        given: { P_t: 1, A: 60 },
        result: 0.57735,
        tolerance: 5e-6,
        source: { work: 'ordnance-wires', at: '0.57735 over threads per inch' },
      },
      {
        given: { P_t: 1, A: 55 },
        result: 0.5637,
        tolerance: 5e-5,
        source: { work: 'handbook-wires', at: 'Whitworth form, from memory' },
      },
      {
        given: { P_t: 1 / 14, A: 60 },
        result: 0.041,
        tolerance: 5e-4,
        source: { work: 'club-wires', at: '14 threads per inch, in inches' },
      },
    ],
  },
  'over-wires': {
    title: 'Size over three wires, the slope of the helix left out',
    formula: 'M = d_2 + w*(1 + 1/sind(A/2)) - P_t/(2*tand(A/2))',
    source: { work: 'handbook-wires', at: 'general formula without helix, from memory' },
    worked: [
      {
        given: { d_2: 0, w: 1, P_t: 0, A: 55 },
        result: 3.1657,
        tolerance: 5e-5,
        source: { work: 'handbook-wires', at: 'Whitworth form, 3.1657 W, from memory' },
      },
      {
        given: { d_2: 0, w: 0, P_t: 1, A: 55 },
        result: -0.9605,
        tolerance: 5e-5,
        source: { work: 'handbook-wires', at: 'Whitworth form, 0.9605 p, from memory' },
      },
      {
        given: { d_2: 0.4375 - 0.649519 / 14, w: 0.045, P_t: 1 / 14, A: 60 },
        result: 0.464,
        tolerance: 5e-4,
        source: { work: 'club-wires', at: '7/16-14 over 0.045 wires, in inches' },
      },
    ],
  },
  'tapping-hole': {
    title: 'Hole for a share of the full thread',
    formula: 'd_h = d - E/100*k*P_t',
    source: derived('share of the full thread taken off the diameter'),
    worked: [
      {
        given: { d: 4, P_t: 0.7, E: 75, k: 1.299038 },
        result: 3.32,
        tolerance: 5e-3,
        source: { work: 'tap-catalogue', at: 'M4, 75 %' },
      },
      {
        given: { d: 2, P_t: 0.4, E: 60, k: 1.299038 },
        result: 1.69,
        tolerance: 5e-3,
        source: { work: 'tap-catalogue', at: 'M2, 60 %' },
      },
    ],
  },
  'gear-ratio': {
    title: 'Drivers over driven for a pitch on a lead screw',
    formula: 'i = P_t/L',
    source: { work: 'jones', at: 'change gears: lead to be cut over lead of the screw' },
    worked: [
      {
        given: { P_t: 3, L: 25.4 / 6 },
        result: 90 / 127,
        tolerance: 1e-12,
        source: { work: 'jones', at: '3 mm on a screw constant of 6: stud 90, lead screw 127' },
      },
      {
        given: { P_t: 25.4 / 4, L: 25.4 / 2 },
        result: 20 / 40,
        tolerance: 1e-12,
        source: { work: 'construction-tools', at: '4 to the inch on a screw of 2: 20 and 40' },
      },
    ],
  },
} as const satisfies Record<string, FormulaRecord>;
