import { ContentError } from '../diagnostics/diagnostic.js';
import { CommandError, InputError } from '../diagnostics/errors.js';
import type { Kit } from '../kit/schema.js';
import type { Card, CardKind, CutJob } from '../reference/cards/card.js';
import { shopCards } from '../reference/cards/index.js';
import { Desk } from '../reference/desk.js';
import { cardSheetHtml } from '../sheets/card-sheet.js';
import type { SheetHead, SheetStyle } from '../sheets/model.js';
import { shown } from './lessons.js';
import type { Document } from './plan.js';
import { DAY } from './wall-documents.js';

interface Bench {
  readonly kit: Kit;
  readonly head: SheetHead;
  readonly style: SheetStyle;
  readonly jobs: readonly CutJob[];
  /** The course that the jobs stand in. */
  readonly file?: string | undefined;
  /** Of the making. */
  readonly date: Date;
}

/**
 * Cards to laminate, a file for each family: those that are named, or all that kit and jobs have what is needed for.
 *
 * @throws {CommandError} a family that is named, and nothing to make it from; {ContentError} a job that no cards can be
 *   made for
 */
export function cardDocuments(names: readonly string[] | undefined, bench: Bench): Document[] {
  const wanted = names === undefined ? shopCards : shopCards.filter(({ name }) => names.includes(name));
  return wanted.flatMap((kind) => {
    const served = kind.needs?.in(bench.kit) ?? true;
    const document = served ? documentOf(kind, bench) : undefined;
    if (document || names === undefined) return document ? [document] : [];
    throw new CommandError(
      served
        ? `the cards ${kind.name} need a job, and there is none`
        : `the cards ${kind.name} need ${kind.needs?.words}, and ${bench.kit.kit} has none`,
      [served ? 'Make the cards of a course with --only cards.' : 'Name another kit with --kit.'],
    );
  });
}

/** Nothing where no card comes of these jobs. */
function documentOf(kind: CardKind, bench: Bench): Document | undefined {
  const { head, style, date } = bench;
  const desk = new Desk(style.units);
  const cards = made(kind, desk, bench);
  if (cards.length === 0) return undefined;
  const { name, title, conventions } = kind;
  const family = { head, title, cards, conventions, sources: desk.sources, date: DAY.format(date) };
  return { kind: 'cards', name: `cards/${name}.pdf`, html: () => cardSheetHtml(family, style) };
}

/** What a job is refused for is told with the course it stands in. */
function made(kind: CardKind, desk: Desk, { kit, jobs, file = '' }: Bench): readonly Card[] {
  try {
    return kind.make(desk, kit, jobs);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const start = { line: 1, column: 1 };
    const message = `the cards ${kind.name} cannot be made for these jobs: ${error.message}`;
    const hints = ['Change the job, or name other cards.'];
    throw new ContentError([
      { severity: 'error', rule: 'course/job', message, file: shown(file), start, hints },
    ]);
  }
}
