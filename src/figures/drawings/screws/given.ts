import { z } from 'zod';
import { length as inWords } from '../../drafting/wording.js';
import type { FigureStyle } from '../../figure.js';
import { length, word } from '../../given.js';

/** How a thread is given to a figure: its form by the series, and its sizes as they were worked. */
export const threadGiven = {
  series: word('iso', 'whitworth', 'ba', 'me'),
  majorDiameter: length(0.3, 150),
  pitch: length(0.15, 12),
  designation: z.string().min(1).max(24).optional().describe('the name of the thread, 24 letters at most'),
};

/** What every figure of a thread asks of its numbers. */
export const isThread = (g: { majorDiameter: number; pitch: number }): boolean =>
  g.pitch <= g.majorDiameter / 2;

export const notThread = { path: ['pitch'], message: 'a pitch of half the diameter at most' };

/** A length with three decimals: threads are finer than wheels. */
export const fine = (mm: number, style: FigureStyle): string => inWords(mm, style, 3);

/** `M6`, or `thread` where there is no name. */
export const nameOf = (g: { designation?: string | undefined }): string => g.designation ?? 'thread';
