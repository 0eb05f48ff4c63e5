import type { Slip } from '../calculation.js';
import { RADIANS, toldApart } from '../slips.js';

const slips: Readonly<Record<string, Slip>> = {
  wholeStep: {
    of: 'chord',
    formula: 'D*sind(360/N)',
    says: 'You took the whole angle between arms. A chord goes by half of it.',
  },
  radius: {
    of: 'chord',
    formula: 'D/2*sind(180/N)',
    says: 'You used the radius: this rule takes the diameter.',
  },
  asRadius: { of: 'chord', formula: '2*D*sind(180/N)', says: 'You used the diameter as the radius.' },
  arc: { of: 'chord', formula: 'pi*D/N', says: 'That is along the arc. Dividers go straight across.' },
  radians: { of: 'chord', formula: 'D*sin(180/N)', says: RADIANS },
  wholeAngleAtRim: {
    of: 'halfAngleAtRim',
    formula: '2*asind(w_r/D)',
    says: 'That is the whole angle of the arm. Half of it lies to either side of the middle line.',
  },
  diameterForRadius: {
    of: 'halfAngleAtRim',
    formula: 'asind(w_r/(2*D))',
    says: 'You used the diameter as the radius.',
  },
  rimForHub: {
    of: 'halfAngleAtHub',
    formula: 'asind(w_h/D)',
    says: 'You used the rim. At the hub the arm takes up far more of the circle.',
  },
  wholeAngleAtHub: {
    of: 'halfAngleAtHub',
    formula: '2*asind(w_h/d)',
    says: 'That is the whole angle of the arm. Half of it lies to either side of the middle line.',
  },
  fullDiameter: {
    of: 'massRemovedPercent',
    formula: '100*S/(pi*D^2)',
    says: 'You used the diameter as the radius in the area of the disc.',
  },
  asMass: {
    of: 'inertiaRemovedPercent',
    formula: 'M',
    says: 'That is the mass. Metal far from the axis counts for more, and the rim is still there.',
  },
};

interface Given {
  readonly arms: number;
  readonly rimInsideDiameter: number;
  readonly hubDiameter: number;
  readonly armWidthAtRim: number;
  readonly armWidthAtHub: number;
}

/** Wrong ways to a crossing, those that these numbers can show. */
export const crossingSlips = (
  g: Given,
  found: { readonly areaRemoved: number | null; readonly massRemovedPercent: number | null },
): Record<string, Slip> =>
  toldApart(slips, found, {
    N: g.arms,
    D: g.rimInsideDiameter,
    d: g.hubDiameter,
    w_r: g.armWidthAtRim,
    w_h: g.armWidthAtHub,
    S: found.areaRemoved ?? 0,
    M: found.massRemovedPercent ?? 0,
  });
