import { z } from 'zod';
import { parseRange } from './range.js';

/** A value as a lesson's author writes it: a number, text with or without a unit, true or false, or a list. */
const literal = z.union([
  z.number(),
  z.string().max(200),
  z.boolean(),
  z.array(z.union([z.number(), z.string().max(200)])).max(100),
]);
const name = z.string().regex(/^[A-Za-z][A-Za-z0-9]*$/, 'expected a name of letters and figures');
const text = z.string().trim().min(1).max(4000);
const formula = z.union([z.string().min(1).max(400), z.number()]).transform(String);
const oneOrMore = <S extends z.ZodType>(of: S) =>
  z
    .union([of, z.array(of).min(1).max(20)])
    .transform((value) => (Array.isArray(value) ? value : [value]) as z.output<S>[]);
const relations = oneOrMore(formula);

/** A step in the sheet's units: `0.01 mm or 0.001 in`, `1 minute`, `5 %`, `0.5`. */
const step = z.union([z.number(), z.string().max(60)]).transform(String);

const range = z
  .union([z.string(), z.number(), z.array(z.union([z.number(), z.string()]))])
  .transform((raw, context) => {
    const read = parseRange(raw);
    if (read) return read;
    context.addIssue({
      code: 'custom',
      message: 'expected a range or list, such as 48..96 by 4, 0.3..1.0 by 0.05 mm, or [6, 7, 8]',
    });
    return z.NEVER;
  });

/** A working by a calculation of the catalogue; what else is in it are its given values, literal or by name. */
const calculated = z.object({ calculation: z.string() }).catchall(literal);
const byFormula = z.strictObject({
  formula,
  check: relations,
  unit: z.string().max(20).default(''),
  title: z.string().max(80).optional(),
  symbol: z
    .string()
    .regex(/^[A-Za-z](_[A-Za-z0-9]+)?$/)
    .optional(),
});
const decision = z.strictObject({
  decide: relations,
  check: relations,
  words: z.tuple([z.string(), z.string()]).default(['yes', 'no']),
});
const among = z
  .object({
    among: z.record(name, z.array(literal).min(2).max(12)),
    calculation: z.string(),
    where: relations,
  })
  .catchall(literal);
/** One named working, of the four kinds. */
export const workingSchema = z.union([byFormula, decision, among, calculated]);
export const workingsSchema = z.record(name, workingSchema);

const slip = z.strictObject({ formula, says: text, makes: formula.optional() });
const asked = {
  find: z.string().max(80),
  answer: z.strictObject({ to: step.optional(), accept: step.optional() }).default({}),
  method: formula.optional(),
  marks: z
    .strictObject({
      method: z.number().int().min(0).max(10).default(0),
      accuracy: z.number().int().min(0).max(10).default(0),
      independent: z.number().int().min(0).max(10).default(0),
    })
    .default({ method: 1, accuracy: 1, independent: 0 }),
  /** `false` leaves out one that the calculation brings. */
  slips: z.record(name, z.union([slip, z.literal(false)])).default({}),
  room: z.number().int().min(1).max(20).optional(),
};
const part = z.strictObject({ ...asked, ask: text });

/** One kind of problem, as a lesson's front matter declares it. */
export const problemSchema = z
  .strictObject({
    level: z.enum(['a', 'b', 'c', 'd']).default('a'),
    calculation: z.string().optional(),
    with: z.record(name, literal).default({}),
    vary: z.record(name, range),
    keep: relations.default([]),
    mix: formula.optional(),
    works: workingsSchema.default({}),
    tell: z.record(z.string().max(80), step).default({}),
    ask: text,
    ...asked,
    find: asked.find.optional(),
    parts: z.array(part).min(1).max(8).optional(),
  })
  .refine((one) => (one.find === undefined) !== (one.parts === undefined), {
    message: 'expected either find, or parts',
  });

export type ProblemDeclaration = z.output<typeof problemSchema>;
export type WorkingDeclaration = z.output<typeof workingSchema>;
export type PartDeclaration = z.output<typeof part>;

/** A kind of problem with its key in the lesson. */
export interface ProblemKind {
  readonly name: string;
  readonly declared: ProblemDeclaration;
}
