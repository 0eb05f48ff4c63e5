import type { Kit } from '../../kit/schema.js';
import type { Desk, Worked } from '../desk.js';
import type { CutJob } from './card.js';

/** The blank of a job, by its own convention. */
export const blankOf = ({ teeth, leaves, module, convention, depthForm }: CutJob, desk: Desk): Worked =>
  desk.work('wheel.blank', {
    teeth,
    module,
    convention,
    depthForm,
    ...(leaves === undefined ? {} : { leaves }),
  });

/** The wheel cutter of the job’s module; none where the kit has none, for another would spoil the wheel. */
export const wheelCutterFor = ({ module }: CutJob, { cutters }: Kit) =>
  cutters.find((one) => one.cuts === 'wheel' && Math.abs(one.module - module) < 1e-9);
