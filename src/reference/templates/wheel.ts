import type { Desk, Worked } from '../desk.js';
import type { TemplateJob } from './template.js';

/** A pinion is taken to have so many leaves where the course names none. */
export const USUAL_LEAVES = 8;

/** Larger than this no template is drawn, mm: it would take a hundred sheets. */
export const LARGEST = 500;

/** Sizes of the wheel of a job. */
export function wheelOf(desk: Desk, { teeth, leaves, module, convention, depthForm }: TemplateJob): Worked {
  return desk.work('wheel.blank', {
    teeth,
    module,
    convention,
    depthForm,
    ...(leaves === undefined ? {} : { leaves }),
  });
}

/** What the blank and the depth go by, in words. */
export function wheelConvention({ convention, depthForm, leaves = USUAL_LEAVES }: TemplateJob): string {
  const allowance = depthForm === '3.00' ? '2.50' : '2.76';
  return convention === '2.76'
    ? `Blank by the trade allowance, module × (teeth + ${allowance}). Depth by the form ${depthForm}.`
    : `Blank by leaf count, for a pinion of ${leaves}. Depth by the form ${depthForm}.`;
}

/** A found number, for a drawing. */
export const found = (worked: Worked, key: string): number => Number(worked.found[key]);
