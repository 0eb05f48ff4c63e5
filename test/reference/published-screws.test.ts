import { expect, it } from 'vitest';
import { cellsOf, rowOf } from './rows.js';

it.each([
  // ISO 724, M6: effective 5.350; core 4.773, depth 0.613 (from memory).
  ['thread-sizes', 'M6', { 2: '1.00', 3: '0.613', 4: '4.773', 5: '5.350' }],
  // 2 BA: core d − 1.2 p, effective d − 0.6 p (a fastener maker’s table, web page, read 2026).
  ['thread-sizes', '2 BA', { 1: '4.700', 2: '0.81', 4: '3.728', 5: '4.214' }],
  // 1/4 BSW: 20 to the inch, effective 0.2180 in, core 0.1860 in (a fastener maker’s table, web page, read 2026).
  ['thread-sizes', '1/4 BSW', { 2: '20', 4: '4.724', 5: '5.537' }],
  // 1/4-20 UNC: effective 0.2175 in, 5.525 mm (Machinery’s Handbook, from memory).
  ['thread-sizes', '1/4-20 UNC', { 2: '20', 5: '5.525' }],
  // M3 with 2.5 mm: 81.5 % of the screw’s thread (0.5 over twice 0.6134 of 0.5); clearance 3.2 (ISO 273, web page).
  ['tapping-drills', 'M3', { 9: '2.50', 10: '82', 11: '3.20' }],
  // 6-32 and its close clearance, No. 27, 0.144 in (a chart, web page, read 2026).
  ['tapping-drills', '6-32 UNC', { 1: '32', 11: '3.66' }],
  // A lead screw of 3 mm: half its pitch by 1 : 2; 8 to the inch is 3.175 mm, 127/120 of it.
  ['change-wheels', '1.50', { 1: '20', 2: '40', 3: '0.000', 4: 'any' }],
  ['change-wheels', '8', { 1: '127 × 20', 2: '60 × 40', 3: '0.000', 4: 'shut' }],
] as const)('%s, row %s', (name, head, cells) => {
  expect(cellsOf(rowOf(name, head), cells)).toEqual(cells);
});

it.each([
  // Twist drills by number and letter: No. 7, No. 43, F (a chart, web page, read 2026).
  ['fractions', '7', { 1: '0.2010', 2: '5.105' }, { table: 'Number and letter drills' }],
  ['fractions', '43', { 1: '0.0890', 2: '2.261' }, { table: 'Number and letter drills' }],
  ['fractions', 'F', { 1: '0.2570', 2: '6.528' }, {}],
  ['fractions', '1/64', { 1: '0.015625', 2: '0.397' }, {}],
  // Morse No. 2: 0.59941 in to the foot, 1.4307° to the axis (two web pages, read 2026).
  ['tapers', 'Morse 2', { 1: '0.59941', 4: '1.4307' }, {}],
  // A quarter to the foot: 0° 35′ 48″ to the axis, cut short of 48.5″ (a handbook’s table, web page, read 2026).
  ['tapers', 'Taper pin, inch', { 1: '0.25000', 2: '48.000', 5: '0° 35′ 49″' }, {}],
  // Chuck taper 33: 1.8184° to the axis (a table of standard tapers, web page, read 2026).
  ['tapers', 'Chuck taper 33', { 4: '1.8184' }, {}],
  // Hexagon from 10 mm bar 8.66 across flats; square 7.07 (elementary geometry).
  ['flats', '10', { 1: '8.66', 3: '7.07' }, {}],
  // Sine bar of 5 in at 18°: 1.545 in; of 100 mm at 10°: 17.365 (web pages, read 2026).
  ['sine-bars', '18.0', { 1: '0.30902', 3: '1.5451' }, {}],
  ['sine-bars', '10.0', { 2: '17.365' }, {}],
  // 60 m/min on 24 mm; 300 ft/min on half an inch is 2292 (University of Arizona, web page, read 2026).
  ['cutting-speeds', '24', { 6: '796' }, { table: 'Turns a minute, by cutting speed in m/min' }],
  ['cutting-speeds', '1/2', { 8: '2292' }, { units: 'inch' }],
  // HSS turning of mild steel 25 to 45 m/min; drilling 70 to 110 ft/min (tables, web pages, read 2026).
  ['cutting-speeds', 'Mild steel', { 1: '25 to 45', 6: '70 to 110' }, {}],
] as const)('%s, row %s', (name, head, cells, place) => {
  expect(cellsOf(rowOf(name, head, place), cells)).toEqual(cells);
});
