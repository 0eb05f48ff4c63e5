import type { Kit } from '../../src/kit/schema.js';
import { Desk } from '../../src/reference/desk.js';
import { checkBarFor } from '../../src/reference/templates/check-bar.js';
import { templates } from '../../src/reference/templates/index.js';
import type { TemplateJob } from '../../src/reference/templates/template.js';
import type { SheetStyle } from '../../src/sheets/model.js';
import type { TemplateSheet } from '../../src/sheets/template-sheet.js';

export const styles: readonly SheetStyle[] = (['a4', 'letter'] as const).flatMap((paper) =>
  (['plain', 'large'] as const).flatMap((print) =>
    (['mm', 'inch'] as const).map((units) => ({ paper, print, units })),
  ),
);

export const styleName = ({ paper, print, units }: SheetStyle): string => `${paper}, ${print}, ${units}`;

/** A template as the pack would set it, for a printer where one is named. */
export function sheetOf(
  name: string,
  how: { units: SheetStyle['units']; kit: Kit; jobs: readonly TemplateJob[] },
  correctedFor?: TemplateSheet['correctedFor'],
): TemplateSheet {
  const kind = templates.find((one) => one.name === name);
  if (!kind) throw new Error(`there is no template ${name}`);
  const desk = new Desk(how.units);
  const template = kind.make(desk, how.kit, how.jobs);
  return {
    head: { course: 'The Larkfield timepiece', club: 'Harrow Lane Model Engineers', kit: how.kit.kit },
    title: kind.title,
    template,
    bar: checkBarFor(desk),
    sources: desk.sources,
    date: '26 November 2026',
    correctedFor,
  };
}
