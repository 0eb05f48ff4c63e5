/**
 * Proportions of one tooth, in modules, as the cutter maker's dimension table prints them (to BS 978 Part 2, NHS
 * 56702, 56703 and 56704); a tooth printed as 1.57 is half the circular pitch, exactly. A form is named by its full-depth figure, which is what the cutter is stamped with.
 */
export const wheelForms = {
  '2.95': { addendum: 1.38, dedendum: 1.57, flankRadius: 1.93, toothThickness: Math.PI / 2 },
  '3.38': { addendum: 1.38, dedendum: 2, flankRadius: 1.93, toothThickness: Math.PI / 2 },
  '2.45': { addendum: 1.38, dedendum: 1.07, flankRadius: 1.93, toothThickness: Math.PI / 2 },
  '3.00': { addendum: 1.25, dedendum: 1.75, flankRadius: 2, toothThickness: 1.41 },
} as const;

/** The name of a wheel cutter's form. */
export type WheelForm = keyof typeof wheelForms;

/** In the order of the table: JavaScript keeps keys like these as they were written. */
export const wheelFormNames = Object.keys(wheelForms) as [WheelForm, ...WheelForm[]];

/** Pinion leaves, by count. The leaf's exact part of the pitch is pi/3 (to 8 leaves) or 2 pi/5. */
export const pinionForms = {
  6: { addendum: 0.855, dedendum: 1.58, leafThickness: 1.05, tipRadius: 1.05, form: 'full ogive' },
  7: { addendum: 0.855, dedendum: 1.85, leafThickness: 1.05, tipRadius: 1.05, form: 'full ogive' },
  8: { addendum: 0.855, dedendum: 1.9, leafThickness: 1.05, tipRadius: 1.05, form: 'full ogive' },
  10: { addendum: 0.805, dedendum: 2.05, leafThickness: 1.25, tipRadius: 0.82, form: 'one-third ogive' },
  12: { addendum: 0.805, dedendum: 2.1, leafThickness: 1.25, tipRadius: 0.82, form: 'one-third ogive' },
  16: { addendum: 0.805, dedendum: 2.1, leafThickness: 1.25, tipRadius: 0.82, form: 'one-third ogive' },
} as const;

/** A leaf count the table holds. */
export type LeafCount = keyof typeof pinionForms;

/** Practical over theoretical addendum, as BS 978-2 is commonly reported (from memory). */
export const PRACTICAL = 0.95;

/** Face radius over theoretical addendum, as BS 978-2 is commonly reported (from memory). */
export const FACE_RADIUS = 1.4;
