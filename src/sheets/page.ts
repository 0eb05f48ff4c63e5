import { classSettingOf } from './class-setting.js';
import { codePicture } from './code-mark.js';
import { cssString, shortened } from './css-string.js';
import type { SheetHead, SheetStyle } from './model.js';
import { paperOf } from './paper.js';
import { settingOf } from './setting.js';
import { templateSettingOf } from './template-setting.js';
import { render } from './templates.js';
import { wallSettingOf } from './wall-setting.js';

/** A part of a document with running heads of its own. */
export interface Part {
  /** Its class, and the name of its pages. */
  readonly page: string;
  /** Top left. */
  readonly head: string;
}

export interface Page {
  readonly kind:
    | 'handout'
    | 'problems'
    | 'key'
    | 'card'
    | 'cards'
    | 'class'
    | 'reference'
    | 'template'
    | 'book';
  readonly title: string;
  readonly style: SheetStyle;
  readonly head: SheetHead;
  /** Bottom left: on a problem sheet, whose it is. */
  readonly foot: string;
  /** A variant that stands at the foot of every page as a QR code as well. */
  readonly code?: string;
  readonly parts: readonly Part[];
  /** A wall sheet or a template whose paper lies on its side. */
  readonly turned?: boolean;
  readonly body: string;
}

/** The whole HTML of a document; all that it refers to is `benchleaf.css`, in its own folder. */
export function pageHtml(page: Page): string {
  return documentHtml(page, [paperCss(page), runningHeads(page)].join('\n'));
}

/** The same with running heads of its own. */
export function documentHtml(
  { kind, title, style, body }: Pick<Page, 'kind' | 'title' | 'style' | 'body'>,
  css: string,
): string {
  const html = render('page', {
    title,
    classes: `${kind} ${style.print} ${style.paper}`,
    css,
    body: withFractions(body),
  });
  // The faces have no narrow space, but theirs is a fifth of an em wide: what ISO 80000-1 asks before a unit.
  return html.replaceAll('\u202F', '\u00A0');
}

/** A card is half a page on its side, a whole one in large print, and lower on Letter; width in mm. */
const CARDS = {
  a4: { plain: { size: '210mm 148mm', width: 210 }, large: { size: 'A4 landscape', width: 297 } },
  letter: { plain: { size: '8.5in 5.5in', width: 215.9 }, large: { size: 'letter landscape', width: 279.4 } },
} as const;

/** The paper of a page, its margins as CSS has them, and the room between them in mm. */
function roomOf({ kind, style, turned = false }: Pick<Page, 'kind' | 'style' | 'turned'>) {
  if (kind === 'reference') return wallSettingOf(style, turned);
  if (kind === 'template') return templateSettingOf(style, turned);
  if (kind === 'class') return classSettingOf(style);
  if (kind === 'card') {
    const { size, width } = CARDS[style.paper][style.print];
    return { paper: size, margin: style.paper === 'a4' ? '6mm 8mm' : '5mm 8mm', width: width - 16 };
  }
  const { margin, maxWidth } = settingOf(style);
  return { paper: paperOf(style.paper).name, margin, width: maxWidth };
}

/** The text is as wide as the page has room for, so that it can be seen before printing whether anything is wider. */
export function paperCss(page: Pick<Page, 'kind' | 'style' | 'turned'>): string {
  const { paper, margin, width } = roomOf(page);
  return `@page { size: ${paper}; margin: ${margin}; } body { width: ${width}mm; }`;
}

/** Size of the running heads, pt, and what each may fill of the text's width; the style sheet gives a little more. */
const HEADS = { points: { plain: 9, large: 14 }, title: 0.6, course: 0.36, foot: 0.73 } as const;
const MM_PER_POINT = 25.4 / 72;

function runningHeads(page: Page): string {
  const {
    style,
    head: { course },
    foot,
    code,
    parts,
  } = page;
  const { width } = roomOf(page);
  const points = HEADS.points[style.print];
  const box = (place: string, content: string) =>
    `@${place} { font-size: ${points}pt; content: ${content}; }`;
  const string = (text: string, share: number) =>
    cssString(shortened(text, share * width, points * MM_PER_POINT));
  const all = [
    box('top-right', string(course, HEADS.course)),
    box('bottom-left', string(foot, HEADS.foot)),
    box('bottom-right', '"page " counter(page) " of " counter(pages)'),
    ...(code ? [`@bottom-right-corner { content: ${codePicture(code)}; }`] : []),
  ];
  const each = parts.map(
    ({ page: name, head }) =>
      `@page ${name} { ${box('top-left', string(head, HEADS.title))} } .${name} { page: ${name}; }`,
  );
  return parts.length === 0 ? '' : [`@page { ${all.join(' ')} }`, ...each].join('\n');
}

const FRACTIONS: Readonly<Record<string, string>> = {
  '⅛': '1⁄8',
  '⅜': '3⁄8',
  '⅝': '5⁄8',
  '⅞': '7⁄8',
  '⅓': '1⁄3',
  '⅔': '2⁄3',
};

/** The faces have ½ ¼ ¾ ready made; the others are built by the font from three signs. */
function withFractions(html: string): string {
  if (!/[⅛⅜⅝⅞⅓⅔]/.test(html)) return html;
  return html.replace(/<[^>]*>|[⅛⅜⅝⅞⅓⅔]/g, (piece) =>
    piece.startsWith('<') ? piece : `<span class="fraction">${FRACTIONS[piece]}</span>`,
  );
}
