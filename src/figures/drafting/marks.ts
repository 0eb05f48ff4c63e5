import type { Point } from './point.js';

/** The room a line of text takes: its four corners, in order. */
export interface LabelBox {
  readonly text: string;
  readonly corners: readonly Point[];
}

/** A drawn line as points, with its width in mm. */
export interface Ink {
  readonly width: number;
  readonly points: readonly Point[];
}

/** Where everything of a drawing lies. */
export interface Marks {
  readonly labels: readonly LabelBox[];
  readonly ink: readonly Ink[];
}

export interface Extent {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The least upright rectangle around all marks. */
export function extentOf({ labels, ink }: Marks): Extent {
  const extent = { left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity };
  const include = ({ x, y }: Point, margin: number): void => {
    extent.left = Math.min(extent.left, x - margin);
    extent.right = Math.max(extent.right, x + margin);
    extent.top = Math.min(extent.top, y - margin);
    extent.bottom = Math.max(extent.bottom, y + margin);
  };
  for (const { corners } of labels) for (const corner of corners) include(corner, 0);
  for (const { points, width } of ink) for (const place of points) include(place, width / 2);
  return extent;
}
