import { describe, expect, it } from 'vitest';
import { point } from '../../src/figures/drafting/point.js';
import { Pen } from '../../src/figures/pen.js';
import { handout } from './class-wheel.js';
import { collisions } from './collisions.js';

const drawn = (draw: (pen: Pen) => void): string[] => {
  const pen = new Pen(handout);
  pen.text('label', point(0, 0));
  draw(pen);
  return collisions(pen.marks);
};

describe('collisions()', () => {
  it.each<[string, (pen: Pen) => void]>([
    ['a line through a label', (pen) => pen.line('dimension', point(-20, 0), point(20, 1))],
    ['a line that ends in a label', (pen) => pen.line('dimension', point(0, -20), point(0, 0))],
    ['a line within a label', (pen) => pen.line('dimension', point(-1, 0), point(1, 0))],
    ['a line that grazes a label', (pen) => pen.line('outline', point(-20, -1.45), point(20, -1.45))],
    ['an arc through a label', (pen) => pen.circle('fine', point(0, 10), 10)],
    ['a label on a label', (pen) => pen.text('other', point(3, 1))],
    ['a turned label on a label', (pen) => pen.text('other', point(1, 1), { turn: -90 })],
  ])('finds %s', (_, draw) => expect(drawn(draw).length).toBeGreaterThan(0));

  it.each<[string, (pen: Pen) => void]>([
    ['a line under a label', (pen) => pen.line('dimension', point(-20, 2), point(20, 2))],
    ['a slanting line past a corner', (pen) => pen.line('dimension', point(0, 6), point(9, 0))],
    ['a circle about a label', (pen) => pen.circle('outline', point(0, 0), 6)],
    ['a label beside a label', (pen) => pen.text('other', point(8, 0))],
  ])('lets %s be', (_, draw) => expect(drawn(draw)).toEqual([]));
});
