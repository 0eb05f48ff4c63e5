import { derived, type FormulaRecord } from '../record.js';

/** Workshop trigonometry: published formulas, by id. Lengths mm unless the title says otherwise. */
export const trigonometryFormulas = {
  'angle-of-division': {
    title: 'Angle of one division',
    formula: 'A = 360/N',
    source: derived('a whole turn shared out'),
    worked: [{ given: { N: 60 }, result: 6, tolerance: 0, source: derived('360/60') }],
  },
  chord: {
    title: 'Chord of an angle at the centre',
    formula: 'c = D*sind(A/2)',
    source: { work: 'chord-sheet', at: 'chord = diameter × sin(180°/n)' },
    worked: [
      {
        given: { D: 1, A: 360 / 7 },
        result: 0.43388,
        tolerance: 5e-6,
        source: { work: 'chord-sheet', at: '7 holes' },
      },
    ],
  },
  sagitta: {
    title: 'Height of an arc over its chord',
    formula: 'h = D*sind(A/4)^2',
    source: derived('versed sine of half the angle'),
    worked: [{ given: { D: 20, A: 120 }, result: 5, tolerance: 1e-12, source: derived('half the radius') }],
  },
  'taper-per-unit': {
    title: 'Taper, as change of diameter for each unit of length',
    formula: 't = (D - d)/l',
    source: { work: 'jones-turning', at: 'taper per inch' },
    worked: [
      {
        given: { D: 2.5, d: 2, l: 6 },
        result: 0.0833,
        tolerance: 5e-5,
        source: { work: 'jones-turning', at: '2½ to 2 in 6' },
      },
    ],
  },
  'taper-per-foot': {
    title: 'Taper, inches per foot',
    formula: 'T = 12*(D - d)/l',
    source: { work: 'navy-tapers', at: 'taper per foot' },
    worked: [
      {
        given: { D: 2, d: 1, l: 2 },
        result: 6,
        tolerance: 0,
        source: { work: 'navy-tapers', at: '1 and 2 in 2 inches' },
      },
      {
        given: { D: 2, d: 1, l: 6 },
        result: 2,
        tolerance: 1e-12,
        source: { work: 'navy-tapers', at: '1 and 2 in 6 inches' },
      },
    ],
  },
  'taper-one-in': {
    title: 'Length in which the diameter changes by one',
    formula: 'k = l/(D - d)',
    source: derived('taper, the other way up'),
    worked: [{ given: { D: 12, d: 10, l: 40 }, result: 20, tolerance: 0, source: derived('40/2') }],
  },
  'half-angle': {
    title: 'Half-angle of a taper',
    formula: 'a = atand((D - d)/(2*l))',
    source: { work: 'morse-ends', at: 'column “angle from centre”' },
    worked: [
      {
        given: { D: 0.59941, d: 0, l: 12 },
        result: 1.4307,
        tolerance: 5e-5,
        source: { work: 'morse-ends', at: 'No. 2' },
      },
    ],
  },
  'included-angle': {
    title: 'Included angle of a taper',
    formula: 'A = 2*asind((D - d)/sqrt(4*l^2 + (D - d)^2))',
    source: derived('both sides as the equal sides of a triangle'),
    worked: [
      {
        given: { D: 0.17498, d: 0, l: 1 },
        result: 10,
        tolerance: 3e-4,
        source: { work: 'tapers-1902', at: '10°, taper per inch to five figures' },
      },
    ],
  },
  'set-over': {
    title: 'Set-over of the tailstock',
    formula: 'x = (D - d)/2*L/l',
    source: { work: 'jones-turning', at: 'set-over for a taper of part of the length' },
    worked: [
      {
        given: { D: 2.5, d: 2, l: 6, L: 9 },
        result: 0.375,
        tolerance: 1e-12,
        source: { work: 'jones-turning', at: '3/8 in' },
      },
    ],
  },
  'set-over-along-work': {
    title: 'Set-over of the tailstock, the slant of the work itself reckoned in',
    formula: 'y = L*(D - d)/sqrt(4*l^2 + (D - d)^2)',
    source: derived('length of the work times the sine of the half-angle'),
    worked: [
      {
        given: { D: 6, d: 0, l: 4, L: 10 },
        result: 6,
        tolerance: 1e-12,
        source: derived('3-4-5 triangle'),
      },
    ],
  },
  'sine-bar': {
    title: 'Stack under a sine bar',
    formula: 'h = L*sind(A)',
    source: { work: 'sine-bar-article', at: 'height = length × sine of the angle' },
    worked: [
      {
        given: { L: 5, A: 27 },
        result: 2.27,
        tolerance: 5e-4,
        source: { work: 'sine-bar-article', at: '5 in bar, 27°' },
      },
    ],
  },
  'dovetail-male': {
    title: 'Male dovetail over two rollers',
    formula: 'M = W - 2*h/tand(A) + D*(1 + 1/tand(A/2))',
    source: { work: 'dovetail-article', at: 'b = y + D(1 + 1/tan(α/2)), the slope by h/tan α' },
    worked: [
      {
        given: { W: 20, h: 4, A: 90, D: 5 },
        result: 30,
        tolerance: 1e-12,
        source: derived('upright sides: a roller’s diameter at each'),
      },
    ],
  },
  'dovetail-female': {
    title: 'Female dovetail between two rollers',
    formula: 'M = W + 2*h/tand(A) - D*(1 + 1/tand(A/2))',
    source: { work: 'dovetail-article', at: 'L = a + 2h/tan α, less D(1 + 1/tan(α/2))' },
    worked: [
      {
        given: { W: 20, h: 4, A: 60, D: 0 },
        result: 24.6188,
        tolerance: 5e-5,
        source: { work: 'dovetail-thread', at: 'wide width, before any roller' },
      },
    ],
  },
  'dovetail-male-corners': {
    title: 'Narrow width of a male dovetail',
    formula: 'w = W - 2*h/tand(A)',
    source: { work: 'dovetail-article', at: 'L = a + 2h/tan α' },
    worked: [
      {
        given: { W: 24.6188, h: 4, A: 60 },
        result: 20,
        tolerance: 5e-5,
        source: { work: 'dovetail-thread', at: 'narrow width' },
      },
    ],
  },
  'dovetail-female-corners': {
    title: 'Wide width of a female dovetail',
    formula: 'w = W + 2*h/tand(A)',
    source: { work: 'dovetail-article', at: 'L = a + 2h/tan α' },
    worked: [
      {
        given: { W: 20, h: 4, A: 60 },
        result: 24.6188,
        tolerance: 5e-5,
        source: { work: 'dovetail-thread', at: 'wide width' },
      },
    ],
  },
  'across-flats': {
    title: 'Across flats of a polygon of even sides on a round',
    formula: 'AF = D*cosd(180/N)',
    source: derived('right triangle from centre to flat'),
    worked: [
      { given: { D: 11.547, N: 6 }, result: 10, tolerance: 5e-5, source: derived('hexagon 10 across flats') },
    ],
  },
  'flat-to-corner': {
    title: 'Flat to opposite corner of a polygon of odd sides on a round',
    formula: 'AF = D*cosd(90/N)^2',
    source: derived('half angle of 1 + cos'),
    worked: [
      { given: { D: 10, N: 3 }, result: 7.5, tolerance: 1e-12, source: derived('triangle in a circle') },
    ],
  },
  'depth-of-flat': {
    title: 'Depth of a flat on a round',
    formula: 't = D*sind(90/N)^2',
    source: derived('versed sine of half the angle of a side'),
    worked: [{ given: { D: 10, N: 3 }, result: 2.5, tolerance: 1e-12, source: derived('half the radius') }],
  },
  'flat-width': {
    title: 'Width of a flat on a round',
    formula: 'b = D*sind(180/N)',
    source: derived('chord of one side'),
    worked: [{ given: { D: 10, N: 6 }, result: 5, tolerance: 1e-12, source: derived('side = radius') }],
  },
  expansion: {
    title: 'Change of a length with temperature',
    formula: 'x = L*k*T/1000000',
    source: derived('definition of the coefficient'),
    worked: [
      {
        given: { L: 1_000_000, k: 11.3, T: 33 },
        result: 372.9,
        tolerance: 1e-9,
        source: derived('a steel rod, 33 °C warmer, in millionths'),
      },
    ],
  },
} as const satisfies Record<string, FormulaRecord>;
