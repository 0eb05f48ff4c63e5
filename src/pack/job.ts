import { z } from 'zod';
import type { Calculation } from '../calculations/calculation.js';
import { crossingLayout } from '../calculations/finishing/crossing.js';
import { mass } from '../calculations/finishing/disc.js';
import { crossingRule } from '../calculations/finishing/proportions.js';
import { spindleSpeed, stack } from '../calculations/setting-up/setup.js';
import type { WheelForm } from '../calculations/wheels/tooth-forms.js';
import { wheelBlank } from '../calculations/wheels/wheels.js';
import { InputError } from '../diagnostics/errors.js';
import { printableName } from '../reading/glyphs.js';

/** What a calculation accepts for a value that it is given. */
function given<T>({ name, given: all }: Calculation, key: string) {
  const quantity = all[key];
  if (!quantity) throw new Error(`${name} is not given ${key}`);
  const error = `expected ${quantity.accepts}`;
  return z.union([z.number(), z.string().max(60)], { error }).transform((raw, context): T => {
    const value: T | undefined = quantity.read(raw);
    if (value !== undefined) return value;
    context.addIssue({ code: 'custom', message: error });
    return z.NEVER;
  });
}

/** A wheel to be cut at the bench. Lengths mm, speeds m/min; a length may carry its unit, such as `1/32 in`. */
export const jobSchema = z
  .strictObject({
    name: printableName,
    teeth: given<number>(wheelBlank, 'teeth'),
    leaves: given<number>(wheelBlank, 'leaves').optional(),
    module: given<number>(wheelBlank, 'module'),
    convention: given<'leaves' | '2.76'>(wheelBlank, 'convention').default('2.76'),
    depthForm: given<WheelForm>(wheelBlank, 'depthForm').default('2.95'),
    blankThickness: given<number>(stack, 'blankThickness'),
    /** Cut together in one stack. */
    blanks: z.number().int().min(1).max(100).default(1),
    backing: given<number>(stack, 'backing').default(0),
    clearance: given<number>(stack, 'clearance').default(1),
    cuttingSpeed: given<number>(spindleSpeed, 'cuttingSpeed').default(60),
    /** Of the finished wheel, and what it goes on. */
    hole: given<number>(mass, 'hole').optional(),
    arbor: given<number>(crossingRule, 'arbor').optional(),
    /** How it is crossed out; what is left out goes by the rule. */
    crossing: z
      .strictObject({
        arms: given<number>(crossingLayout, 'arms').optional(),
        rimInsideDiameter: given<number>(crossingLayout, 'rimInsideDiameter').optional(),
        hubDiameter: given<number>(crossingLayout, 'hubDiameter').optional(),
        armWidthAtRim: given<number>(crossingLayout, 'armWidthAtRim').optional(),
        armWidthAtHub: given<number>(crossingLayout, 'armWidthAtHub').optional(),
        filletRadius: given<number>(crossingLayout, 'filletRadius').optional(),
      })
      .optional(),
  })
  .superRefine((job, context) => {
    try {
      wheelBlank.refuse?.(job);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      context.addIssue({ code: 'custom', path: [error.key], message: `expected ${error.accepts}` });
    }
  });

/** A checked job; lengths mm, speeds m/min. */
export type Job = z.output<typeof jobSchema>;
