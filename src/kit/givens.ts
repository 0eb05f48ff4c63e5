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
  const area = calculation.split('.')[0] ?? '';
  const known = answersOf(kit)[area] ?? {};
  return Object.fromEntries(keys.filter((key) => Object.hasOwn(known, key)).map((key) => [key, known[key]]));
}

const asked = new WeakMap<Kit, Readonly<Record<string, Readonly<Record<string, unknown>>>>>();

/** All that a kit answers, by area; each kit is asked once. */
function answersOf(kit: Kit) {
  const known = asked.get(kit);
  if (known) return known;
  const all = Object.fromEntries(
    Object.entries(answers).map(([area, ask]) => {
      const values = Object.entries(ask).map(([key, answer]) => [key, answer(kit)] as const);
      return [area, Object.fromEntries(values.filter(([, value]) => value !== undefined))];
    }),
  );
  asked.set(kit, all);
  return all;
}
