import { reasons, type Standing, standingByLaw, standingOf } from './mesh.js';
import { leafFor, type PairGiven } from './pair.js';

export type Verdict = 'right' | 'too deep' | 'too shallow';

/** Depth is right within so many modules of pitch circles touching. */
const RIGHT_WITHIN = 0.05;

/** The pinion feels tight below so much of the shake it should have, and loose above so much. */
const [TIGHT, LOOSE] = [2 / 3, 4 / 3];

/** Centres at the very edge of what is right are right. */
export const DUST = 1e-9;

/** A pair and its measured centres, mm. */
export type DepthGiven = Omit<PairGiven, 'addendum'> & { readonly measuredCentres: number };

const asCut = (g: DepthGiven): PairGiven => ({ ...g, addendum: 'practical' });

/** Circular pitch less tooth less leaf, mm. */
export const shakeAtRight = (g: DepthGiven): number => {
  const pitch = Math.PI * g.module;
  return pitch - pitch / 2 - g.module * leafFor(g.leaves, 0).leafThickness;
};

/** What a gap between the pitch circles means; the allowance is common practice. */
export function verdictOn(gap: number, module: number): Verdict {
  if (Math.abs(gap) <= RIGHT_WITHIN * module + DUST) return 'right';
  return gap < 0 ? 'too deep' : 'too shallow';
}

function feelOf(shake: number, asItShouldBe: number): string {
  if (shake < DUST) return 'none: it binds';
  if (shake < TIGHT * asItShouldBe) return 'scarcely any';
  return shake > LOOSE * asItShouldBe ? 'a lot' : 'as it should be';
}

const noShake = (reason: string): Shake =>
  reason === reasons.apart ? { feel: 'out of mesh', reason } : { shake: 0, feel: 'none: it binds', reason };

/** The shake in mm and how it feels; no figure where the pair is out of mesh. */
export interface Shake {
  readonly shake?: number;
  readonly feel: string;
  readonly reason?: string;
}

function shakeIn(g: DepthGiven, stands: Standing): Shake {
  return 'shake' in stands
    ? { shake: stands.shake, feel: feelOf(stands.shake, shakeAtRight(g)) }
    : noShake(stands.reason);
}

/** By rolling the outlines. */
export const shakeOf = (g: DepthGiven): Shake => shakeIn(g, standingOf(asCut(g), g.measuredCentres));

/** Kept for the proofs of one working, which ask in turn. */
const byLaw = new WeakMap<object, Shake>();

/** By the law of gearing. */
export function shakeByLaw(g: DepthGiven): Shake {
  const known = byLaw.get(g) ?? shakeIn(g, standingByLaw(asCut(g), g.measuredCentres));
  byLaw.set(g, known);
  return known;
}

/** The verdict as a sentence of the working. */
export function depthInWords(verdict: Verdict): string {
  const rule = 'Right is within a twentieth of a module (common practice).';
  if (verdict === 'right') return `The pitch circles touch as nearly as they need to. ${rule}`;
  const other = verdict === 'too deep' ? 'overlap: open the centres by' : 'stand apart: close the centres by';
  return `The pair is ${verdict}. The pitch circles ${other} the gap. ${rule}`;
}
