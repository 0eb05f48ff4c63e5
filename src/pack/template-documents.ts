import { CommandError } from '../diagnostics/errors.js';
import { templateSvg } from '../exchange/template-svg.js';
import { Desk } from '../reference/desk.js';
import { checkBarFor } from '../reference/templates/check-bar.js';
import { templates } from '../reference/templates/index.js';
import { printedBy } from '../reference/templates/printed-by.js';
import type { Piece, TemplateKind } from '../reference/templates/template.js';
import type { Printer } from '../sheets/template-layout.js';
import { templateSheetHtml } from '../sheets/template-sheet.js';
import { madeByName } from './by-name.js';
import { fileName } from './file-name.js';
import type { Document } from './plan.js';
import { dayOf, fromJobs, type Workshop } from './workshop.js';

/**
 * Templates at true scale, each with its outline for a cutting machine: those that are named, or all that kit and jobs
 * have what is needed for. Where the printer has been measured, each says what comes out of it, and is made a second
 * time, stretched for that printer alone, under a name of its own.
 *
 * @param printer what 1 mm comes out as on the printer, where that has been measured
 * @throws {CommandError} a template that is named, and nothing to draw it from; {ContentError} a job with a crossing
 *   that no wheel can have
 */
export function templateDocuments(
  names: readonly string[] | undefined,
  workshop: Workshop,
  printer: Printer | undefined,
): Document[] {
  const { kit, jobs } = workshop;
  return madeByName(
    templates,
    names,
    (kind) => ((kind.needs?.in(kit, jobs) ?? true) ? documentsOf(kind, workshop, printer) : []),
    ({ name, needs }) =>
      new CommandError(`the template ${name} needs ${needs?.words}, and there is none`, [
        'Name another kit with --kit, or make the templates of a course with --only templates.',
      ]),
  );
}

function documentsOf(kind: TemplateKind, workshop: Workshop, printer: Printer | undefined): Document[] {
  const { kit, head, style, jobs, file, date } = workshop;
  const desk = new Desk(style.units);
  const template = fromJobs(file, `the template ${kind.name} cannot be drawn`, JOB_HINT, () =>
    kind.make(desk, kit, jobs),
  );
  const bar = checkBarFor(desk);
  const reports = printer && template.pieces.map((piece) => printedBy(desk, printer, piece.over));
  const { name, title } = kind;
  const sheet = { head, title, template, bar, sources: desk.sources, date: dayOf(date), reports };
  const uneven = printer && (printer.x !== 1 || printer.y !== 1);
  return [
    {
      kind: 'templates',
      name: `templates/${name}.pdf`,
      html: () => templateSheetHtml(sheet, style),
      ...told(reports),
    },
    ...(uneven
      ? [
          {
            kind: 'templates' as const,
            name: `templates/${name}-for-one-printer.pdf`,
            html: () => templateSheetHtml({ ...sheet, reports: undefined, correctedFor: printer }, style),
          },
        ]
      : []),
    ...outlinesOf(name, template.pieces),
  ];
}

const JOB_HINT = 'Change the job, or leave out its crossing: it then goes by the rule.';

const told = (reports: readonly string[] | undefined) => (reports ? { reports: [...new Set(reports)] } : {});

/** A file for each piece that has an outline of its own. */
function outlinesOf(name: string, pieces: readonly Piece[]): Document[] {
  const own = pieces.flatMap(({ outline }) => (outline ? [outline] : []));
  return own.map((outline, at) => ({
    kind: 'templates' as const,
    name: own.length === 1 ? `templates/${name}.svg` : `templates/${name}-${fileName(outline, at + 1)}.svg`,
    data: () => templateSvg(outline),
  }));
}
