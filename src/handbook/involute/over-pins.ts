import { angleOfInvolute } from './involute-tables.js';

const RADIAN = 180 / Math.PI;

/** The pin of the printed tables, in modules. */
export const USUAL_PIN = 1.728;

/** What the handbook asks for: mm and degrees. */
export interface PinnedWheel {
  readonly teeth: number;
  readonly module: number;
  readonly pressureAngle: number;
  readonly pinDiameter: number;
}

/** Involute of the pressure angle at the pin's middle: inv α + D/d_b − π/2z. */
export function involuteAtPin({ teeth, module, pressureAngle, pinDiameter }: PinnedWheel): number {
  const angle = pressureAngle / RADIAN;
  const base = module * teeth * Math.cos(angle);
  return Math.tan(angle) - angle + pinDiameter / base - Math.PI / (2 * teeth);
}

/** Pressure angle at the pin's middle, degrees. */
export const angleAtPin = (wheel: PinnedWheel): number => angleOfInvolute(involuteAtPin(wheel));

/** Over two pins, mm: d_b/cos φ + D for an even count, and d_b/cos φ · cos(90°/z) + D for an odd one. */
export function measurementOverPins(wheel: PinnedWheel): number {
  const { teeth, module, pressureAngle, pinDiameter } = wheel;
  const across = (module * teeth * Math.cos(pressureAngle / RADIAN)) / Math.cos(angleAtPin(wheel) / RADIAN);
  return across * (teeth % 2 === 0 ? 1 : Math.cos(Math.PI / (2 * teeth))) + pinDiameter;
}
