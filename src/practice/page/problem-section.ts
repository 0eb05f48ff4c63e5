import type { Remark } from '../remark.js';
import type { SetProblem } from '../set-problem.js';
import { element, heard, onClick, withHtml } from './element.js';
import { partForm } from './part-form.js';
import { shownElement } from './shown.js';
import { workingElement } from './working.js';

/** A problem as it stands on the page, and what may be done with it. */
export interface ProblemOnPage {
  readonly set: SetProblem;
  /** `16.3` */
  readonly number: string;
  /** Of its numbers, as a sheet prints it. */
  readonly variant: string;
  readonly typed: readonly string[];
  readonly isRight: boolean;
  /** Whether the working is open. */
  readonly open: boolean;
  check(part: number, typed: string): Remark;
  /** Told when the working is opened or closed. */
  opened(open: boolean): void;
  fresh(): void;
}

/** The section of a problem. */
export function problemSection(problem: ProblemOnPage): HTMLElement {
  const { set, number } = problem;
  const id = `problem-${set.name.replace('.', '-')}`;
  const section = element('section', { class: 'problem', id, 'aria-labelledby': `${id}-name` });
  section.append(
    element(
      'h3',
      { id: `${id}-name`, tabindex: '-1' },
      `Problem ${number}`,
      set.level === '' ? '' : element('span', { class: 'level' }, ` ${set.level}`),
      ' ',
      element('span', { class: 'state', hidden: !problem.isRight }, '✓ right'),
    ),
    element('p', { class: 'code' }, `Numbers ${problem.variant}`),
    ...(set.example ? [exampleOf(set.example)] : []),
    withHtml('div', { class: 'ask' }, set.ask),
    ...(set.shown ? [shownElement(set.shown)] : []),
    ...set.parts.map((part, at) =>
      partForm(
        part,
        { id: `${id}-${at + 1}`, number: `${number} ${part.letter}`.trim(), typed: problem.typed[at] ?? '' },
        (typed) => problem.check(at, typed),
      ),
    ),
    ...workingOf(problem, id),
  );
  return section;
}

/** Whether the problem is right now. */
export function markRight(section: HTMLElement, isRight: boolean): void {
  const state = section.querySelector<HTMLElement>('.state');
  if (state) state.hidden = !isRight;
}

function workingOf({ set, number, open, opened, fresh }: ProblemOnPage, id: string): HTMLElement[] {
  const working = scrolling(`Working of ${number}`, { class: 'working', id: `${id}-working`, hidden: !open });
  const toggle = element('button', {
    type: 'button',
    'aria-expanded': String(open),
    'aria-controls': working.id,
  });
  const show = (now: boolean): void => {
    if (now && working.childElementCount === 0) working.append(workingElement(set));
    working.hidden = !now;
    toggle.setAttribute('aria-expanded', String(now));
    toggle.replaceChildren(now ? 'Hide the working' : 'Show the working', heard(` of ${number}`));
  };
  show(open);
  onClick(toggle, () => {
    show(working.hidden !== false);
    opened(!working.hidden);
  });
  const again = element(
    'button',
    { type: 'button' },
    'Another, with fresh numbers',
    heard(` in place of ${number}`),
  );
  return [element('div', { class: 'buttons' }, toggle, onClick(again, fresh)), working];
}

/** A part of the page that may be wider than it: it can be scrolled by the keyboard. */
function scrolling(name: string, given: Parameters<typeof element>[1]): HTMLElement {
  return element('div', { ...given, role: 'group', 'aria-label': name, tabindex: '0' });
}

function exampleOf(example: SetProblem): HTMLElement {
  const body = scrolling('Worked example', { class: 'example' });
  body.append(withHtml('div', { class: 'ask' }, example.ask));
  for (const part of example.parts)
    if (part.ask !== '') body.append(withHtml('div', { class: 'ask' }, part.ask));
  body.append(workingElement(example));
  return element('details', {}, element('summary', {}, 'A worked one first, with other numbers'), body);
}
