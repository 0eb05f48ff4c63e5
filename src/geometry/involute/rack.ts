/** The tooth of a rack that cuts involute wheels, in modules; angle in radians. */
export interface Rack {
  readonly pressureAngle: number;
  /** Of the wheel: how far its teeth stand outside the pitch circle. */
  readonly addendum: number;
  /** Of the wheel: how deep the rack cuts inside the pitch circle. */
  readonly dedendum: number;
  /** Where the middle of the rounding stands: below the pitch line, and beside the middle of the rack’s tooth. */
  readonly rounding: { readonly radius: number; readonly depth: number; readonly beside: number };
  /** How far below the pitch line the straight flank ends and the rounding begins. */
  readonly straightTo: number;
}

const ADDENDUM = 1;
const DEDENDUM = 1.25;
const TIP_RADIUS = 0.38;

/**
 * The basic rack of ISO 53, profile A: addendum 1, dedendum 1.25, tip rounded at 0.38 modules. The standard is drawn
 * for 20°; at other angles the rounding is as much smaller as keeps the flank straight for one module below the
 * pitch line, and the rack's tooth whole at its tip.
 *
 * @param pressureAngle radians; 10° to 30° give a tooth that can be drawn
 */
export function basicRack(pressureAngle: number): Rack {
  const [sin, cos, tan] = [Math.sin(pressureAngle), Math.cos(pressureAngle), Math.tan(pressureAngle)];
  const halfTip = Math.PI / 4 - DEDENDUM * tan;
  const radius = Math.min(TIP_RADIUS, (DEDENDUM - ADDENDUM) / (1 - sin), (halfTip * cos) / (1 - sin));
  const depth = DEDENDUM - radius;
  return {
    pressureAngle,
    addendum: ADDENDUM,
    dedendum: DEDENDUM,
    rounding: { radius, depth, beside: Math.PI / 4 - depth * tan - radius / cos },
    straightTo: depth + radius * sin,
  };
}
