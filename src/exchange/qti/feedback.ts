import type { WorkingStep } from '../../calculations/working.js';
import type { Part, Problem } from '../../problems/problem.js';
import { mathsStep } from '../../sheets/portable-step.js';
import { letterOf } from '../../sheets/problem-view.js';
import { element, markup, type Xml } from './xml.js';

/** What is shown after an answer when the outcome holds this identifier. */
export function feedback(outcome: string, identifier: string, ...content: readonly Xml[]): Xml {
  return element(
    'qti-modal-feedback',
    { 'outcome-identifier': outcome, identifier, 'show-hide': 'show' },
    element('qti-content-body', {}, ...content),
  );
}

/** How a problem is worked: for each part its answer, what is accepted, and the method. */
export function methodFeedback(problem: Problem): Xml {
  const worked = problem.parts.flatMap((part, at) => [
    answerLine(part, letterOf(at, problem)),
    ...part.method.map(stepLine),
  ]);
  return feedback('METHOD', 'shown', element('p', {}, element('strong', {}, 'Method')), ...worked);
}

function answerLine({ answer, accepted }: Part, letter: string): Xml {
  const taken = accepted === '' ? '' : ` (accepted: ${accepted})`;
  return element('p', {}, `${letter} Answer: `.trimStart(), element('strong', {}, answer), taken);
}

function stepLine(step: WorkingStep): Xml {
  if ('say' in step) return element('p', {}, step.say);
  const { mathml, result } = mathsStep(step);
  return element('p', {}, markup(mathml), ` = ${result}`);
}
