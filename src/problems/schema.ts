import { z } from 'zod';
import { fadeStages } from './kind.js';
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
/** A value by its name, `teeth`, or that of a working, `wheel.outsideDiameter`. */
const valueName = z.string().max(80);
/** Words that stand on a sheet as they are. */
const words = z
  .string()
  .trim()
  .min(1)
  .max(160)
  .regex(/^[^{}]*$/, 'expected words without braces');
const between = (least: number, most: number) =>
  [
    (one: Readonly<Record<string, unknown>>) =>
      Object.keys(one).length >= least && Object.keys(one).length <= most,
    { message: `expected ${least} to ${most} of them` },
  ] as const;
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
/** A formula worked once for each of several numbers: the rows of a table. */
const series = byFormula.extend({
  each: z
    .record(name, range)
    .refine((each) => Object.keys(each).length === 1, {
      message: 'expected one name with its numbers, such as { tooth: 1..6 }',
    })
    .refine((each) => Object.values(each).every(({ mm }) => mm.length <= 60), {
      message: 'expected 60 numbers at most: each is a row of a table',
    }),
});
const decision = z.strictObject({
  decide: relations,
  check: relations,
  words: z.tuple([z.string(), z.string()]).default(['yes', 'no']),
});
/** The one of several that holds, in words. */
const cases = z.strictObject({
  cases: z
    .record(words, z.strictObject({ when: relations, check: relations, says: text.optional() }))
    .refine(...between(2, 8)),
});
/** Several values in order, each with the words that a sheet prints for it. */
const ranking = z.strictObject({
  rank: z.record(valueName, text).refine(...between(3, 6)),
  from: z.enum(['least', 'greatest']).default('least'),
});
const among = z
  .object({
    among: z.record(name, z.array(literal).min(2).max(12)),
    calculation: z.string(),
    where: relations,
  })
  .catchall(literal);
/** One named working, of the seven kinds. */
export const workingSchema = z.union([byFormula, series, decision, cases, ranking, among, calculated]);
export const workingsSchema = z
  .record(name, workingSchema)
  .refine((works) => Object.keys(works).length <= 100, { message: 'expected 100 workings at most' });

const slip = z.strictObject({ formula, says: text, makes: formula.optional() });
/** How many options there are to choose from; the others are what slips give, or these. */
const choose = z
  .union([
    z.number().int().min(2).max(5),
    z.strictObject({
      options: z.number().int().min(2).max(5).optional(),
      others: z.array(words).min(1).max(8).optional(),
      none: words.optional(),
    }),
  ])
  .transform((raw) => (typeof raw === 'number' ? { options: raw } : raw));
/** An estimate that is asked for first, and has a mark of its own within this band. */
const estimate = z.strictObject({ accept: step, to: step.optional(), ask: text.optional() });
const asked = {
  find: valueName,
  choose: choose.optional(),
  estimate: estimate.optional(),
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
  slips: z
    .record(name, z.union([slip, z.literal(false)]))
    .refine(...between(0, 30))
    .default({}),
  room: z.number().int().min(1).max(20).optional(),
};
const part = z.strictObject({ ...asked, ask: text });
/** One line of what is printed, made wrong. */
const error = z.strictObject({ of: valueName, formula, says: text });

/** One kind of problem, as a lesson's front matter declares it. */
export const problemSchema = z
  .strictObject({
    level: z.enum(['a', 'b', 'c', 'd']).default('a'),
    calculation: z.string().optional(),
    with: z.record(name, literal).default({}),
    vary: z.record(name, range).refine(...between(0, 40)),
    keep: relations.default([]),
    mix: formula.optional(),
    works: workingsSchema.default({}),
    tell: z.record(z.string().max(80), step).default({}),
    ask: text,
    ...asked,
    find: asked.find.optional(),
    parts: z.array(part).min(1).max(8).optional(),
    /** Workings that are printed, one a line, or a table; what is asked for is left blank. */
    lines: oneOrMore(valueName).optional(),
    /** One of these, drawn, is printed in place of the right line; which is it, and what should it say? */
    errors: z
      .record(name, error)
      .refine(...between(1, 8))
      .optional(),
    /** With fresh numbers each time. */
    times: z.number().int().min(1).max(6).default(1),
    fade: z.enum(fadeStages).optional(),
  })
  .refine(
    ({ find, parts, errors }) => [find, parts, errors].filter((one) => one !== undefined).length === 1,
    { message: 'expected one of find, parts and errors' },
  )
  .refine(({ lines, errors }) => errors === undefined || lines !== undefined, {
    message: 'errors need lines, the workings that are printed',
  })
  .refine(({ lines, fade }) => lines === undefined || fade === undefined, {
    message: 'lines are printed with their blanks already: take out fade',
  });

export type ProblemDeclaration = z.output<typeof problemSchema>;
export type WorkingDeclaration = z.output<typeof workingSchema>;
export type PartDeclaration = z.output<typeof part>;
