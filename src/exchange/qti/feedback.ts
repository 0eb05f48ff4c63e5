import type { Part, Problem } from '../../problems/problem.js';
import type { PortableOption, PortableProblem } from '../../sheets/portable.js';
import { letterOf } from '../../sheets/problem-marks.js';
import { answerWords, stepLine } from './working.js';
import { element, type Xml } from './xml.js';

/** What is shown after an answer when the outcome holds this identifier. */
export function feedback(outcome: string, identifier: string, ...content: readonly Xml[]): Xml {
  return element(
    'qti-modal-feedback',
    { 'outcome-identifier': outcome, identifier, 'show-hide': 'show' },
    element('qti-content-body', {}, ...content),
  );
}

/** How a problem is worked: for each part its answer, what is accepted, and the method. */
export function methodFeedback(problem: Problem, { parts }: PortableProblem): Xml {
  const worked = problem.parts.flatMap((part, at) => [
    answerLine(part, letterOf(at, problem), parts[at]?.options ?? []),
    ...part.method.map(stepLine),
  ]);
  return feedback('METHOD', 'shown', element('p', {}, element('strong', {}, 'Method')), ...worked);
}

/** Of an answer by letters there is nothing else to accept. */
function answerLine(part: Part, letter: string, options: readonly PortableOption[]): Xml {
  const { accepted } = part;
  const taken = accepted === '' || options.length > 0 ? '' : ` (accepted: ${accepted})`;
  return element('p', {}, `${letter} Answer: `.trimStart(), ...answerWords(part, options), taken);
}
