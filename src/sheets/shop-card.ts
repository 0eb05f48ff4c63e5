import { shortCheckViews } from './check-view.js';
import { demandGlyphs } from './glyphs.js';
import { lettering } from './lettering.js';
import type { SheetStyle, ShopCard } from './model.js';
import { pageHtml } from './page.js';
import { render } from './templates.js';
import { valueView } from './working-view.js';

/**
 * The card that lies beside the machine: one page, four numbers to read from where one stands.
 *
 * @throws {InputError} for a character that cannot be printed
 */
export function shopCardHtml(card: ShopCard, style: SheetStyle): string {
  demandGlyphs(card);
  const { head, job, given, big, quarters, lines, conventions, cautions, checks } = card;
  return pageHtml({
    kind: 'card',
    title: `${head.course}: shop card, ${job}`,
    style,
    head,
    foot: '',
    parts: [],
    body: render('shop-card', {
      head,
      job,
      given: given.map(valueView),
      big: big.map(({ label, value, note = '' }) => ({ label, note, ...lettering(value) })),
      quarters: quarters.map(({ mark, teeth, angle = '' }) => ({ mark, teeth, angle })),
      lines: lines.map(valueView),
      conventions,
      cautions,
      checks: shortCheckViews(checks),
    }),
  });
}
