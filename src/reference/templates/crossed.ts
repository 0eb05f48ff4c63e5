import { InputError } from '../../diagnostics/errors.js';
import type { Path } from '../../geometry/curves/path.js';
import type { Desk, Worked } from '../desk.js';
import type { Figure } from '../sheet.js';
import type { TemplateJob } from './template.js';
import { found, LARGEST, wheelOf } from './wheel.js';

/** Arms, where the course does not say how many. */
const ARMS = 5;

/** Sizes that go by the rule where the course does not name them, in the order of the sheet. */
const SIZES = {
  rimInsideDiameter: 'Rim, inside diameter',
  hubDiameter: 'Hub, diameter',
  armWidthAtRim: 'Arm, width at the rim',
  armWidthAtHub: 'Arm, width at the hub',
  filletRadius: 'Corners, radius',
} as const;

type SizeName = keyof typeof SIZES;

/** Finer than this nobody saws by paper, mm. */
const SMALLEST = { rim: 4, hub: 1, arm: 0.2 } as const;

/** One size of a crossing, and whether it was named or goes by the rule. */
export interface CrossingSize {
  readonly words: string;
  readonly value: number;
  readonly cell: Figure | string;
  readonly named: boolean;
}

/** A wheel worked out to be crossed out. */
export interface Crossed {
  readonly wheel: Worked;
  readonly layout: Worked;
  readonly arms: number;
  readonly sizes: readonly CrossingSize[];
  /** As the drawings and the calculation are given them; mm. */
  readonly given: Readonly<Record<SizeName, number>> & { readonly arms: number };
  readonly windows: readonly Path[];
}

/**
 * The crossing of a job's wheel: what the course names, and the rest by the rule of the trade.
 *
 * @returns in words why there is none, where its arms or rounds leave no windows
 * @throws {InputError} a size that the course names and no wheel can have
 */
export function crossedOut(desk: Desk, job: TemplateJob): Crossed | { readonly closed: string } {
  const wheel = wheelOf(desk, job);
  const named = job.crossing ?? {};
  if (found(wheel, 'outsideDiameter') > LARGEST)
    return { closed: `it is over ${LARGEST} mm, more than a template can be` };
  try {
    const rule = desk.work('crossing.proportions', {
      rootDiameter: found(wheel, 'rootDiameter'),
      depthOfCut: found(wheel, 'depthOfCut'),
      ...(job.arbor === undefined ? {} : { arbor: job.arbor }),
    });
    const sizes = (Object.keys(SIZES) as SizeName[]).map((key): CrossingSize => {
      const own = named[key];
      return {
        words: SIZES[key],
        value: own ?? found(rule, key),
        cell: own === undefined ? rule.length(key) : rule.lengthOf(own),
        named: own !== undefined,
      };
    });
    const arms = named.arms ?? ARMS;
    const values = Object.fromEntries(
      (Object.keys(SIZES) as SizeName[]).map((key, at) => [key, sizes[at]?.value ?? 0]),
    ) as Record<SizeName, number>;
    const given = { ...values, arms };
    const layout = desk.work('crossing.layout', {
      ...given,
      outsideDiameter: found(wheel, 'outsideDiameter'),
    });
    if (layout.found.possible !== true) return { closed: String(layout.found.reason) };
    if (
      given.rimInsideDiameter < SMALLEST.rim ||
      given.hubDiameter < SMALLEST.hub ||
      given.armWidthAtRim < SMALLEST.arm
    )
      return { closed: 'it is too small to be sawn by a template' };
    if (job.hole !== undefined && job.hole >= given.hubDiameter)
      throw new InputError('hole', job.hole, `less than the hub, ${Number(given.hubDiameter.toFixed(2))} mm`);
    return { wheel, layout, arms, sizes, given, windows: layout.found.windows as readonly Path[] };
  } catch (error) {
    // A small wheel is not crossed out; but what the course itself asks for is told where it cannot be.
    if (!(error instanceof InputError) || job.crossing !== undefined || error.key === 'hole') throw error;
    return { closed: 'the wheel is too small to be crossed out by the rule' };
  }
}
