import { expect, it } from 'vitest';
import { cellsOf, rowOf } from './rows.js';

it.each([
  // 48, 60 and 72 divided by the count, by hand; a turn of 360° by it.
  ['direct-dividing', '12', { 1: '30° 0′ 0″', 2: '4', 3: '5', 4: '6' }],
  ['direct-dividing', '5', { 1: '72° 0′ 0″', 2: '', 3: '12', 4: '' }],
  ['direct-dividing', '72', { 1: '5° 0′ 0″', 2: '', 3: '', 4: '1' }],
  // Simple indexing on 40 : 1 (Brown & Sharpe and Machinery’s Handbook, from memory).
  ['simple-indexing', '3', { 1: '13', 4: '13 on 39' }],
  ['simple-indexing', '7', { 1: '5', 4: '35 on 49' }],
  ['simple-indexing', '60', { 1: '0', 4: '26 on 39' }],
  ['simple-indexing', '164', { 1: '0', 4: '10 on 41' }],
  ['simple-indexing', '127', { 2: 'none' }],
  // 35° is 3 turns and 16 holes of 18; 1° is 2 of 18 (Machinery’s Handbook 1916; Brown & Sharpe, p. 54; read 2026).
  ['angular-indexing', '35° 0′', { 1: '3', 2: '16', 3: '18', 4: '0.0' }],
  ['angular-indexing', '1° 0′', { 1: '0', 2: '2', 3: '18' }],
  // 51 and 57 by two moves (handbook tables, from memory).
  ['compound-indexing', '51', { 3: '10 on 15', 4: 'forward 2 on 17' }],
  ['compound-indexing', '57', { 3: '5 on 15', 4: 'forward 7 on 19' }],
  // 59, 61 and 117 by gears: 32 and 48, one idler and two; 24 and 24 (handbook tables, from memory).
  ['differential-indexing', '59', { 1: '60', 4: '32', 5: '48', 6: 'with', 7: '1' }],
  ['differential-indexing', '61', { 1: '60', 4: '32', 5: '48', 6: 'against', 7: '2' }],
  ['differential-indexing', '117', { 1: '120', 4: '24', 5: '24', 6: 'with', 7: '1' }],
  // 90 : 1: a quarter is 22½ turns (an article, web page, read 2026); 17 is 5 turns and 5/17 of 4°, 71′ to the minute.
  ['rotary-tables', '4', { 1: '90° 0′ 0″', 2: '22', 3: '2° 0′', 4: '0.0' }],
  ['rotary-tables', '17', { 1: '21° 10′ 35″', 2: '5', 3: '1° 11′', 4: '24.7' }],
  // A quarter of 60 is ten turns of 40 : 1.
  ['tallies', '15', { 1: '10', 2: '0', 3: '90° 0′ 0″' }],
  // Chords for a circle of 1 (a data sheet, web page, read 2026).
  ['hole-circles', '5', { 2: '0.58779' }, 'Chords'],
  ['hole-circles', '7', { 2: '0.43388' }, 'Chords'],
  // cos and sin of 72°, halved; and with a half added.
  ['hole-circles', '2', { 1: '72.000', 2: '0.15451', 3: '0.47553', 4: '0.65451', 5: '0.97553' }, '5 holes'],
  ['many-holes', '4', { 1: '45.000', 2: '0.35355', 3: '0.35355' }, '24 holes'],
] as const)('%s, row %s', (name, head, cells, table?: string) => {
  expect(cellsOf(rowOf(name, head, table === undefined ? {} : { table }), cells)).toEqual(cells);
});
