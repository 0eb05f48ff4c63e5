import { isArc, type Path } from '../geometry/curves/path.js';
import { distance } from '../geometry/curves/point.js';
import { svgPath } from '../geometry/curves/svg-path.js';
import type { Outline, Shape } from '../reference/templates/template.js';

/** White about the outline, mm. */
const MARGIN = 2;

/**
 * An outline for a cutting machine: millimetres, paths only, nothing filled; the name is its title. Lines to cut are
 * in the group `cut`, the inner before the outer; lines to score or engrave are in `mark`.
 */
export function templateSvg({ name, cut, mark }: Outline): string {
  const { left, right, top, bottom } = extentOf([...cut, ...mark]);
  const size = [right - left + 2 * MARGIN, bottom - top + 2 * MARGIN].map(plain);
  const view = [plain(left - MARGIN), plain(top - MARGIN), ...size].join(' ');
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${size[0]}mm" height="${size[1]}mm" viewBox="${view}" fill="none" stroke="#000" stroke-width="0.1">`,
    `<title>${escaped(name)}</title>`,
    ...group('mark', mark),
    ...group('cut', cut),
    '</svg>',
    '',
  ].join('\n');
}

function group(id: string, shapes: readonly Shape[]): string[] {
  if (shapes.length === 0) return [];
  return [`<g id="${id}">`, ...shapes.map((shape) => `<path d="${svgPath(pathOf(shape))}"/>`), '</g>'];
}

/** A circle as two half turns, from its right. */
function pathOf(shape: Shape): Path {
  if (!('radius' in shape)) return shape;
  const { middle, radius } = shape;
  const right = { x: middle.x + radius, y: middle.y };
  const left = { x: middle.x - radius, y: middle.y };
  return {
    start: right,
    segments: [
      { to: left, centre: middle, turn: Math.PI },
      { to: right, centre: middle, turn: Math.PI },
    ],
  };
}

/** The room that shapes take on paper, y down; of an arc, that of its whole circle where it turns far. */
function extentOf(shapes: readonly Shape[]) {
  const places = shapes.flatMap((shape) => {
    const { start, segments } = pathOf(shape);
    return [
      start,
      ...segments.flatMap((segment) => {
        if (!isArc(segment) || Math.abs(segment.turn) < Math.PI / 3) return [segment.to];
        const { centre } = segment;
        const radius = distance(segment.to, centre);
        return [
          { x: centre.x - radius, y: centre.y - radius },
          { x: centre.x + radius, y: centre.y + radius },
        ];
      }),
    ];
  });
  const xs = places.map(({ x }) => x);
  const ys = places.map(({ y }) => -y);
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

/** A number as SVG has it, to a ten-thousandth. */
const plain = (value: number): string => String(Number(value.toFixed(4)) + 0);

const ENTITIES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;' };

const escaped = (text: string): string => text.replace(/[&<>]/g, (mark) => ENTITIES[mark] ?? mark);
