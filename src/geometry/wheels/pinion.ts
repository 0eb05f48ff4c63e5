/** Pinion proportions in modules, by leaf count. */
export interface LeafProportions {
  readonly addendum: number;
  readonly dedendum: number;
  readonly leafThickness: number;
  readonly tipRadius: number;
}

/** Every size needed to turn a pinion blank and cut its leaves, mm. */
export interface PinionSizes {
  readonly pitchDiameter: number;
  readonly addendum: number;
  readonly outsideDiameter: number;
  readonly leafThickness: number;
  readonly tipRadius: number;
  readonly depthOfCut: number;
  readonly rootDiameter: number;
}

/** Scales a leaf's proportions to a pinion of so many leaves. */
export function pinionSizes(leaves: number, module: number, leaf: LeafProportions): PinionSizes {
  const pitchRadius = (module * leaves) / 2;
  const tip = pitchRadius + module * leaf.addendum;
  const root = pitchRadius - module * leaf.dedendum;
  return {
    pitchDiameter: 2 * pitchRadius,
    addendum: tip - pitchRadius,
    outsideDiameter: 2 * tip,
    leafThickness: module * leaf.leafThickness,
    tipRadius: module * leaf.tipRadius,
    depthOfCut: tip - root,
    rootDiameter: 2 * root,
  };
}
