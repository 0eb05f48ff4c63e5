import { systemOf } from '../calculations/working.js';
import { InputError } from '../diagnostics/errors.js';
import { NoValueError } from '../formula/formula.js';
import { answerOf } from './answer.js';
import { Fault } from './fault.js';
import type { AnsweredPart, Asking } from './part.js';
import type { FollowLine } from './problem.js';
import { inWords } from './show.js';
import { subjectOf, wordsOf } from './subject.js';
import type { Instead, Workings } from './workings.js';

/**
 * For each slip of each earlier part, the answer here that follows from it: the workings done again with the wrong
 * value in place of the right one, and what the learner was told kept as it was told. Slips that change nothing here,
 * or lead to no value, are left out.
 */
export function followsOf(here: AnsweredPart, { told, tell, units, earlier }: Asking): FollowLine[] {
  const fixed = tell.map((name) => [name, told.names.get(name)] as const);
  return earlier.flatMap(({ asked, subject, worked, lettered }, part) => {
    if (lettered || asked.rough) return [];
    const lines = worked.flatMap(({ value, line }): FollowLine[] => {
      const name = Array.isArray(subject.value) ? `${asked.find}.0.holes` : asked.find;
      const instead: Instead = new Map([...fixed, [name, value]]);
      const answer = leadsTo(here, () => told.again(instead), units);
      return answer === undefined || answer === here.answer.text ? [] : [{ part, gives: line.gives, answer }];
    });
    return [...new Map(lines.map((line) => [line.gives, line])).values()];
  });
}

/** What a part's answer comes to by other workings; none where they have no value for it. */
function leadsTo(
  { asked, subject }: AnsweredPart,
  again: () => Workings,
  units: Asking['units'],
): string | undefined {
  const system = systemOf(subject.symbol, units);
  try {
    const workings = again();
    const value =
      asked.method === undefined
        ? subjectOf(asked.find, workings).value
        : workings.names.evaluate(asked.method);
    if (typeof value !== 'number')
      return answerOf({ ...subject, value }, asked.answer, system, wordsOf(subject)).text;
    const whole = Math.abs(value - Math.round(value)) < 1e-9;
    return asked.answer.to === undefined && !whole
      ? inWords(value, subject.unit, system)
      : answerOf({ ...subject, value }, asked.answer, system).text;
  } catch (error) {
    // A wrong value may be one that nothing can be worked from.
    if (error instanceof NoValueError || error instanceof InputError || error instanceof Fault)
      return undefined;
    throw error;
  }
}
