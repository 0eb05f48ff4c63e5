import { z } from 'zod';
import { parseRange } from '../problems/range.js';
import { problemSchema, workingsSchema } from '../problems/schema.js';
import { cautionNames } from './cautions.js';

const line = z.string().trim().min(1).max(200);
const name = z.string().regex(/^[A-Za-z][A-Za-z0-9-]*$/, 'expected a name of letters, figures and hyphens');

/** A value of the example: a count, a length with its unit, a word, or a list of such; by the sheet's units. */
const value = z
  .union([
    z.number(),
    z.boolean(),
    z.string().max(200),
    z.array(z.union([z.number(), z.string().max(200)])).max(100),
  ])
  .transform((raw, context) => {
    if (typeof raw === 'boolean') return { value: { mm: raw, inch: raw }, length: false };
    const range = parseRange(raw);
    const one = (values: readonly (number | string)[]) =>
      Array.isArray(raw) || values.length > 1 ? values : values[0];
    if (range) return { value: { mm: one(range.mm), inch: one(range.inch) }, length: range.lengths };
    context.addIssue({
      code: 'custom',
      message: 'expected a number, a length such as 0.8 mm, a word, or a list',
    });
    return z.NEVER;
  });

/** The front matter of a lesson. */
export const lessonSchema = z.strictObject({
  title: line,
  part: line.default(''),
  level: z.number().int().min(1).max(3).default(1),
  needs: z.array(line).max(12).default([]),
  goals: z.array(line).max(12).default([]),
  cautions: z.array(z.enum(cautionNames)).max(3).default([]),
  example: z
    .record(z.string().max(80), value)
    .refine((values) => Object.keys(values).length <= 200, { message: 'expected 200 values at most' })
    .default({}),
  works: workingsSchema.default({}),
  /** What letters of the lesson's own formulas stand for, as in `D_1: diameter of the first peg (mm)`. */
  symbols: z
    .record(z.string().regex(/^[A-Za-z](_[A-Za-z0-9]+)?$/, 'expected a letter, such as D or D_1'), line)
    .default({}),
  /** Problems of one kind are printed with less and less of their working, from all to none. */
  fade: z.boolean().default(false),
  problems: z
    .record(name, problemSchema)
    .refine((problems) => Object.keys(problems).length <= 60, { message: 'expected 60 problems at most' })
    .default({}),
});

export type FrontMatter = z.output<typeof lessonSchema>;

/** The JSON Schema of the front matter, for editors that complete and check as one types. */
export function lessonJsonSchema(): object {
  return z.toJSONSchema(lessonSchema, { io: 'input', unrepresentable: 'any' });
}
