import { formatNumber } from '../../units/format.js';
import { MM_PER_INCH } from '../../units/length.js';
import type { Worked } from '../desk.js';
import { type Column, type Figure, figures } from '../sheet.js';
import type { ListedSeries } from './threads.js';

/** The head of the pitches of a series, as people know them: mm, or threads to the inch. */
export const pitchColumn = ({ inch }: ListedSeries): Column =>
  inch ? figures('Threads', 'an inch') : figures('Pitch', 'mm');

/** The pitch of a thread, as its series has it. */
export const pitchOf = (thread: Worked, { inch }: ListedSeries): Figure =>
  inch
    ? thread.figure('pitch', (mm) => formatNumber(MM_PER_INCH / Number(mm), 0))
    : thread.number('pitch', 2);
