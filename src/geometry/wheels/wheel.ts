/** What a wheel's teeth are made of, each in modules. */
export interface ToothProportions {
  readonly addendum: number;
  readonly dedendum: number;
  readonly toothThickness: number;
  readonly flankRadius: number;
}

/** Every size needed to turn a wheel blank and cut its teeth; lengths mm, angle degrees. */
export interface WheelSizes {
  readonly pitchDiameter: number;
  readonly addendum: number;
  readonly dedendum: number;
  readonly depthOfCut: number;
  readonly outsideDiameter: number;
  readonly rootDiameter: number;
  readonly toothThickness: number;
  readonly flankRadius: number;
  readonly anglePerTooth: number;
}

/** Scales a tooth's proportions to a wheel: tips and roots stand on circles about the pitch circle. */
export function wheelSizes(teeth: number, module: number, tooth: ToothProportions): WheelSizes {
  const pitchRadius = (module * teeth) / 2;
  const addendum = module * tooth.addendum;
  const dedendum = module * tooth.dedendum;
  return {
    pitchDiameter: 2 * pitchRadius,
    addendum,
    dedendum,
    depthOfCut: addendum + dedendum,
    outsideDiameter: 2 * (pitchRadius + addendum),
    rootDiameter: 2 * (pitchRadius - dedendum),
    toothThickness: module * tooth.toothThickness,
    flankRadius: module * tooth.flankRadius,
    anglePerTooth: 360 / teeth,
  };
}

/** Distance between the arbors when the pitch circles touch, in the unit of the module. */
export function touchingPitchCircles(module: number, teeth: number, leaves: number): number {
  return (module * teeth) / 2 + (module * leaves) / 2;
}
