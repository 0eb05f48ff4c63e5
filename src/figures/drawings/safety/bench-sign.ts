import { z } from 'zod';
import { fitting } from '../../drafting/scale.js';
import { defineFigure } from '../../figure.js';
import { word } from '../../given.js';
import { Pen } from '../../pen.js';
import { forbid } from './forbid.js';
import { chuckKey, emery, goggles, guard } from './things.js';

/** What is drawn, what it says to those who hear it, and whether it is struck through. */
const SIGNS = {
  emery: { draw: emery, never: true, says: 'Never: a strip of emery held by hand round turning work.' },
  'chuck-key': { draw: chuckKey, never: true, says: 'Never: a key left in the chuck.' },
  guard: { draw: guard, never: false, says: 'A guard over the cutter, down to the work.' },
  eyes: { draw: goggles, never: false, says: 'A face with goggles on.' },
} as const;
type Sign = keyof typeof SIGNS;

/** A picture for the wall, told at a glance; what must not be is ringed and struck through. */
export const benchSign = defineFigure({
  name: 'bench-sign',
  title: 'A sign for the bench',
  given: z.strictObject({ sign: word(...(Object.keys(SIGNS) as [Sign, ...Sign[]])) }),
  draw({ sign }, style) {
    const { draw, never, says } = SIGNS[sign];
    const pen = new Pen(style);
    // As tall as some lines of lettering, so that it grows with the print.
    const radius = 5.6 * style.labelSize;
    draw(pen, radius);
    if (never) forbid(pen, 1.28 * radius);
    return fitting(style, pen.finish(says, 'not to scale'));
  },
});
