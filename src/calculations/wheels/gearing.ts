import type { Citation } from '../../handbook/record.js';
import { length, whole } from '../quantity.js';

/** What wheels and pinions are given alike. */
export const teeth = whole('z', 'teeth in the wheel', 6, 1000);
export const leaves = whole('n', 'leaves in the pinion', 5, 100);
export const module = length('m', 'module', 0.05, 20);

/** A row of the cutter maker's dimension table. */
export const table = (row: string): Citation => ({ work: 'cutter-table', at: row });
