import type { Learner } from './learners.js';

const order = new Intl.Collator('en-GB', { numeric: true, sensitivity: 'base' });

/** A class in the order they sit: seat 2 before seat 10, A9 before B1; who has no seat comes last, as listed. */
export function inSeats(learners: readonly Learner[]): Learner[] {
  return [...learners].sort((a, b) => {
    if (a.seat === undefined || b.seat === undefined)
      return Number(a.seat === undefined) - Number(b.seat === undefined);
    return order.compare(a.seat, b.seat);
  });
}
