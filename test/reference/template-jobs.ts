import type { TemplateJob } from '../../src/reference/templates/template.js';

const job = (name: string, teeth: number, module: number, more: Partial<TemplateJob> = {}): TemplateJob => ({
  name,
  teeth,
  module,
  convention: '2.76',
  depthForm: '2.95',
  blanks: 1,
  ...more,
});

/** The class wheel of the sample course, crossed out as lesson 14 has it. */
export const classWheel = job('Class wheel', 60, 0.8, {
  leaves: 8,
  blanks: 4,
  hole: 6,
  crossing: {
    arms: 5,
    rimInsideDiameter: 40.8,
    hubDiameter: 14,
    armWidthAtRim: 2.4,
    armWidthAtHub: 3.4,
    filletRadius: 1,
  },
});

/** The same by the rule. */
export const byRule = job('Class wheel by the rule', 60, 0.8, { leaves: 8 });

/** Larger than any page. */
export const large = job('Great wheel of a turret clock', 120, 2.5, { arbor: 14, hole: 12, blanks: 2 });

/** So small that by the rule it is not crossed out. */
export const small = job('Small wheel', 12, 0.4, { leaves: 6 });

/** A wheel of another form, by leaf count, and one with a long name. */
export const others: readonly TemplateJob[] = [
  job('Round-bottom wheel', 48, 1, { depthForm: '3.00', blanks: 3 }),
  job('The third wheel of the other clock, with a name as long as the course allows it', 77, 0.6, {
    leaves: 10,
    convention: 'leaves',
    depthForm: '3.38',
    blanks: 2,
  }),
];
