import type { Chance } from './chance.js';
import { namesOfLines } from './lines.js';
import type { Asked } from './part.js';
import type { ProblemDeclaration } from './schema.js';
import type { Workings } from './workings.js';

/** What is asked, and where in the declaration it stands. */
export interface AskedAt {
  readonly asked: Asked;
  readonly path: readonly PropertyKey[];
}

/**
 * The questions of a problem, in their order: each part, or the one question of a problem without parts, with the
 * estimate that goes before it. Where a whole series is asked for that is printed with a line left blank, chance
 * draws which.
 */
export function askedOf(declared: ProblemDeclaration, workings: Workings, chance: Chance): AskedAt[] {
  const parts: AskedAt[] = declared.parts
    ? declared.parts.map((asked, place) => ({ asked, path: ['parts', place] }))
    : [{ asked: alone(declared), path: [] }];
  return parts.flatMap(({ asked, path }) => {
    const one = { asked: { ...asked, find: lineAsked(asked.find, declared, workings, chance) }, path };
    const estimate = estimateOf(one.asked);
    if (!estimate) return [one];
    const worded = one.asked.ask === undefined ? { ...one.asked, ask: 'Now work it out.' } : one.asked;
    return [
      { asked: estimate, path },
      { ...one, asked: worded },
    ];
  });
}

/** The one question of a problem whose own words ask it. */
function alone({
  find = '',
  answer,
  marks,
  slips,
  choose,
  estimate,
  method,
  room,
}: ProblemDeclaration): Asked {
  return { find, answer, marks, slips, choose, estimate, method, room };
}

function lineAsked(find: string, { lines }: ProblemDeclaration, workings: Workings, chance: Chance): string {
  if (!lines?.includes(find) || workings.runs.get(find)?.kind !== 'series') return find;
  // Not the first, from which the others go on.
  const rows = namesOfLines(lines, workings);
  return rows[1 + chance.below(rows.length - 1)] ?? find;
}

function estimateOf({ estimate, ...exact }: Asked): Asked | undefined {
  if (estimate === undefined) return undefined;
  const {
    accept,
    to = exact.answer.to ?? '1',
    ask = 'First estimate it, without working it out.',
  } = estimate;
  return {
    ...exact,
    choose: undefined,
    ask,
    answer: { to, accept },
    marks: { method: 0, accuracy: 0, independent: 1 },
    room: 1,
    rough: true,
  };
}
