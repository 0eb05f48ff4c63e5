import { z } from 'zod';
import { type Crossing, windowsOf } from '../../../geometry/finishing/crossing.js';
import { count, length } from '../../given.js';

/** How a wheel is crossed out, as figures are given it. */
export const crossingShape = {
  arms: count(3, 12),
  rimInsideDiameter: length(4, 500),
  hubDiameter: length(1, 300),
  armWidthAtRim: length(0.2, 100),
  armWidthAtHub: length(0.2, 100),
  filletRadius: length(0, 50),
};

export type CrossingGiven = z.output<z.ZodObject<typeof crossingShape>>;

export const crossingOf = (g: CrossingGiven): Crossing => ({
  arms: g.arms,
  rimRadius: g.rimInsideDiameter / 2,
  hubRadius: g.hubDiameter / 2,
  widthAtRim: g.armWidthAtRim,
  widthAtHub: g.armWidthAtHub,
  filletRadius: g.filletRadius,
});

/** Whether there is a window to draw. */
export const isOpen = (g: CrossingGiven): boolean =>
  g.hubDiameter < g.rimInsideDiameter &&
  g.armWidthAtHub < g.hubDiameter &&
  g.armWidthAtRim < g.rimInsideDiameter &&
  'windows' in windowsOf(crossingOf(g));

/** What is asked for where there is none. */
export const OPEN = { path: ['armWidthAtHub'], message: 'arms and fillets that leave windows open' };
