import { turned } from '../curves/point.js';
import { type Flanks, toothSide } from './flank.js';

/** String unwound where anvils over so many teeth touch, radians. */
const rollAt = ({ teeth, halfToothAtBase }: Flanks, spanned: number): number =>
  halfToothAtBase + ((spanned - 1) * Math.PI) / teeth;

/**
 * What a micrometer reads over several teeth, its anvils square across the middle of them, mm. A flank runs at right
 * angles to its string, that is along the radius to where the string leaves the base circle; so it is parallel to
 * the anvils, and touches, where that radius lies on the middle line. The reading is twice the height there.
 *
 * @param spanned teeth between the anvils, 1 or more
 */
export function spanOver(flanks: Flanks, spanned: number): number {
  const outermost = ((spanned - 1) * Math.PI) / flanks.teeth;
  return 2 * turned(toothSide(flanks, rollAt(flanks, spanned)), outermost).y;
}

/** Counts of teeth over which both anvils lie on the flanks, neither on the root nor past the tip; 2 at the least. */
export function spansThatServe(flanks: Flanks): { readonly least: number; readonly most: number } {
  const counts = (roll: number): number => 1 + (flanks.teeth * (roll - flanks.halfToothAtBase)) / Math.PI;
  return { least: Math.max(2, Math.ceil(counts(flanks.from))), most: Math.floor(counts(flanks.to)) };
}

/** Half as little as this beyond a half is still a half: angles in degrees are not exact in radians. */
const HAIR = 1e-9;

/**
 * How many teeth to span so that the anvils touch as near as may be to the pitch circle; 2 at the least. At a tie
 * the larger count, as the tables of base tangents have it.
 *
 * @param pressureAngle radians
 */
export function usualSpan(teeth: number, pressureAngle: number): number {
  return Math.max(2, Math.floor((teeth * pressureAngle) / Math.PI + 1 + HAIR));
}
