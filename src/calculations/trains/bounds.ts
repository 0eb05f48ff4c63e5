import { InputError } from '../../diagnostics/errors.js';
import type { TrainBounds } from '../../geometry/trains/find.js';
import { primesOfTrain } from '../../handbook/trains/primes.js';

/** Most sets of wheels, and of pinions, that are gone through: so that the longest search takes a fraction of a second. */
const MOST_SETS = { wheels: 200_000, pinions: 1100 } as const;

/** How many sets of so many counts there are in a range so wide, repeats allowed. */
function setsOf(size: number, width: number): number {
  let sets = 1;
  for (let i = 0; i < size; i++) sets = (sets * (width + i)) / (i + 1);
  return sets;
}

const WORDS = ['no', 'one', 'two', 'three', 'four'];

/** @throws {InputError} when the ranges are so wide for so many stages that the search would take long */
export function refuseTooMany({ stages, minLeaves, maxLeaves, minTeeth, maxTeeth }: TrainBounds): void {
  for (const [bounds, least, most, sets] of [
    ['minTeeth and maxTeeth', minTeeth, maxTeeth, MOST_SETS.wheels],
    ['minLeaves and maxLeaves', minLeaves, maxLeaves, MOST_SETS.pinions],
  ] as const) {
    if (setsOf(stages, most - least + 1) <= sets) continue;
    let widest = most;
    while (setsOf(stages, widest - least + 1) > sets) widest--;
    // The range may be one that nobody typed.
    throw new InputError(
      'stages',
      stages,
      `fewer, or ${bounds} with it: ${WORDS[stages]} stages need a narrower range, such as ${least} to ${widest}`,
    );
  }
}

/** Why no train keeps to the bounds, as nearly as can be said. */
export function whyNone({
  ratio,
  stages,
  minLeaves,
  maxLeaves,
  minTeeth,
  maxTeeth,
  tolerance,
}: TrainBounds): string {
  const wanted = ratio.numerator / ratio.denominator;
  const [slowest, fastest] = [(minTeeth / maxLeaves) ** stages, (maxTeeth / minLeaves) ** stages];
  const inStages = stages === 1 ? 'in one stage' : `in ${stages} stages`;
  if (wanted > fastest)
    return `${inStages} the largest wheels on the smallest pinions come to ${Number(fastest.toPrecision(6))} at most`;
  if (wanted < slowest)
    return `${inStages} the smallest wheels on the largest pinions come to ${Number(slowest.toPrecision(6))} at least`;
  if (tolerance === 0)
    for (const [prime, power] of primesOfTrain([ratio.numerator], [ratio.denominator])) {
      const [least, most] = power > 0 ? [minTeeth, maxTeeth] : [minLeaves, maxLeaves];
      if (Math.floor(most / prime) * prime < least)
        return `the prime ${prime} of the ratio goes into no ${power > 0 ? 'wheel' : 'pinion'} from ${least} to ${most}: allow an error with tolerance, such as 10`;
    }
  return `no wheels and pinions within these bounds come to it ${inStages}`;
}
