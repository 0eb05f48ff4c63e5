import { derived, type FormulaRecord } from '../record.js';

/** Dividing: published formulas, by id. Lengths mm unless the title says otherwise. */
export const dividingFormulas = {
  'step-error': {
    title: 'Error of one step of the work, arc seconds; above 0 too long',
    formula: 'e = 1296000*((w + k/H)/R - 1/N)',
    source: derived('movement ÷ ratio, less a division, of 1 296 000″'),
    worked: [
      {
        given: { w: 0, k: 20, H: 47, R: 40, N: 96 },
        result: 287.234,
        tolerance: 1e-3,
        source: derived('1/94 less 1/96 of a turn'),
      },
    ],
  },
  'closing-error': {
    title: 'Error at the last division, arc seconds',
    formula: 'E = N*e',
    source: derived('every step out by the same'),
    worked: [{ given: { N: 64, e: 30 }, result: 1920, tolerance: 0, source: derived('0.533° of 64 steps') }],
  },
  'closing-error-at-rim': {
    title: 'The same along the rim',
    formula: 'c = pi*D*E/1296000',
    source: derived('length of an arc'),
    worked: [
      {
        given: { D: 48, E: 40.5 },
        result: 0.0047,
        tolerance: 5e-5,
        source: derived('40.5″ at a radius of 24 mm'),
      },
    ],
  },
  'closing-percent': {
    title: 'Size of the closing error against the pitch, per cent',
    formula: 'y = abs(e)*N^2/12960',
    source: derived('N steps’ error over one pitch of 1 296 000″/N'),
    worked: [
      {
        given: { e: 30, N: 64 },
        result: 9.5,
        tolerance: 0.05,
        source: derived('0.533° of a pitch of 5.625°'),
      },
    ],
  },
  'plate-error': {
    title: 'Angle at the wheel from a misplaced hole, arc seconds',
    formula: 'g = 648000*f/(pi*r*R)',
    source: derived('arc over radius, divided by the worm’s ratio'),
    worked: [
      {
        given: { f: 0.05, r: 50, R: 1 },
        result: 206,
        tolerance: 0.5,
        source: derived('a thousandth of a radian'),
      },
      {
        given: { f: 0.05, r: 50, R: 40 },
        result: 5.16,
        tolerance: 5e-3,
        source: derived('a fortieth of 206″'),
      },
    ],
  },
  'plate-error-at-rim': {
    title: 'The same along the wheel’s rim',
    formula: 'u = f*q/(r*R)',
    source: derived('errors are as their radii'),
    worked: [
      {
        given: { f: 0.05, r: 50, R: 1, q: 24 },
        result: 0.024,
        tolerance: 1e-12,
        source: derived('24/50 of 0.05 mm'),
      },
    ],
  },
} as const satisfies Record<string, FormulaRecord>;
