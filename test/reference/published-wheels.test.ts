import { expect, it } from 'vitest';
import { cellsOf, rowOf } from './rows.js';

it.each([
  // Seconds pendulum of 60 beats a minute; half a second 248.4 mm; 100 beats a minute 14.1 in (textbooks, from memory).
  ['trains', '3600', { 1: '60.0', 2: '993.6', 3: '39.12' }],
  ['trains', '7200', { 2: '248.4' }],
  ['trains', '6000', { 1: '100.0', 3: '14.08' }],
  // Practical addendum: 0.95 × 1.3714 for 6 leaves at 6 : 1 (after H. Sparks, from memory).
  ['addendum-factors', '6', { 4: '1.303' }],
  ['addendum-factors', '8', { 6: '1.475' }],
  // A cutter maker’s table (web page, read 2026): blank z + 2.76, root z − 3.14; depths 2.95, 3.38, 2.45 and 3.00.
  ['wheel-sizes', '60', { 2: '48.00', 3: '50.21', 4: '45.49' }, 'Module 0.80 mm'],
  ['wheel-sizes', '0.80', { 1: '2.36', 2: '2.70', 3: '1.96', 4: '2.40', 5: '1.26' }],
  // The same table: eight leaves, blank 9.71, depth 2.755; ten leaves 11.61, 2.855 by its own blank and root.
  ['pinion-sizes', '8', { 1: '9.71', 3: '2.755', 5: '15.0', 6: '30.0' }, 'In modules'],
  ['pinion-sizes', '10', { 1: '11.61', 3: '2.855' }, 'In modules'],
  // Leaf 2/5 of a pitch of 36°, by its tooth to pitch ratio.
  ['pinion-sizes', '10', { 5: '14.4', 6: '21.6' }, 'In modules'],
  // 16 DP: module 1.5875, circular pitch 0.1963 in; 20 DP looks like module 1.25 (Machinery’s Handbook, from memory).
  ['pitches', '16', { 1: '1.5875', 2: '0.1963', 4: '1.500' }],
  ['pitches', '20', { 1: '1.2700', 4: '1.250', 5: '1.60' }],
  // Module 1, 20°: base-tangent tables after DIN 3960, from memory.
  ['gear-measures', '15', { 1: '2', 2: '4.6383' }, 'Pressure angle 20°'],
  ['gear-measures', '40', { 1: '5', 2: '13.8448', 3: '42.4217' }, 'Pressure angle 20°'],
  // Over pins of 1.728/P: 10 teeth and up (Machinery’s Handbook, from memory).
  ['gear-measures', '12', { 3: '14.3578' }, 'Pressure angle 20°'],
  // Chordal thickness and corrected addendum (Brown & Sharpe, from memory).
  ['chordal-teeth', '26', { 1: '1.5698', 2: '1.0237' }],
  ['chordal-teeth', '55', { 1: '1.5706', 2: '1.0112' }],
] as const)('%s, row %s', (name, head, cells, table?: string) => {
  expect(cellsOf(rowOf(name, head, table === undefined ? {} : { table }), cells)).toEqual(cells);
});

it('motion work has the set of old clocks, 8 and 32 with 10 and 30', () => {
  // Common practice, no source. (8 + 32)/2 = 20 modules from centre to centre.
  expect(rowOf('motion-work', '8')).toEqual(['8', '32', '10', '30', '20.0', '12']);
});

it('trains have those of regulators and longcase clocks', () => {
  // 64/8 × 60/8 and 60/8 × 56/7 for 3600 (D. de Carle, from memory).
  const [, , , , fewest, alike] = rowOf('trains', '3600');
  expect(fewest).toContain('60/8 × 56/7');
  expect(alike).toContain('64/8 × 60/8');
});
