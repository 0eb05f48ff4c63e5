import { z } from 'zod';

const text = z.string();
const number = z.number();

const expectedNumber = z.strictObject({
  kind: z.literal('number'),
  value: number.describe('rounded as asked, in the unit'),
  unit: text.describe('mm, in, °, rev/min, % and so on; empty for a count'),
  step: number.describe('what an answer is rounded to before it is judged; 0 for a whole count'),
  within: number.describe('the largest difference from the value that is taken'),
  angle: z.enum(['minute', 'second']).optional().describe('told in degrees and minutes, or seconds too'),
});

const expected = z.union([
  expectedNumber,
  z.strictObject({
    kind: z.literal('numbers'),
    each: z.array(expectedNumber).describe('in this order'),
  }),
  z.strictObject({
    kind: z.literal('moves'),
    turns: number.describe('whole turns of the crank'),
    moves: z
      .array(z.strictObject({ holes: number.describe('spaces moved'), circle: number }))
      .describe('any one of these, or the same part of a turn; none when it is not possible'),
  }),
  z.strictObject({
    kind: z.literal('word'),
    word: text,
    other: text.optional().describe('where it is one of two'),
  }),
  z.strictObject({
    kind: z.literal('choice'),
    letter: text,
    letters: z.array(text).describe('of all options'),
  }),
  z.strictObject({
    kind: z.literal('order'),
    letters: z.array(text).describe('in this order'),
  }),
  z.strictObject({
    kind: z.literal('set'),
    items: z.array(text).describe('all of these and no others, in any order'),
  }),
]);

const step = z.union([
  z.strictObject({ say: text }),
  z.strictObject({
    formula: text,
    numbers: z.record(text, text).describe('the number shown for each symbol'),
    result: text,
    line: text.describe('all of it as one line'),
  }),
]);

const asked = {
  letter: text.describe('(a), (b) and so on; empty where there is one part only'),
  question: text.describe('plain text; empty where the problem’s own question asks it'),
  options: z
    .array(z.strictObject({ letter: text, text }))
    .describe('what there is to choose from or to put in order; empty where the answer is written'),
};
const worked = { answer: text.describe('as the key prints it'), method: z.array(step) };

const part = z.strictObject({
  ...asked,
  ...worked,
  unit: text.describe('what stands beside the answer box'),
  accepted: text.describe('what is taken as right, in words'),
  range: z
    .strictObject({ from: number, to: number })
    .optional()
    .describe('of a number: the least and the most that are taken, in the unit, once rounded to the step'),
  expects: expected.describe('what an answer is judged by'),
  marks: z.array(z.strictObject({ code: text, for: text })).describe('M method, A accuracy, B independent'),
  slips: z.array(
    z.strictObject({
      gives: text,
      says: text,
      shown: number
        .optional()
        .describe('what it gives, in the unit; of a movement of the crank, spaces on the first circle'),
    }),
  ),
  follows: z
    .array(
      z.strictObject({
        part: number.describe('the earlier part, from 0'),
        gives: text.describe('what was given there'),
        answer: text.describe('what that leads to here'),
      }),
    )
    .describe('what is right by the working of one who slipped earlier'),
  checks: z
    .array(z.strictObject({ source: text, value: text, agreement: text }))
    .describe('the second route’s word on the answer'),
});

const values = z
  .array(z.strictObject({ name: text, drawn: z.json(), told: z.json() }))
  .describe(
    'each value given or found: as it was drawn, and rounded as the learner is told it; lengths in mm',
  );

const example = z.strictObject({
  question: text.describe('plain text'),
  values,
  parts: z.array(z.strictObject({ ...asked, ...worked })).min(1),
});

const problem = z.strictObject({
  name: text,
  number: text.describe('as on the sheet: 16.2'),
  level: z
    .enum(['a', 'b', 'c', 'd'])
    .describe('a direct, b rearranged, c in two steps, d choose or diagnose'),
  question: text.describe('plain text; a formula is TeX between $ signs'),
  marks: number,
  values,
  example: example
    .optional()
    .describe('the same problem with other numbers, printed before it with its working'),
  parts: z.array(part).min(1),
});

/** The answer key of one sheet as data. */
export const keySchema = z.strictObject({
  format: z.literal('benchleaf-key-1'),
  release: text.describe('of Benchleaf'),
  course: text,
  club: text,
  kit: text.describe('the workshop whose equipment the numbers are for'),
  units: z.enum(['mm', 'inch']).describe('of the lengths on the sheet'),
  variant: text.describe('the code that makes the same numbers again'),
  version: text.optional().describe('A or B, where there are two'),
  learner: text.optional(),
  lessons: z.array(
    z.strictObject({ name: text, number: number.optional(), title: text, problems: z.array(problem) }),
  ),
});

export type Key = z.output<typeof keySchema>;

/** The JSON Schema of a key, for programs that read one. */
export function keyJsonSchema(): object {
  return z.toJSONSchema(keySchema);
}
