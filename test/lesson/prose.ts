import type { Lesson } from '../../src/lesson/lesson.js';
import { Faults } from '../../src/sheets/fault.js';
import { setText } from '../../src/sheets/markdown.js';
import { Numbering } from '../../src/sheets/numbering.js';
import type { UnitSystem } from '../../src/units/format.js';

/** The sentences of a lesson's text with its numbers in; no tables, figures, workings or formulas on lines of their own. */
export function sentencesOf({ file, body, bodyLine, values }: Lesson, units: UnitSystem): string[] {
  const faults = new Faults();
  const numbering = new Numbering(1, 'lesson');
  const figure = (name: string, { label }: Record<string, unknown>) => {
    numbering.figure(name, label === undefined ? undefined : String(label));
    return '';
  };
  const blocks = { worked: () => '', figure, problems: () => '' };
  const html = setText(
    { file, text: body, line: bodyLine, about: 'the text' },
    { values, style: { paper: 'a4', print: 'plain', units }, blocks, numbering, faults },
  );
  faults.demandNone();
  const shown = html.replace(/<table>[^]*?<\/table>/g, '').replace(/<p class="display[^>]*>[^]*?<\/p>/g, '');
  const said = [...shown.matchAll(/<(p|li)>([^]*?)<\/\1>/g)].map(([, , inner = '']) =>
    inner
      .replace(/<[^>]*>/g, ' ')
      .replace(/&\w+;|[\u202F\u00A0]/g, ' ')
      .replace(/\s+/g, ' ')
      .trim(),
  );
  return said.flatMap((one) => one.split(/(?<=[.!?])\s+(?=[“A-Z0-9])/)).filter((one) => /[a-z]{2}/.test(one));
}
