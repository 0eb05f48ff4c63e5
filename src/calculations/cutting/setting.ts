import { InputError } from '../../diagnostics/errors.js';
import { type Cutting, expectedFaults } from '../../handbook/cutting/faults.js';
import { expectedWheel, intervalsAt, type Setting, wallOf } from '../../handbook/cutting/wheel.js';
import type { Given } from './given.js';
import { refuseLargePinion, sizesFor } from './space.js';

const stepOf = (g: Given): number => 360 / g.teeth + g.stepErrorArcSeconds / 3600;

/** What the handbook is told of a wheel that is to be cut. */
export function settingFor(g: Given): Setting {
  const wanted = sizesFor(g);
  const step = stepOf(g);
  const at = g.slipAt ?? Number.POSITIVE_INFINITY;
  const slip = (g.slipArcSeconds ?? 0) / 3600;
  return {
    cutter: sizesFor(g, g.cutterModule ?? g.module),
    cuts: Array.from({ length: g.steps ?? g.teeth }, (_, cut) => {
      const slipped = g.slipPutBack === 'yes' ? cut === at : cut >= at;
      return slipped ? cut * step + slip : cut * step;
    }),
    rootRadius: wanted.rootRadius - g.depthError,
    offset: g.offset,
    blankRadius: (g.blankDiameter ?? 2 * wanted.rimRadius) / 2,
    eccentricity: g.eccentricity,
  };
}

/** What the handbook expects to be measured. */
export const expectedFor = (g: Given) => expectedWheel(settingFor(g), g.teeth, (g.module * g.teeth) / 2);

/** And which faults must be named. */
export function faultsFor(g: Given) {
  const wanted = sizesFor(g);
  const rim = {
    ...settingFor({ ...g, depthError: 0, offset: 0, eccentricity: 0, steps: 1 }),
    cutter: wanted,
  };
  const [from, to] = intervalsAt(rim, wallOf(rim), wanted.rimRadius, 0)[0] ?? [0, 0];
  const cutting: Cutting = {
    teeth: g.teeth,
    module: g.module,
    steps: g.steps ?? g.teeth,
    step: stepOf(g),
    slip:
      g.slipAt === undefined
        ? undefined
        : { at: g.slipAt, by: (g.slipArcSeconds ?? 0) / 3600, putBack: g.slipPutBack === 'yes' },
    offset: g.offset,
    depthError: g.depthError,
    rimSpace: (((to - from) * Math.PI) / 180) * wanted.rimRadius,
    blankRadius: (g.blankDiameter ?? 2 * wanted.rimRadius) / 2,
  };
  return expectedFaults(cutting, expectedFor(g));
}

/**
 * Refuses what would make no wheel to measure.
 *
 * @throws {InputError} naming the value to change
 */
export function refuse(g: Given): void {
  refuseLargePinion(g);
  const pitch = (360 * 3600) / g.teeth;
  const steps = g.steps ?? g.teeth;
  const most = (key: keyof Given, value: number, limit: number, words: string) => {
    if (Math.abs(value) > limit) throw new InputError(key, value, `${words}, ${round(limit)} at most`);
  };
  most(
    'stepErrorArcSeconds',
    g.stepErrorArcSeconds,
    0.4 * pitch,
    'less than two fifths of a tooth’s pitch either way',
  );
  if ((steps - 1) * stepOf(g) > 450)
    throw new InputError(
      'steps',
      steps,
      `moves that go round once and a quarter at most, ${Math.floor(450 / stepOf(g)) + 1} cuts`,
    );
  if ((g.slipAt === undefined) !== (g.slipArcSeconds === undefined))
    throw new InputError(
      g.slipAt === undefined ? 'slipAt' : 'slipArcSeconds',
      undefined,
      'both slipAt and slipArcSeconds, or neither',
    );
  if (g.slipAt === undefined && g.slipPutBack === 'yes')
    throw new InputError(
      'slipPutBack',
      g.slipPutBack,
      'no where there is no slip, or slipAt and slipArcSeconds',
    );
  if (g.slipAt !== undefined && g.slipAt > steps - 1)
    throw new InputError('slipAt', g.slipAt, `one of the ${steps - 1} moves between ${steps} cuts`);
  most('slipArcSeconds', g.slipArcSeconds ?? 0, pitch, 'a slip of one tooth’s pitch either way');
  most('offset', g.offset, g.module / 2, 'half a module either way');
  most('depthError', g.depthError, g.module / 2, 'half a module either way');
  const cutter = g.cutterModule ?? g.module;
  if (Math.abs(cutter / g.module - 1) > 0.2 + 1e-12)
    throw new InputError(
      'cutterModule',
      cutter,
      `a module within a fifth of the wheel’s, ${round(0.8 * g.module)} to ${round(1.2 * g.module)}`,
    );
  refuseBlank(g);
  const { gaps, spaceWidth } = expectedFor(g);
  const along = (g.module * g.teeth * Math.PI) / 360;
  if (stepOf(g) * along < spaceWidth + 0.05 * g.module)
    throw new InputError(
      'stepErrorArcSeconds',
      g.stepErrorArcSeconds,
      'moves that leave a tooth between one space and the next',
    );
  const clear = gaps.map((gap, i) => Math.min(gap, gaps.at(i - 1) ?? gap));
  if (Math.max(...clear) * along < spaceWidth + 0.05 * g.module)
    throw new InputError(
      'slipArcSeconds',
      g.slipArcSeconds,
      'moves that leave at least one space clear of the others',
    );
}

function refuseBlank(g: Given): void {
  const { rimRadius } = sizesFor(g);
  const radius = (g.blankDiameter ?? 2 * rimRadius) / 2;
  if (Math.abs(radius - rimRadius) > g.module / 2)
    throw new InputError(
      'blankDiameter',
      2 * radius,
      `within a module of the right one, ${round(2 * rimRadius)} mm`,
    );
  const spare = radius - (g.module * g.teeth) / 2 - 0.3 * g.module;
  if (g.eccentricity > spare)
    throw new InputError(
      'eccentricity',
      g.eccentricity,
      `a blank that reaches past the pitch circle all round, ${round(spare)} mm at most`,
    );
}

const round = (value: number): string => String(Number(value.toPrecision(6)));
