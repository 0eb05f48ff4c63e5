/** What a wheel is crossed out to where nothing else is wanted; mm. */
export interface CrossingProportions {
  readonly rimInsideDiameter: number;
  readonly hubDiameter: number;
  readonly armWidthAtRim: number;
  readonly armWidthAtHub: number;
  readonly filletRadius: number;
}

/** The hub: so many arbors, or a share of the rim's inside where the arbor is not known. */
const ARBORS = 3.5;
const HUB = 1 / 3;
/** An arm at the hub, and the round in a corner, as shares of the rim's width. */
const AT_HUB = 1.5;
const FILLET = 0.4;

/** A rim as wide as the teeth are deep, arms as wide as that at the rim and half as wide again at the hub. */
export function crossingProportions(
  rootDiameter: number,
  depth: number,
  arbor: number | undefined,
): CrossingProportions {
  const rimInsideDiameter = 2 * (rootDiameter / 2 - depth);
  return {
    rimInsideDiameter,
    hubDiameter: arbor === undefined ? HUB * rimInsideDiameter : ARBORS * arbor,
    armWidthAtRim: depth,
    armWidthAtHub: AT_HUB * depth,
    filletRadius: FILLET * depth,
  };
}
