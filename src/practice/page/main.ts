import './jitless.js';
import { freshCode } from '../../problems/code.js';
import { printedVariant, readVariant } from '../../problems/variant.js';
import type { SheetStyle } from '../../sheets/model.js';
import type { UnitSystem } from '../../units/format.js';
import { drawnAlone, drawnFor } from '../drawn.js';
import { readPractice } from '../practice-lesson.js';
import { begun, changed, progressCsv, sheetOf, tried } from '../progress.js';
import { remarkOn } from '../remark.js';
import { setProblem } from '../set-problem.js';
import { byId, onClick } from './element.js';
import { markRight, problemSection } from './problem-section.js';
import { Store } from './store.js';
import { readyTemplates } from './templates.js';

const lesson = readPractice(byId('lesson', HTMLScriptElement).text);
const store = new Store(lesson);
const list = byId('problem-list', HTMLElement);
const sections = new Map<string, HTMLElement>();

const style = (): SheetStyle => ({ paper: 'a4', print: 'plain', units: store.progress.units });
const numberOf = (name: string): string =>
  `${lesson.number ?? 1}.${lesson.problems.findIndex((kind) => kind.name === name) + 1}`;

/** A problem's section, anew from what is kept. */
function sectionOf(problem: ReturnType<typeof drawnAlone>): HTMLElement {
  const { name, parts } = problem;
  const number = numberOf(name);
  const { code, typed, right, shown } = sheetOf(store.progress, name);
  const variant = printedVariant(code, store.progress.units, lesson.kit);
  const set = setProblem(problem, { lesson: lesson.name, style: style(), templates: readyTemplates });
  const section = problemSection({
    set,
    number,
    variant,
    typed,
    isRight: right.length === parts.length,
    open: shown,
    check: (part, answer) => {
      const remark = remarkOn(
        answer,
        problem,
        part,
        sheetOf(store.progress, name).typed.slice(0, part),
        style(),
      );
      const asked = `${number} ${set.parts[part]?.letter ?? ''}`.trim();
      store.progress = tried(
        store.progress,
        { name, part, parts: parts.length },
        { at: new Date().toISOString(), problem: asked, variant, typed: answer, outcome: remark.outcome },
      );
      markRight(section, sheetOf(store.progress, name).right.length === parts.length);
      tell();
      return remark;
    },
    opened: (open) => {
      store.progress = changed(store.progress, name, { shown: open });
    },
    fresh: () => {
      const numbers = { code: freshCode(), typed: [], right: [], shown: false };
      store.progress = changed(store.progress, name, numbers);
      const next = sectionOf(drawnAlone(lesson, store.progress, name));
      section.replaceWith(next);
      sections.set(name, next);
      next.querySelector('h3')?.focus();
      tell();
    },
  });
  return section;
}

/** Every problem, anew from what is kept. */
function showAll(): void {
  sections.clear();
  for (const problem of drawnFor(lesson, store.progress)) sections.set(problem.name, sectionOf(problem));
  list.replaceChildren(...sections.values());
  const { code, units } = store.progress;
  byId('code-now', HTMLElement).textContent = printedVariant(code, units, lesson.kit);
  for (const system of ['mm', 'inch'] as const)
    byId(`units-${system}`, HTMLInputElement).checked = system === units;
  tell();
}

/** How far the learner is. */
function tell(): void {
  const states = [...sections.values()].map(
    (section) => section.querySelector<HTMLElement>('.state')?.hidden,
  );
  const right = states.filter((hidden) => hidden === false).length;
  byId('tally', HTMLElement).textContent = `${right} of ${sections.size} problems right.`;
  byId('not-kept', HTMLElement).hidden = store.kept;
}

/** Other numbers for every problem; what was answered stays in the record. */
function begin(code: string, units: UnitSystem): void {
  store.progress = { ...begun(code, units), tries: store.progress.tries };
  showAll();
}

byId('code-form', HTMLFormElement).addEventListener('submit', (event) => {
  event.preventDefault();
  const box = byId('code', HTMLInputElement);
  const said = byId('code-said', HTMLElement);
  try {
    const { code, units } = readVariant(box.value);
    begin(code, units ?? lesson.kit.units);
    box.removeAttribute('aria-invalid');
    said.textContent = `The numbers are those of ${printedVariant(code, store.progress.units, lesson.kit)}.`;
  } catch (error) {
    const { message, hints = [] } = error as Error & { readonly hints?: readonly string[] };
    box.setAttribute('aria-invalid', 'true');
    said.textContent = `${message}. ${hints.join(' ')}`;
  }
});
onClick(byId('fresh', HTMLButtonElement), () => {
  begin(freshCode(), store.progress.units);
  byId('code-said', HTMLElement).textContent = 'Every problem has fresh numbers.';
});
for (const system of ['mm', 'inch'] as const)
  byId(`units-${system}`, HTMLInputElement).addEventListener('change', () => {
    begin(store.progress.code, system);
    byId('code-said', HTMLElement).textContent =
      `Sizes are in ${system === 'mm' ? 'millimetres' : 'inches'} now, with numbers to suit.`;
  });
onClick(byId('save', HTMLButtonElement), () => {
  const file = new Blob([progressCsv(lesson.title, store.progress)], { type: 'text/csv' });
  const link = document.createElement('a');
  link.href = URL.createObjectURL(file);
  link.download = `practice-${lesson.name}.csv`;
  link.click();
  URL.revokeObjectURL(link.href);
});
onClick(byId('clear', HTMLButtonElement), () => {
  if (!confirm('Clear all that you have answered in this lesson?')) return;
  store.progress = begun(store.progress.code, store.progress.units);
  showAll();
});
showAll();
