import { z } from 'zod';
import { wheelFormNames } from '../calculations/wheels/tooth-forms.js';
import { printableName } from '../reading/glyphs.js';
import { parseLength } from '../units/length.js';

/** A length in a kit: a number of mm, or text with a unit such as `1/8 in`; more than 0, at most 10 m. */
const length = z
  .union([z.number(), z.string()])
  .transform((value) => (typeof value === 'number' ? value : parseLength(value)))
  .refine((mm) => mm !== undefined && mm > 0 && mm <= 10_000, {
    message: 'expected a length above 0 and up to 10 m, such as 0.02, 0.02 mm or 1/8 in',
  })
  .transform((mm) => mm as number);

const count = (least: number, most: number) => z.number().int().min(least).max(most);
const circle = z
  .array(count(2, 1000))
  .min(1)
  .max(60)
  .refine((holes) => new Set(holes).size === holes.length, { message: 'expected each circle once' });
const plates = z.array(circle).min(1).max(12);

/** One way to divide: a worm of a ratio, the plates that go on it, and gears for differential indexing. */
const head = z.strictObject({
  name: printableName,
  ratio: count(1, 1000),
  plates,
  gears: z.array(count(10, 200)).min(2).max(60).optional(),
});

/** A screw: its lead in mm, or its threads per inch. */
const screw = z.union([
  z.strictObject({ lead: length }),
  z.strictObject({ tpi: z.number().min(1).max(200) }),
]);

/** The workshop's equipment. Everything but the name and units may be left out. */
export const kitSchema = z.strictObject({
  kit: printableName,
  units: z.enum(['mm', 'inch']),
  heads: z.array(head).max(20).default([]),
  directPlates: z
    .array(z.strictObject({ name: printableName, notches: circle }))
    .max(20)
    .default([]),
  rotaryTables: z
    .array(z.strictObject({ name: printableName, ratio: count(1, 1000), plates: plates.optional() }))
    .max(20)
    .default([]),
  cutters: z
    .array(
      z.strictObject({
        cuts: z.enum(['wheel', 'pinion', 'involute']),
        module: length,
        diameter: length,
        leaves: count(5, 100).optional(),
        depthForm: z.enum(wheelFormNames).optional(),
        number: count(1, 8).optional(),
      }),
    )
    .max(200)
    .default([]),
  spindleSpeeds: z.array(z.number().positive().max(100_000)).max(60).default([]),
  slide: z
    .strictObject({
      travel: length,
      dialPerDivision: length,
      /** What one division of the dial takes off: a radius, or twice as much on the diameter. */
      dialReads: z.enum(['radius', 'diameter']),
    })
    .optional(),
  lathe: z
    .strictObject({ centreHeight: length, leadScrew: screw, changeWheels: z.array(count(10, 200)).max(60) })
    .optional(),
  drills: z.array(length).max(300).default([]),
});

/** A checked kit; lengths mm. */
export type Kit = z.output<typeof kitSchema>;
