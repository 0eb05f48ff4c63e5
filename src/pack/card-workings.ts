import type { FullWork } from '../calculations/work.js';
import { InputError } from '../diagnostics/errors.js';
import { givensFromKit } from '../kit/givens.js';
import type { Kit } from '../kit/schema.js';
import type { WorkingDeclaration } from '../problems/schema.js';
import { runWorkings, type Workings } from '../problems/workings.js';
import type { Job } from './job.js';

/** What a shop card prints, worked by both routes. */
export interface CardWorkings {
  readonly all: Workings;
  /** The cutter's diameter, mm; undefined where the kit has no cutter. */
  readonly cutterDiameter: number | undefined;
  readonly thickness: number;
  run(name: 'wheel' | 'travel' | 'crank' | 'speed' | 'dial'): FullWork | undefined;
}

/**
 * Works all that a card needs and the kit allows.
 *
 * @throws {InputError} a value that a calculation refuses; {DisagreementError} two routes that differ
 */
export function cardWorkings(job: Job, kit: Kit): CardWorkings {
  const { teeth, leaves, module, convention, depthForm, clearance, cuttingSpeed } = job;
  const thickness = job.blanks * job.blankThickness + job.backing;
  const cutterDiameter = cutterFor(job, kit)?.diameter;
  const works: Record<string, WorkingDeclaration> = {
    wheel: {
      calculation: 'wheel.blank',
      teeth,
      module,
      convention,
      depthForm,
      ...(leaves === undefined ? {} : { leaves }),
    },
    ...(cutterDiameter === undefined
      ? {}
      : {
          travel: {
            calculation: 'setup.overTravel',
            cutterDiameter,
            depth: 'wheel.depthOfCut',
            thickness,
            clearance,
          },
          speed: { calculation: 'cut.spindleSpeed', cuttingSpeed, diameter: cutterDiameter },
        }),
    ...(kit.heads.length === 0 ? {} : { crank: { calculation: 'dividing.simple', divisions: teeth } }),
    ...('dialPerDivision' in givensFromKit(kit, 'setup.passes', ['dialPerDivision'])
      ? {
          dial: {
            calculation: 'setup.passes',
            depth: 'wheel.depthOfCut',
            largestPass: 'wheel.depthOfCut',
          },
        }
      : {}),
  };
  const all = runWorkings(works, {}, kit);
  const travel = Number(all.names.find('travel.travel') ?? 0);
  const most = kit.slide?.travel ?? Number.POSITIVE_INFINITY;
  if (travel > most)
    throw new InputError(
      'blanks',
      job.blanks,
      `a stack that needs no more travel than the slide has, ${most} mm`,
    );
  return {
    all,
    cutterDiameter,
    thickness,
    run: (name) => {
      const run = all.runs.get(name);
      return run?.kind === 'calculation' ? run.full : undefined;
    },
  };
}

/** The wheel cutter of the job's module; none where the kit has none, for another would spoil the wheel. */
function cutterFor({ module }: Job, { cutters }: Kit) {
  return cutters.find((one) => one.cuts === 'wheel' && Math.abs(one.module - module) < 1e-9);
}
