import { type Citation, derived, type FormulaRecord } from '../record.js';

const spanTable: Citation = { work: 'base-tangent-tables', at: 'from memory' };
const chordalTable: Citation = { work: 'brown-sharpe-gearing', at: 'by range of the cutter, from memory' };

/** Involute wheels: published formulas, by id. Lengths mm unless the title says otherwise. */
export const involuteFormulas = {
  'involute-outside': {
    title: 'Outside diameter of an involute wheel',
    formula: 'd_a = m*(z + 2)',
    source: { work: 'metric-gears', at: 'outside diameter' },
    worked: [{ given: { m: 1.27, z: 12 }, result: 17.78, tolerance: 1e-9, source: derived('14/20 in') }],
  },
  'involute-root': {
    title: 'Root diameter of an involute wheel',
    formula: 'd_f = m*(z - 2.5)',
    source: { work: 'iso53', at: 'dedendum 1.25, from memory' },
    worked: [
      {
        given: { m: 2, z: 30 },
        result: 55,
        tolerance: 1e-12,
        source: derived('pitch circle 60 less 2 × 2.5'),
      },
    ],
  },
  'involute-depth': {
    title: 'Whole depth of an involute tooth',
    formula: 'h = 2.25*m',
    source: { work: 'iso53', at: 'addendum 1 and dedendum 1.25, from memory' },
    worked: [{ given: { m: 2 }, result: 4.5, tolerance: 1e-12, source: derived('1 + 1.25 modules') }],
  },
  'base-diameter': {
    title: 'Base diameter of an involute wheel',
    formula: 'd_b = m*z*cosd(A)',
    source: derived('right triangle from the centre to the line of action'),
    worked: [
      { given: { m: 1, z: 40, A: 20 }, result: 37.588, tolerance: 5e-4, source: derived('40 cos 20°') },
    ],
  },
  'involute-thickness': {
    title: 'Tooth thickness on the pitch circle',
    formula: 's = pi*m/2',
    source: derived('half the circular pitch'),
    worked: [
      {
        given: { m: 3 },
        result: 4.7124,
        tolerance: 5e-5,
        source: { work: 'metric-gear-technology', at: 'table 10-2, rack' },
      },
    ],
  },
  involute: {
    title: 'Involute of an angle',
    formula: 'inv_A = tand(A) - A*pi/180',
    source: derived('string unwound less the angle it leaves at'),
    worked: [
      {
        given: { A: 20 },
        result: 0.014904,
        tolerance: 5e-7,
        source: { work: 'involute-tables', at: 'from memory' },
      },
    ],
  },
  'base-tangent': {
    title: 'Span over teeth (base tangent length)',
    formula: 'W = m*cosd(A)*(pi*(k - 1/2) + z*(tand(A) - A*pi/180))',
    source: derived('k − 1 base pitches and one base tooth'),
    worked: [
      { given: { m: 1, A: 20, z: 15, k: 2 }, result: 4.6383, tolerance: 5e-5, source: spanTable },
      { given: { m: 1, A: 20, z: 40, k: 5 }, result: 13.8448, tolerance: 5e-5, source: spanTable },
    ],
  },
  'undercut-limit': {
    title: 'Teeth at which a rack begins to undercut',
    formula: 'z_0 = 2*f/sind(A)^2',
    source: { work: 'gear-texts', at: '2/sin² of the pressure angle, from memory' },
    worked: [
      { given: { f: 1, A: 30 }, result: 8, tolerance: 1e-9, source: derived('sin 30° = 1/2') },
      {
        given: { f: 1, A: 14.5 },
        result: 31.9,
        tolerance: 0.05,
        source: { work: 'gear-texts', at: 'printed as 32, from memory' },
      },
    ],
  },
  'chordal-thickness': {
    title: 'Chordal thickness of a tooth',
    formula: 's_c = m*z*sind(90/z)',
    source: { work: 'brown-sharpe-gearing', at: 'chord of half a pitch angle, from memory' },
    worked: [{ given: { m: 1, z: 12 }, result: 1.5663, tolerance: 5e-5, source: chordalTable }],
  },
  'chordal-addendum': {
    title: 'Chordal (corrected) addendum of a tooth',
    formula: 'h_c = m + m*z*(1 - cosd(90/z))/2',
    source: { work: 'brown-sharpe-gearing', at: 'addendum and the rise of the arc, from memory' },
    worked: [
      {
        given: { m: 1, z: 12 },
        result: 1.0514,
        // The last figure is remembered one too large: 1.05134.
        tolerance: 1e-4,
        source: chordalTable,
      },
    ],
  },
} as const satisfies Record<string, FormulaRecord>;
