import { length } from '../quantity.js';

/** Widths of an arm, each across the places where its sides meet the circle. */
export const armWidthAtRim = length('w_r', 'width of an arm at the rim', 0.05, 200);
export const armWidthAtHub = length('w_h', 'width of an arm at the hub', 0.05, 200);
