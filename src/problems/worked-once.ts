import { type FullWork, workInFull } from '../calculations/work.js';

/** As many cases of one calculation are kept. */
const MOST = 2000;

const known = new Map<string, Map<string, FullWork>>();

/**
 * A calculation worked by both routes, the first time that it is asked for with such values: the same draw comes up
 * for many a learner.
 *
 * @throws what `workInFull` throws
 */
export function workedOnce(name: string, given: Readonly<Record<string, unknown>>): FullWork {
  const cases = known.get(name) ?? new Map<string, FullWork>();
  known.set(name, cases);
  const key = JSON.stringify(given);
  const before = cases.get(key);
  if (before) return before;
  const full = workInFull(name, given);
  if (cases.size === MOST) cases.clear();
  cases.set(key, full);
  return full;
}
