interface TaperedArm {
  readonly armWidthAtRim: number;
  readonly armWidthAtHub: number;
  readonly rimRadius: number;
  readonly hubRadius: number;
}

/**
 * Diameter of a peg that touches a rule along an arm's side, mm, by lengths alone: twice the height of the triangle
 * from the peg's middle over the side, its area by Heron's rule.
 */
export function pegByHeron(arm: TaperedArm, pegRadius: number): number {
  const [rim, hub] = [arm.armWidthAtRim / 2, arm.armWidthAtHub / 2];
  const rimAlong = Math.sqrt(arm.rimRadius ** 2 - rim ** 2);
  const hubAlong = Math.sqrt(arm.hubRadius ** 2 - hub ** 2);
  const side = Math.hypot(rimAlong - hubAlong, rim - hub);
  return (
    (4 * heron(Math.hypot(rimAlong - pegRadius, rim), Math.hypot(hubAlong - pegRadius, hub), side)) / side
  );
}

/** Heron's rule with the sides in order of size, so that a flat triangle keeps its figures. */
function heron(...sides: [number, number, number]): number {
  const [a = 0, b = 0, c = 0] = sides.toSorted((one, other) => other - one);
  const product = (a + (b + c)) * (c - (a - b)) * (c + (a - b)) * (a + (b - c));
  return Math.sqrt(Math.max(0, product)) / 4;
}
