import { sources } from '../handbook/sources.js';

const works: readonly string[] = Object.values(sources);
const MEMORY = 'from memory';

/**
 * Sources as a sheet for the wall names them: each work once. Of the places in it only those are told that nobody has
 * opened, or that a rule of the trade stands for; the others are with the calculation.
 *
 * @param cited as checks name them: the work, and where in it
 */
export function byWork(cited: Iterable<string>): string[] {
  const places = new Map<string, Set<string>>();
  for (const source of cited) {
    const work = works.find((one) => source.startsWith(`${one}; `)) ?? source;
    const place = source.slice(work.length + 2);
    const known = places.get(work) ?? new Set();
    const isTold = work === sources.practice || (place.includes(MEMORY) && !work.includes(MEMORY));
    places.set(work, isTold ? known.add(place) : known);
  }
  return [...places].map(([work, known]) => (known.size === 0 ? work : `${work}: ${[...known].join(', ')}`));
}
