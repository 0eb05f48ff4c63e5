import type { WrongCut } from '../calculations/cutting/given.js';
import { InputError } from '../diagnostics/errors.js';
import { drawFigure, type Figure } from '../figures/index.js';
import { judge, type Verdict } from '../problems/judge.js';
import type { Part, Problem, SlipLine } from '../problems/problem.js';
import type { SheetStyle } from '../sheets/model.js';
import { letterOf } from '../sheets/problem-marks.js';
import { settingOf } from '../sheets/setting.js';

/** What became of an answer. */
export type Outcome = Verdict['kind'] | 'follows';

/** What a practice page says of an answer. */
export interface Remark {
  readonly outcome: Outcome;
  readonly says: string;
  /** The wheel that is cut with a slip, where it makes one. */
  readonly wheel?: DrawnWheel;
}

/** A drawing of a wheel's teeth, and their module, mm. */
export interface DrawnWheel extends Figure {
  readonly module: number;
}

/**
 * What is said of an answer as it was typed.
 *
 * @param at which part of the problem, from 0
 * @param before what was typed for the parts before it; a slip there may lead to this answer
 */
export function remarkOn(
  typed: string,
  problem: Problem,
  at: number,
  before: readonly string[],
  style: SheetStyle,
): Remark {
  const part = problem.parts[at] as Part;
  const following = followsFrom(problem, at, before);
  const slips = [...part.slips, ...following];
  const verdict = judge(typed, { ...part, slips });
  const read = verdict.read === undefined ? '' : ` ${verdict.read}`;
  switch (verdict.kind) {
    case 'right':
      return { outcome: 'right', says: `Right. ${rightWords(part)}${read}` };
    case 'wrong':
      return { outcome: 'wrong', says: `Not yet. Work it once more, or look at the working.${read}` };
    case 'near':
      return { outcome: 'near', says: `${verdict.says}${read}` };
    case 'unread': {
      const empty = typed.trim() === '';
      if (empty && part.expects.kind === 'choice') return { outcome: 'unread', says: 'Choose one first.' };
      const why = empty ? 'Nothing is written here yet.' : 'That cannot be read.';
      return { outcome: 'unread', says: `${why} ${verdict.says}` };
    }
    case 'slip': {
      const { gives, says } = verdict;
      const slip = slips.find((line) => line.gives === gives && line.says === says);
      if (slip && following.includes(slip)) return { outcome: 'follows', says };
      const wheel = slip?.cut && drawnWheel(slip.cut, style);
      return { outcome: 'slip', says: `${says}${read}`, ...(wheel ? { wheel } : {}) };
    }
  }
}

/** The answers that follow from the slips that were typed before, as slips. */
function followsFrom(problem: Problem, at: number, before: readonly string[]): SlipLine[] {
  const follows = problem.parts[at]?.follows ?? [];
  return before.flatMap((typed, place) => {
    const part = problem.parts[place];
    const verdict = part && typed !== '' ? judge(typed, part) : undefined;
    if (verdict?.kind !== 'slip') return [];
    const letter = letterOf(place, problem);
    return follows
      .filter((line) => line.part === place && line.gives === verdict.gives)
      .map(({ answer }) => ({
        gives: answer,
        says: `Worked rightly from your answer to ${letter}, and earns its marks. Mend ${letter}, and work this again.`,
      }));
  });
}

function rightWords({ answer, accepted, expects }: Part): string {
  if (expects.kind === 'moves' && expects.moves.length > 1) return `These serve: ${answer}.`;
  const range = expects.kind === 'number' && accepted !== 'only this';
  return `The answer is ${answer}${range ? `; ${accepted} is taken` : ''}.`;
}

/** The teeth where the last cut meets the first; none of a wheel that is too far wrong to draw. */
function drawnWheel(cut: WrongCut, style: SheetStyle): DrawnWheel | undefined {
  try {
    return { ...drawFigure('simulated-sector', cut, settingOf(style)), module: cut.module };
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
}
