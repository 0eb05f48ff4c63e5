import { onBearing, point } from '../drafting/point.js';
import type { Pen } from '../pen.js';

/** Where everything on a plate goes, mm on paper. */
export interface PlateLayout {
  readonly circle: number;
  /** Radius of the circle in use. */
  readonly radius: number;
  /** Radius of one hole. */
  readonly hole: number;
  /** One hole in so many is numbered. */
  readonly numbered: number;
  /** The hole the pin goes to; 0 for none. */
  readonly goal: number;
  /** Whether the goal's number must stand outside that of hole 0. */
  readonly staggered: boolean;
  readonly rings: readonly { readonly holes: number; readonly radius: number }[];
  readonly plate: number;
}

/** Least distance from one hole to the next, from one circle of holes to the next, and most radius of a hole, mm. */
const HOLE_PITCH = 2.6;
const RING_PITCH = 4;
const HOLE = 1.1;

/** Large lettering wants a coarser drawing. */
export const coarseness = (pen: Pen): number => Math.max(1, pen.style.labelSize / 4);

/** Most holes that are numbered every one; a fuller circle has every fifth, or as many as there is room for. */
const NUMBERED_EACH = 30;
const STEPS: readonly number[] = [5, 10, 20, 50];

export function layOut(pen: Pen, circle: number, goal: number, others: readonly number[]): PlateLayout {
  const size = pen.style.labelSize;
  const figure = pen.textSize(String(circle - 1));
  const coarse = coarseness(pen);
  const ringPitch = RING_PITCH * coarse;
  // What must lie outside the circle: its numbers, in two rows where the goal crowds hole 0, and the larger circles.
  const band = (rows: number): number => rows * figure.height + 1.6 * size;
  const most =
    pen.style.maxWidth / 2 -
    band(goal === 0 ? 1 : 2) -
    ringPitch * others.filter((n) => n > circle).length -
    4;
  const numberRoom = (every: number): number =>
    ((figure.width + 0.5 * size) * Math.ceil(circle / every)) / 2 / Math.PI - figure.height;
  const inner = others.filter((holes) => holes < circle);
  const outer = others.filter((holes) => holes > circle);
  const wanted = (every: number): number =>
    Math.max(
      20 * coarse,
      numberRoom(every),
      (HOLE_PITCH * coarse * circle) / 2 / Math.PI,
      14 * coarse + ringPitch * (inner.length + 1),
    );
  const steps = circle <= NUMBERED_EACH ? [1, ...STEPS] : STEPS;
  const numbered = steps.find((every) => numberRoom(every) <= most) ?? circle;
  // Never so small that the inner circles meet the hub; a page too narrow for that is refused.
  const radius = Math.max(8 * coarse + ringPitch * (inner.length + 1), Math.min(wanted(numbered), most));
  const chord = 2 * (radius + size) * Math.sin((Math.PI * goal) / circle);
  const staggered = goal > 0 && chord < figure.width + 0.5 * size;
  const numberBand = band(staggered ? 2 : 1);
  const rings = [
    ...inner.map((holes, i) => ({ holes, radius: radius - ringPitch * (inner.length - i) })),
    ...outer.map((holes, i) => ({ holes, radius: radius + numberBand + ringPitch * i + 1 })),
  ];
  const outermost = Math.max(radius + numberBand, ...rings.map((ring) => ring.radius + 2));
  const pitch = 2 * radius * Math.sin(Math.PI / circle);
  return {
    circle,
    radius,
    hole: Math.min(HOLE * coarse, pitch * 0.32),
    numbered,
    goal,
    staggered,
    rings,
    plate: outermost + 0.5,
  };
}

/** Edge, hub, and every hole of every circle; the pin in hole 0, a ring about the hole it goes to. */
export function drawPlate(pen: Pen, layout: PlateLayout): void {
  const { circle, radius, hole, goal, rings, plate } = layout;
  const centre = point(0, 0);
  pen.circle('outline', centre, plate);
  for (const ring of rings) {
    const small = Math.min(0.6 * hole + 0.1, (ring.radius * Math.sin(Math.PI / ring.holes)) / 2);
    for (let i = 0; i < ring.holes; i++) {
      pen.circle('fine', onBearing(ring.radius, (2 * Math.PI * i) / ring.holes), small);
    }
  }
  for (let i = 0; i < circle; i++) {
    const place = onBearing(radius, (2 * Math.PI * i) / circle);
    pen.circle('fine', place, hole, i === 0 ? 'ink' : undefined);
    if (i === goal && goal > 0) pen.circle('fine', place, hole * 0.35, 'ink');
  }
  numberHoles(pen, layout);
}

function numberHoles(pen: Pen, layout: PlateLayout): void {
  const { circle, radius, hole, goal, numbered, staggered } = layout;
  const size = pen.style.labelSize;
  // Hole 0 and the goal always have their numbers; another has, unless it would crowd one of them.
  const apart = (pen.textSize(String(circle - 1)).width + 0.4 * size) / (radius + size);
  const near = (i: number, other: number): boolean =>
    (2 * Math.PI * Math.min(Math.abs(i - other), circle - Math.abs(i - other))) / circle < apart;
  const shown = Array.from({ length: circle }, (_, i) => i).filter(
    (i) =>
      i === 0 || i === goal || (i % numbered === 0 && (numbered === 1 || !(near(i, 0) || near(i, goal)))),
  );
  for (const i of shown) {
    const text = String(i);
    const bearing = (2 * Math.PI * i) / circle;
    const box = pen.textSize(text);
    // Far enough out that the nearest corner of the figures clears the hole.
    const reach = (box.width * Math.abs(Math.sin(bearing)) + box.height * Math.abs(Math.cos(bearing))) / 2;
    const further = i === goal && staggered ? box.height + 0.2 * size : 0;
    const out = radius + hole + 0.45 * size + reach + further;
    pen.text(text, onBearing(out, bearing), { weight: i === 0 || i === goal ? 600 : 400 });
  }
}
