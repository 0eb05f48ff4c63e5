import type { SlipLine } from '../problem.js';

/**
 * What is said of an answer: right; the outcome of a slip; right but for one thing; wrong; or not to be read. What it
 * was read as is told where it might have been meant otherwise, or was in another unit.
 */
export type Verdict = (
  | { readonly kind: 'right' }
  | { readonly kind: 'slip'; readonly says: string; readonly gives: string }
  | { readonly kind: 'near'; readonly says: string }
  | { readonly kind: 'wrong' }
  | { readonly kind: 'unread'; readonly says: string }
) & { readonly read?: string };

export const RIGHT: Verdict = { kind: 'right' };
export const WRONG: Verdict = { kind: 'wrong' };
export const near = (says: string): Verdict => ({ kind: 'near', says });
export const unread = (says: string): Verdict => ({ kind: 'unread', says });
export const slipped = ({ says, gives }: SlipLine): Verdict => ({ kind: 'slip', says, gives });
