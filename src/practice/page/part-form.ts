import { howToWrite } from '../../problems/reading/how-to-write.js';
import { inLine } from '../../sheets/in-line.js';
import type { Outcome, Remark } from '../remark.js';
import type { SetPart } from '../set-problem.js';
import { element, heard, withHtml } from './element.js';
import { shownElement } from './shown.js';

/** Where a part stands. */
export interface PartPlace {
  /** Unlike that of any other part of the page. */
  readonly id: string;
  /** `16.3`, `16.3 (b)` */
  readonly number: string;
  /** What was typed before. */
  readonly typed: string;
}

const BEFORE: Readonly<Record<Outcome, string>> = {
  right: '',
  follows: 'Follows.',
  slip: 'Not yet.',
  near: 'Nearly.',
  wrong: '',
  unread: '',
};

/** The question of a part, the box for its answer, and what is said of that. */
export function partForm(
  set: SetPart,
  { id, number, typed }: PartPlace,
  check: (typed: string) => Remark,
): HTMLFormElement {
  const remark = element('div', { class: 'remark', role: 'status', id: `${id}-remark` });
  const box = set.part.expects.kind === 'choice' ? radios(set, id, typed) : written(set, id, typed);
  const form = element(
    'form',
    { class: 'part', novalidate: true, autocomplete: 'off' },
    withHtml(
      'div',
      { class: 'ask' },
      `${set.letter === '' ? '' : `<span class="letter">${set.letter}</span>`}${set.ask}`,
    ),
    set.shown && shownElement(set.shown),
    ...box.shown,
    element('button', { type: 'submit' }, 'Check', heard(` the answer to ${number}`)),
    remark,
  );
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    const said = check(box.value());
    box.mark(said.outcome);
    say(remark, said);
  });
  return form;
}

/** What the answer is written in. */
interface Box {
  readonly shown: readonly HTMLElement[];
  value(): string;
  mark(outcome: Outcome): void;
}

function written(set: SetPart, id: string, typed: string): Box {
  const { unit, expects } = set.part;
  const input = element('input', {
    id,
    type: 'text',
    value: typed,
    'aria-describedby': `${id}-hint`,
    autocapitalize: 'off',
    spellcheck: 'false',
    enterkeyhint: 'done',
  });
  const name = set.letter === '' ? 'Your answer' : `Your answer to ${set.letter}`;
  const label = element('label', { for: id }, unit === '' ? name : `${name}, ${unit}`);
  const options = set.options.map(({ letter, text }) =>
    withHtml('li', {}, `<span class="letter">${letter}</span> ${text}`),
  );
  return {
    shown: [
      ...(options.length > 0 ? [element('ul', { class: 'options' }, ...options)] : []),
      label,
      element('p', { class: 'hint', id: `${id}-hint` }, howToWrite(expects)),
      input,
    ],
    value: () => input.value,
    mark: (outcome) => input.setAttribute('aria-invalid', String(outcome !== 'right')),
  };
}

function radios(set: SetPart, id: string, typed: string): Box {
  const choices = set.options.map(({ letter, text }) => {
    const input = element('input', {
      type: 'radio',
      name: id,
      value: letter,
      checked: letter === typed,
      id: `${id}-${letter}`,
    });
    return {
      input,
      shown: element(
        'div',
        { class: 'choice' },
        input,
        withHtml(
          'label',
          { for: `${id}-${letter}` },
          `<span class="letter">${letter}</span> ${inLine(text)}`,
        ),
      ),
    };
  });
  const legend = element('legend', {}, set.letter === '' ? 'Choose one' : `Choose one for ${set.letter}`);
  return {
    shown: [element('fieldset', {}, legend, ...choices.map(({ shown }) => shown))],
    value: () => choices.find(({ input }) => input.checked)?.input.value ?? '',
    mark: () => undefined,
  };
}

function say(remark: HTMLElement, { outcome, says, wheel }: Remark): void {
  const before = BEFORE[outcome];
  remark.dataset.outcome = outcome;
  remark.replaceChildren(
    element('p', {}, before === '' ? '' : element('strong', {}, before), before === '' ? '' : ' ', says),
  );
  if (!wheel) return;
  const drawn = withHtml('div', { class: 'figure' }, wheel.svg);
  const caption = `So the wheel would come out, where the last cut meets the first. Module ${wheel.module} mm, scale ${wheel.scale}.`;
  remark.append(element('figure', {}, drawn, element('figcaption', {}, caption)));
}
