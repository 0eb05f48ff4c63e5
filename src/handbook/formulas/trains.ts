import { derived, type FormulaRecord, practice } from '../record.js';

/** Trains and time: published formulas, by id. Lengths mm unless the title says otherwise. */
export const trainsFormulas = {
  'train-ratio': {
    title: 'Ratio of a train: wheels multiplied over pinions multiplied',
    formula: 'i = Z/N',
    source: derived('each pair turns its pinion as often as its leaves go into the wheel’s teeth'),
    worked: [
      {
        given: { Z: 64 * 60, N: 8 * 8 },
        result: 60,
        tolerance: 0,
        source: { work: 'de-carle', at: 'regulator train 64/8, 60/8, from memory' },
      },
    ],
  },
  'beats-per-hour': {
    title: 'Beats an hour of a train from the wheel that turns once an hour',
    formula: 'B = 2*E*Z/N',
    source: { work: 'beats-page', at: 'p. 9' },
    worked: [
      {
        given: { E: 30, Z: 80 * 72, N: 12 * 8 },
        result: 3600,
        tolerance: 0,
        source: { work: 'beats-page', at: 'p. 9, 80/12, 72/8, escape wheel 30' },
      },
      {
        given: { E: 30, Z: 60 * 56, N: 8 * 7 },
        result: 3600,
        tolerance: 0,
        source: practice('longcase train 60/8, 56/7, escape wheel 30'),
      },
      {
        given: { E: 15, Z: 80 * 75 * 70, N: 10 * 10 * 7 },
        result: 18_000,
        tolerance: 0,
        source: practice('lever-watch train 80/10, 75/10, 70/7, escape wheel 15'),
      },
    ],
  },
  'beats-per-minute': {
    title: 'Beats a minute',
    formula: 'b = B/60',
    source: derived('sixty minutes to the hour'),
    worked: [{ given: { B: 3600 }, result: 60, tolerance: 0, source: derived('seconds pendulum') }],
  },
  'train-hours': {
    title: 'Hours that the great wheel drives',
    formula: 'H = w*z/n',
    source: derived('the pinion on the centre arbor turns once an hour'),
    worked: [
      {
        given: { w: 16, z: 96, n: 8 },
        result: 192,
        tolerance: 0,
        source: { work: 'denison-1850', at: 'p. 29, sixteen turns of the barrel in eight days' },
      },
    ],
  },
  'train-days': {
    title: 'Days from hours',
    formula: 'd = H/24',
    source: derived('twenty-four hours to the day'),
    worked: [{ given: { H: 192 }, result: 8, tolerance: 0, source: derived('8 × 24 = 192') }],
  },
  'pendulum-length': {
    title: 'Length of the simple pendulum by its beats an hour; gravity in m/s²',
    formula: 'L = 1000*g*(3600/B)^2/pi^2',
    source: derived('small swings: a beat takes π√(L/g)'),
    worked: [
      {
        given: { g: 9.80665, B: 3600 },
        result: 993.6,
        tolerance: 0.05,
        source: practice('seconds pendulum of the textbooks'),
      },
      {
        given: { g: 9.81203, B: 3600 },
        result: 39.14 * 25.4,
        tolerance: 0.005 * 25.4,
        source: { work: 'artillerist', at: 'seconds pendulum in London, 39.14 in' },
      },
      {
        given: { g: 9.80665, B: 7200 },
        result: 248,
        tolerance: 0.5,
        source: practice('half-seconds pendulum of the textbooks'),
      },
    ],
  },
  'normal-gravity': {
    title: 'Gravity at sea level by latitude, m/s², on the ellipsoid WGS 84',
    formula: 'g = 9.7803253359*(1 + 0.00193185265241*sind(F)^2)/sqrt(1 - 0.00669437999013*sind(F)^2)',
    source: { work: 'wgs84', at: 'equation (4-1) and table of derived constants, from memory' },
    worked: [
      {
        given: { F: 90 },
        result: 9.8321849378,
        tolerance: 5e-10,
        source: { work: 'wgs84', at: 'gravity at the pole, from memory' },
      },
      {
        given: { F: 0 },
        result: 9.7803253359,
        tolerance: 0,
        source: { work: 'wgs84', at: 'gravity at the equator, from memory' },
      },
    ],
  },
} as const satisfies Record<string, FormulaRecord>;
