import { CommandError } from '../diagnostics/errors.js';
import type { CardKind } from '../reference/cards/card.js';
import { shopCards } from '../reference/cards/index.js';
import { Desk } from '../reference/desk.js';
import { cardSheetHtml } from '../sheets/card-sheet.js';
import { madeByName } from './by-name.js';
import type { Document } from './plan.js';
import { dayOf, fromJobs, type Workshop } from './workshop.js';

/**
 * Cards to laminate, a file for each family: those that are named, or all that kit and jobs have what is needed for.
 *
 * @throws {CommandError} a family that is named, and nothing to make it from; {ContentError} a job that no cards can be
 *   made for
 */
export function cardDocuments(names: readonly string[] | undefined, workshop: Workshop): Document[] {
  const { kit } = workshop;
  const serves = ({ needs }: CardKind): boolean => needs?.in(kit) ?? true;
  return madeByName(
    shopCards,
    names,
    (kind) => (serves(kind) ? documentsOf(kind, workshop) : []),
    (kind) =>
      serves(kind)
        ? new CommandError(`the cards ${kind.name} need a job, and there is none`, [
            'Make the cards of a course with --only cards.',
          ])
        : new CommandError(`the cards ${kind.name} need ${kind.needs?.words}, and ${kit.kit} has none`, [
            'Name another kit with --kit.',
          ]),
  );
}

/** Nothing where no card comes of these jobs. */
function documentsOf(kind: CardKind, { kit, head, style, jobs, file, date }: Workshop): Document[] {
  const { name, title, conventions } = kind;
  const desk = new Desk(style.units);
  const cards = fromJobs(
    file,
    `the cards ${name} cannot be made for these jobs`,
    'Change the job, or name other cards.',
    () => kind.make(desk, kit, jobs),
  );
  if (cards.length === 0) return [];
  const family = { head, title, cards, conventions, sources: desk.sources, date: dayOf(date) };
  return [{ kind: 'cards', name: `cards/${name}.pdf`, html: () => cardSheetHtml(family, style) }];
}
