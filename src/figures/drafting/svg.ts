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

/**
 * A path so many times round a place. It is written once, then turned into a group, and the group is turned on. Ids
 * are made of what they name, so that two that are the same are alike, whatever other figures stand on the page.
 */
export function roundElements(d: string, width: number, about: Point, count: number): string[] {
  const name = `round-${hash(`${d} ${width} ${count}`)}`;
  const group = largestDivisor(count);
  const place = about.x === 0 && about.y === 0 ? '' : ` ${n(about.x)} ${n(about.y)}`;
  const turned = (id: string, times: number, step: number) =>
    Array.from({ length: times - 1 }, (_, i) => {
      const angle = Number((step * (i + 1)).toFixed(6));
      return `<use href="#${id}" transform="rotate(${angle}${place})"/>`;
    });
  const path = pathElement(d, width, [], undefined).replace(
    '<path',
    `<path id="${name}-1" stroke-linecap="round"`,
  );
  if (group === 1) return [path, ...turned(`${name}-1`, count, 360 / count)];
  return [
    `<g id="${name}">${path}${turned(`${name}-1`, group, 360 / count).join('')}</g>`,
    ...turned(name, count / group, (360 * group) / count),
  ];
}

/** The largest divisor of a count that is no larger than its square root. */
function largestDivisor(count: number): number {
  let divisor = Math.floor(Math.sqrt(count));
  while (count % divisor !== 0) divisor--;
  return divisor;
}

/** A short name for a text: FNV-1a in 32 bits, twice over, forward and backward. */
function hash(text: string): string {
  const of = (letters: readonly string[]) => {
    let value = 0x811c9dc5;
    for (const letter of letters) value = Math.imul(value ^ letter.charCodeAt(0), 0x01000193) >>> 0;
    return value.toString(36);
  };
  const letters = [...text];
  return of(letters) + of(letters.reverse());
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

/** Elements of another drawing, moved to a place; with a window, in a view that cuts off what lies beyond it. */
export function placed(elements: readonly string[], { x, y }: Point, window: Extent | undefined): string[] {
  if (!window) return [`<g transform="translate(${n(x)} ${n(y)})">`, ...elements, '</g>'];
  const size = `width="${n(window.right - window.left)}" height="${n(window.bottom - window.top)}"`;
  const view = `${n(window.left - x)} ${n(window.top - y)} ${n(window.right - window.left)} ${n(window.bottom - window.top)}`;
  return [
    `<svg x="${n(window.left)}" y="${n(window.top)}" ${size} viewBox="${view}" overflow="hidden">`,
    ...elements,
    '</svg>',
  ];
}

/** The whole drawing, one element a line, sized in millimetres. No ids: many figures stand on one page. */
export function svgElement(
  box: Extent,
  label: string,
  elements: readonly string[],
  printer = { x: 1, y: 1 },
): string {
  const [across, down] = [box.right - box.left, box.bottom - box.top];
  const [width, height] = [n(across / printer.x), n(down / printer.y)];
  const uneven = printer.x === 1 && printer.y === 1 ? '' : ' preserveAspectRatio="none"';
  const view = `${n(box.left)} ${n(box.top)} ${n(across)} ${n(down)}`;
  const face = 'font-family="Benchleaf Figures, sans-serif"';
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="${view}"${uneven} ` +
      `role="img" aria-label="${escaped(label)}" ${face} fill="none" stroke="#000" stroke-linejoin="round">`,
    ...elements,
    '</svg>',
  ].join('\n');
}

const ENTITIES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

const escaped = (text: string): string => text.replace(/[&<>"]/g, (mark) => ENTITIES[mark] ?? mark);
