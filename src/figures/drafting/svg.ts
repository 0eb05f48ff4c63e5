import { SUBSCRIPT, spans, type Weight } from './label.js';
import type { Extent } from './marks.js';
import { decimal as n } from './number.js';
import type { Point } from './point.js';

const FILLS = { paper: '#fff', ink: '#000' } as const;

type Fill = keyof typeof FILLS | undefined;

function paint(width: number, dash: readonly number[], fill: Fill): string {
  const dashes = dash.length > 0 ? ` stroke-dasharray="${dash.map(n).join(' ')}"` : '';
  const stroke = width > 0 ? ` stroke-width="${n(width)}"` : ' stroke="none"';
  return `${fill ? ` fill="${FILLS[fill]}"` : ''}${stroke}${dashes}`;
}

export function pathElement(d: string, width: number, dash: readonly number[], fill: Fill): string {
  return `<path d="${d}"${paint(width, dash, fill)}/>`;
}

export function circleElement(
  c: Point,
  radius: number,
  width: number,
  dash: readonly number[],
  fill: Fill,
): string {
  return `<circle cx="${n(c.x)}" cy="${n(c.y)}" r="${n(radius)}"${paint(width, dash, fill)}/>`;
}

export function textElement(
  label: string,
  base: Point,
  how: { anchor: 'start' | 'middle' | 'end'; weight: Weight; size: number; turn: number; about: Point },
): string {
  const { anchor, weight, size, turn, about } = how;
  const place = `x="${n(base.x)}" y="${n(base.y)}" font-size="${n(size)}"`;
  const style = `${anchor === 'start' ? '' : ` text-anchor="${anchor}"`}${weight === 400 ? '' : ` font-weight="${weight}"`}`;
  const turned = turn === 0 ? '' : ` transform="rotate(${n(turn)} ${n(about.x)} ${n(about.y)})"`;
  return `<text ${place}${style}${turned} fill="#000" stroke="none">${lettering(label, size)}</text>`;
}

/** The letters of a label; a subscript drops, and what follows it comes back up. */
function lettering(label: string, size: number): string {
  const drop = SUBSCRIPT.drop * size;
  let down = 0;
  return spans(label)
    .map(({ text, low }) => {
      const shift = (low ? drop : 0) - down;
      down += shift;
      if (shift === 0) return escaped(text);
      const small = low ? ` font-size="${n(SUBSCRIPT.size * size)}"` : '';
      return `<tspan dy="${n(shift)}"${small}>${escaped(text)}</tspan>`;
    })
    .join('');
}

/** The whole drawing, one element a line, sized in millimetres. No ids: many figures stand on one page. */
export function svgElement(box: Extent, label: string, elements: readonly string[]): string {
  const width = n(box.right - box.left);
  const height = n(box.bottom - box.top);
  const view = `${n(box.left)} ${n(box.top)} ${width} ${height}`;
  const face = 'font-family="Benchleaf Figures, sans-serif"';
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="${view}" ` +
      `role="img" aria-label="${escaped(label)}" ${face} fill="none" stroke="#000" stroke-linejoin="round">`,
    ...elements,
    '</svg>',
  ].join('\n');
}

const ENTITIES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

const escaped = (text: string): string => text.replace(/[&<>"]/g, (mark) => ENTITIES[mark] ?? mark);
