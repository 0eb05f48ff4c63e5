import { ContentError } from '../diagnostics/diagnostic.js';
import { CommandError, InputError } from '../diagnostics/errors.js';
import { templateSvg } from '../exchange/template-svg.js';
import type { Kit } from '../kit/schema.js';
import { Desk } from '../reference/desk.js';
import { checkBarFor } from '../reference/templates/check-bar.js';
import { templates } from '../reference/templates/index.js';
import { printedBy } from '../reference/templates/printed-by.js';
import type { Piece, Template, TemplateJob, TemplateKind } from '../reference/templates/template.js';
import type { SheetHead, SheetStyle } from '../sheets/model.js';
import type { Printer } from '../sheets/template-layout.js';
import { templateSheetHtml } from '../sheets/template-sheet.js';
import { fileName } from './file-name.js';
import { shown } from './lessons.js';
import type { Document } from './plan.js';

interface Bench {
  readonly kit: Kit;
  readonly head: SheetHead;
  readonly style: SheetStyle;
  readonly jobs: readonly TemplateJob[];
  /** The course that the jobs stand in. */
  readonly file?: string | undefined;
  /** Of the making. */
  readonly date: Date;
  /** What 1 mm comes out as on the printer, where that has been measured. */
  readonly printer?: Printer | undefined;
}

/**
 * Templates at true scale, each with its outline for a cutting machine: those that are named, or all that kit and jobs
 * have what is needed for. Where the printer has been measured, each says what comes out of it, and is made a second
 * time, stretched for that printer alone, under a name of its own.
 *
 * @throws {CommandError} a template that is named, and nothing to draw it from; {ContentError} a job with a crossing
 *   that no wheel can have
 */
export function templateDocuments(names: readonly string[] | undefined, bench: Bench): Document[] {
  const wanted = names === undefined ? templates : templates.filter(({ name }) => names.includes(name));
  return wanted.flatMap((kind) => {
    if (kind.needs?.in(bench.kit, bench.jobs) ?? true) return documentsOf(kind, bench);
    if (names === undefined) return [];
    throw new CommandError(`the template ${kind.name} needs ${kind.needs?.words}, and there is none`, [
      'Name another kit with --kit, or make the templates of a course with --only templates.',
    ]);
  });
}

function documentsOf(kind: TemplateKind, bench: Bench): Document[] {
  const { head, style, date, printer } = bench;
  const desk = new Desk(style.units);
  const template = made(kind, desk, bench);
  const bar = checkBarFor(desk);
  const reports = printer && template.pieces.map((piece) => printedBy(desk, printer, piece.over));
  const { name, title } = kind;
  const sheet = { head, title, template, bar, sources: desk.sources, date: DAY.format(date), reports };
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

/** What a job is refused for is told with the course it stands in. */
function made(kind: TemplateKind, desk: Desk, { kit, jobs, file = '' }: Bench): Template {
  try {
    return kind.make(desk, kit, jobs);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const start = { line: 1, column: 1 };
    const message = `the template ${kind.name} cannot be drawn: ${error.message}`;
    const hints = ['Change the job, or leave out its crossing: it then goes by the rule.'];
    throw new ContentError([
      { severity: 'error', rule: 'course/job', message, file: shown(file), start, hints },
    ]);
  }
}

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

/** The same day wherever it is made. */
const DAY = new Intl.DateTimeFormat('en-GB', { dateStyle: 'long', timeZone: 'UTC' });
