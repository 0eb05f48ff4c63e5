import type { Kit } from './schema.js';

/** What a kit answers when a calculation asks for a value that was not typed. */
const answers: Readonly<Record<string, Readonly<Record<string, (kit: Kit) => unknown>>>> = {
  dividing: {
    ratio: (kit) => kit.heads[0]?.ratio,
    circles: (kit) => kit.heads[0] && [...new Set(kit.heads[0].plates.flat())],
  },
  setup: {
    slideTravel: (kit) => kit.slide?.travel,
    // A dial that reads diameter takes off half of what it shows.
    dialPerDivision: (kit) =>
      kit.slide && kit.slide.dialPerDivision / (kit.slide.dialReads === 'diameter' ? 2 : 1),
    cutterDiameter: (kit) => kit.cutters[0]?.diameter,
  },
};

/**
 * The values a kit gives to a calculation, by the first part of its name; the first dividing head and the first
 * cutter in the kit are the ones used. Values typed by hand win over these.
 *
 * @param keys what the calculation is given
 */
export function givensFromKit(
  kit: Kit,
  calculation: string,
  keys: readonly string[],
): Record<string, unknown> {
  const area = answers[calculation.split('.')[0] ?? ''] ?? {};
  const values = keys.map((key) => [key, Object.hasOwn(area, key) ? area[key]?.(kit) : undefined] as const);
  return Object.fromEntries(values.filter(([, value]) => value !== undefined));
}
