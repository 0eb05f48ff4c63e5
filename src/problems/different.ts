import { chanceFrom } from './chance.js';
import { drawnValues, isFair, type Setting } from './draw.js';
import type { ProblemKind } from './kind.js';
import { Patience } from './patience.js';

/** Where there are no more ways than this to choose the values, all are tried. */
const MOST_WAYS = 400;
/** Else values are drawn, so often at most. */
const MOST_DRAWS = 4000;
/** Seconds of the processor's work for one kind. */
const LONGEST = 10;
/** Of the fair ones so many; a kind that has not given enough by then has few. */
const MOST_FAIR = 300;

/** How many different problems a kind can give. */
export interface Count {
  readonly count: number;
  /** Whether there are more than were counted. */
  readonly more: boolean;
}

/**
 * How many different problems a kind can give: ways to choose its values that make a fair one. Counted to the last
 * where the ways are few, else until there are enough.
 *
 * @throws {Fault} a declaration that cannot be worked
 */
export function countProblems(kind: ProblemKind, setting: Setting, enough: number): Count {
  const chance = chanceFrom(`count/${kind.name}`);
  const patience = new Patience(LONGEST, 'to count the problems of this kind');
  const ranges = Object.entries(kind.declared.vary).map(
    ([name, range]) => [name, [...new Set(range[setting.units])]] as const,
  );
  const ways = ranges.reduce((product, [, values]) => product * values.length, 1);
  if (ways <= MOST_WAYS) {
    const all = ranges.reduce<readonly Record<string, unknown>[]>(
      (sofar, [name, values]) => sofar.flatMap((one) => values.map((value) => ({ ...one, [name]: value }))),
      [{}],
    );
    return {
      count: all.filter((values) => isFair(kind, values, setting, chance, patience)).length,
      more: false,
    };
  }
  const seen = new Set<string>();
  let fair = 0;
  for (let draw = 0; draw < MOST_DRAWS && fair < MOST_FAIR && seen.size < enough; draw++) {
    const values = drawnValues(kind, setting.units, chance);
    if (!isFair(kind, values, setting, chance, patience)) continue;
    fair++;
    seen.add(JSON.stringify(values));
  }
  return { count: seen.size, more: seen.size >= enough };
}
