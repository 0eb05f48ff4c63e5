import type { AnyFigure } from '../../figure.js';
import { motionWork } from './motion-work.js';
import { pendulum } from './pendulum.js';
import { trainPath } from './train-path.js';
import { trainPlan } from './train-plan.js';
import { trainSection } from './train-section.js';

/** Figures of trains and time. */
export const trainsFigures: readonly AnyFigure[] = [trainPlan, trainSection, trainPath, motionWork, pendulum];
