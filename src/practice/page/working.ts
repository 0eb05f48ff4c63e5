import { lettersOf } from '../../problems/expected.js';
import { checkViews } from '../../sheets/check-view.js';
import { inLine } from '../../sheets/in-line.js';
import { type SetPart, type SetProblem, setStep } from '../set-problem.js';
import { element, withHtml } from './element.js';

/** How every part of a problem is worked, what it comes to, and how that was proven. */
export function workingElement({ parts }: SetProblem): DocumentFragment {
  const all = new DocumentFragment();
  all.append(...parts.flatMap(partWorking));
  return all;
}

function partWorking({ letter, part, options }: SetPart): HTMLElement[] {
  const steps = part.method.map(setStep).map((step) => {
    if ('say' in step) return element('li', {}, step.say);
    return element('li', {}, withHtml('span', {}, step.mathml), ` = ${step.result}`);
  });
  const chosen = lettersOf(part.expects).flatMap((letter) => options.filter((one) => one.letter === letter));
  const words = chosen.map(({ text }) => inLine(text)).join(', ');
  const answer = element('p', {}, 'Answer: ', element('strong', {}, part.answer));
  if (words !== '') answer.append(' ', withHtml('span', {}, words));
  const checks = checkViews(part.checks).map(({ source, said }) => element('li', {}, `${source}: ${said}`));
  return [
    ...(letter === '' ? [] : [element('p', { class: 'part-name' }, letter)]),
    ...(steps.length > 0 ? [element('ol', { class: 'steps' }, ...steps)] : []),
    answer,
    ...(checks.length > 0
      ? [
          element('p', { class: 'checked' }, 'Checked by a second way:'),
          element('ul', { class: 'checks' }, ...checks),
        ]
      : []),
  ];
}
