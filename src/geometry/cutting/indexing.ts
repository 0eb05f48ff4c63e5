/** How the work was turned from cut to cut. Angles in degrees, anticlockwise from the first cut. */
export interface Indexing {
  /** Teeth that were wanted. */
  readonly teeth: number;
  /** Cuts made. */
  readonly steps: number;
  /** Arc seconds by which every move was too long. */
  readonly stepError: number;
  /** The move that went wrong besides, counted from 1; and by how many arc seconds it was too long. */
  readonly slip?: { readonly at: number; readonly by: number; readonly putBack: boolean } | undefined;
}

/** The angle of every cut; those of a second time round go on past 360. */
export function cutAngles({ teeth, steps, stepError, slip }: Indexing): number[] {
  const step = 360 / teeth + stepError / 3600;
  return Array.from({ length: steps }, (_, cut) => {
    const slipped = slip && (slip.putBack ? cut === slip.at : cut >= slip.at);
    return slipped ? cut * step + slip.by / 3600 : cut * step;
  });
}

/** A worm or plate that runs out: every cut early and late in turn, once for each turn of the crank. */
export const withRipple = (cuts: readonly number[], ratio: number, arcSeconds: number): number[] =>
  cuts.map((angle) => angle + (arcSeconds / 3600) * Math.sin((ratio * angle * Math.PI) / 180));

/** Each move rounded to so many arc seconds before it is added to the last. */
export function roundedSteps(teeth: number, toArcSeconds: number): number[] {
  const step = (Math.round((360 * 3600) / teeth / toArcSeconds) * toArcSeconds) / 3600;
  return Array.from({ length: teeth }, (_, cut) => cut * step);
}

/** Every so many cuts the slack is taken up from the other side, and the work stands short by it. */
export const withBacklash = (cuts: readonly number[], every: number, arcSeconds: number): number[] =>
  cuts.map((angle, cut) => (cut % every === every - 1 ? angle - arcSeconds / 3600 : angle));

/** Closer than this part of a tooth's pitch, two cuts make one space. */
const SAME = 1 / 128;

/** The spaces that stand round the wheel: from the first cut, degrees from 0 to 360, cuts on one another as one. */
export function spacesRound(cuts: readonly number[], teeth: number): number[] {
  const least = (SAME * 360) / teeth;
  const rising = cuts.map((angle) => ((angle % 360) + 360) % 360).sort((a, b) => a - b);
  const kept: number[] = [];
  for (const angle of rising) {
    const last = kept.at(-1);
    if (last === undefined || angle - last >= least) kept.push(angle);
  }
  const [first = 0] = kept;
  if (kept.length > 1 && first + 360 - (kept.at(-1) ?? 0) < least) kept.pop();
  return kept;
}
