import { z } from 'zod';
import { count, length, numbers, toothModule } from '../../given.js';

/** What a drawing of a train is given: one module throughout, as a class cuts it. */
export const trainGiven = z
  .strictObject({
    wheels: numbers(z.number().int().min(6).max(400), 4, 'teeth of the wheels, each 6 to 400'),
    pinions: numbers(z.number().int().min(4).max(400), 4, 'leaves of the pinions, each 4 to 400'),
    module: toothModule().default(0.8),
    escapeTeeth: count(4, 400).optional(),
    escapeDiameter: length(2, 300).optional(),
  })
  .refine((g) => g.pinions.length === g.wheels.length, {
    path: ['pinions'],
    message: 'as many pinions as there are wheels',
  })
  .refine((g) => (g.escapeTeeth === undefined) === (g.escapeDiameter === undefined), {
    path: ['escapeDiameter'],
    message: 'the teeth and the diameter of the escape wheel, or neither',
  });

export type TrainGiven = z.output<typeof trainGiven>;

/** A wheel or pinion: its name with its count, and its radius on the drawing. */
export interface Part {
  readonly name: string;
  readonly radius: number;
}

/** An arbor across the drawing, with what it carries. */
export interface Arbor {
  readonly x: number;
  readonly pinion?: Part;
  readonly wheel?: Part;
}

/** The arbors in a row, pitch circles touching, at a scale; the first at 0. */
export function arborsInARow(
  { wheels, pinions, module, escapeTeeth, escapeDiameter }: TrainGiven,
  scale: number,
): Arbor[] {
  const radius = (teeth: number): number => (module * teeth * scale) / 2;
  const wheelParts = wheels.map((teeth): Part => ({ name: `wheel ${teeth}`, radius: radius(teeth) }));
  const pinionParts = pinions.map((leaves): Part => ({ name: `pinion ${leaves}`, radius: radius(leaves) }));
  if (escapeTeeth !== undefined && escapeDiameter !== undefined)
    wheelParts.push({ name: `escape wheel ${escapeTeeth}`, radius: (escapeDiameter * scale) / 2 });
  let x = 0;
  return [undefined, ...pinionParts].map((pinion, i) => {
    const wheel = wheelParts[i];
    x += (wheelParts[i - 1]?.radius ?? 0) * (pinion ? 1 : 0) + (pinion?.radius ?? 0);
    return { x, ...(pinion && { pinion }), ...(wheel && { wheel }) };
  });
}

/** How far a row of arbors with their wheels reaches to the left and to the right. */
export function reachOf(arbors: readonly Arbor[]): readonly [number, number] {
  const ends = arbors.flatMap(({ x, wheel, pinion }) =>
    [wheel, pinion].flatMap((part) => (part ? [x - part.radius, x + part.radius] : [])),
  );
  return [Math.min(...ends), Math.max(...ends)];
}

/** `a train of 60 and 56 teeth driving 8 and 7 leaves, with an escape wheel of 30`. */
export function trainInWords({ wheels, pinions, escapeTeeth }: TrainGiven): string {
  const pairs = wheels.map((teeth, i) => `${teeth} driving ${pinions[i]}`).join(', then ');
  return escapeTeeth === undefined ? pairs : `${pairs}, which carries the escape wheel of ${escapeTeeth}`;
}
