import { z } from 'zod';
import { kindNames } from './kinds.js';
import { isSafeName } from './safe-name.js';
import { MOST_SHARDS } from './shard.js';

const text = z.string().max(500);
const count = z.number().int().nonnegative();
const digest = z.string().regex(/^[0-9a-f]{64}$/, 'expected a SHA-256: 64 digits and letters from a to f');

const input = z.strictObject({
  what: z.enum(['course', 'kit', 'learners', 'lesson', 'jobs']),
  name: text.describe('of the file; of the folder for a lesson'),
  sha256: digest,
});

const document = z.strictObject({
  name: text
    .refine(isSafeName, 'expected a name inside the folder, such as keys/07-ada.pdf')
    .describe('in the folder, its parts with / between them'),
  kind: z.enum(kindNames as [string, ...string[]]),
  size: count.describe('bytes'),
  sha256: digest,
  pages: count.optional().describe('of what is printed'),
});

/** A packing list: what a run has put into a folder, and from what it was made. */
export const packingListSchema = z.strictObject({
  format: z.literal('benchleaf-packing-list-1'),
  set: digest.describe('of release, course, options and madeFrom: the same for every shard of a set'),
  release: text.describe('of Benchleaf'),
  course: z.strictObject({ name: text, title: text, club: text }),
  options: z
    .strictObject({
      paper: z.enum(['a4', 'letter']),
      print: z.enum(['plain', 'large']),
      units: z.enum(['mm', 'inch']).optional().describe('where they are not the kit’s own'),
      variant: text.optional().describe('where it is not the one that stands for the course'),
      versions: z.literal(2).optional(),
      only: z.array(text).describe('the kinds of document that were asked for'),
      named: z.array(text).optional().describe('the sheets, templates and cards that were asked for'),
      printer: z.strictObject({ x: z.number(), y: z.number() }).optional(),
      date: text.optional().describe('written into the files, where SOURCE_DATE_EPOCH tells one'),
    })
    .describe('what was asked for'),
  madeFrom: z.array(input).max(200),
  browser: text.optional().describe('that printed; none where nothing was printed'),
  shard: z
    .strictObject({
      number: z.number().int().min(1).max(MOST_SHARDS),
      of: z.number().int().min(1).max(MOST_SHARDS),
    })
    .refine(({ number, of }) => number <= of, 'expected a number that is no larger than how many there are'),
  documents: z.array(document).max(200_000),
  seal: digest.describe('of all the rest: it shows a slip of the hand, and is no signature'),
});

export type PackingList = z.output<typeof packingListSchema>;
export type PackedDocument = PackingList['documents'][number];

/** The JSON Schema of a packing list, for programs that read one. */
export function packingListJsonSchema(): object {
  return z.toJSONSchema(packingListSchema);
}
