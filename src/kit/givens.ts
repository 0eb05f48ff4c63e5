import type { Kit } from './schema.js';

/** A part of a kit, and what it answers. */
interface Answer {
  readonly part: keyof Kit;
  readonly ask: (kit: Kit) => unknown;
}

const from = (part: keyof Kit, ask: (kit: Kit) => unknown): Answer => ({ part, ask });

/** What a kit answers when a calculation asks for a value that was not typed. */
const answers: Readonly<Record<string, Readonly<Record<string, Answer>>>> = {
  dividing: {
    ratio: from('heads', (kit) => kit.heads[0]?.ratio),
    circles: from('heads', (kit) => kit.heads[0] && [...new Set(kit.heads[0].plates.flat())]),
    plates: from('heads', (kit) => kit.heads[0]?.plates),
    gears: from('heads', (kit) => kit.heads[0]?.gears),
    notches: from('directPlates', (kit) => some(kit.directPlates.flatMap((plate) => plate.notches))),
  },
  setup: {
    slideTravel: from('slide', (kit) => kit.slide?.travel),
    // A dial that reads diameter takes off half of what it shows.
    dialPerDivision: from(
      'slide',
      ({ slide }) => slide && slide.dialPerDivision / (slide.dialReads === 'diameter' ? 2 : 1),
    ),
    cutterDiameter: from('cutters', (kit) => kit.cutters[0]?.diameter),
    centreHeight: from('lathe', (kit) => kit.lathe?.centreHeight),
  },
  thread: { drills: from('drills', (kit) => some(kit.drills)) },
  screwcut: {
    leadPitch: from('lathe', ({ lathe }) =>
      lathe && 'lead' in lathe.leadScrew ? lathe.leadScrew.lead : undefined,
    ),
    leadTpi: from('lathe', ({ lathe }) =>
      lathe && 'tpi' in lathe.leadScrew ? lathe.leadScrew.tpi : undefined,
    ),
    wheels: from('lathe', (kit) => some(kit.lathe?.changeWheels)),
  },
};

/** What a kit does not answer, though it does for others of the area: a notched plate sits on the spindle, without a worm. */
const SILENT: Readonly<Record<string, readonly string[]>> = { 'dividing.plateError': ['ratio'] };

const isSilent = (calculation: string, key: string): boolean => SILENT[calculation]?.includes(key) ?? false;

const areaOf = (calculation: string): string => calculation.split('.')[0] ?? '';

/** The part of a kit that answers a value of a calculation; none where no kit does. */
export function kitPartOf(calculation: string, key: string): string | undefined {
  return isSilent(calculation, key) ? undefined : answers[areaOf(calculation)]?.[key]?.part;
}

const some = <T>(list: readonly T[] | undefined) => (list && list.length > 0 ? list : undefined);

/** Two ways to say one thing: what is typed one way silences the kit's other. */
const RIVALS: Readonly<Record<string, string>> = { leadPitch: 'leadTpi', leadTpi: 'leadPitch' };

/**
 * The values typed by hand, and from a kit what they leave open; the first dividing head and the first cutter in the
 * kit are the ones used.
 *
 * @param calculation its name; the first part says which of the kit's answers apply
 * @param keys what the calculation is given
 */
export function givensFromKit(
  kit: Kit,
  calculation: string,
  keys: readonly string[],
  typed: Readonly<Record<string, unknown>> = {},
): Record<string, unknown> {
  const known = answersOf(kit)[areaOf(calculation)] ?? {};
  const open = keys.filter(
    (key) =>
      Object.hasOwn(known, key) && !isSilent(calculation, key) && typed[RIVALS[key] ?? key] === undefined,
  );
  return { ...Object.fromEntries(open.map((key) => [key, known[key]])), ...typed };
}

const asked = new WeakMap<Kit, Readonly<Record<string, Readonly<Record<string, unknown>>>>>();

/** All that a kit answers, by area; each kit is asked once. */
function answersOf(kit: Kit) {
  const known = asked.get(kit);
  if (known) return known;
  const all = Object.fromEntries(
    Object.entries(answers).map(([area, ask]) => {
      const values = Object.entries(ask).map(([key, answer]) => [key, answer.ask(kit)] as const);
      return [area, Object.fromEntries(values.filter(([, value]) => value !== undefined))];
    }),
  );
  asked.set(kit, all);
  return all;
}
