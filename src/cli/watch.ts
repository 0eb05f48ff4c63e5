import { basename } from 'node:path';
import type { Made } from '../pack/make.js';
import type { Watch } from '../pack/watch.js';
import { counted } from '../units/words.js';
import type { Streams } from './streams.js';
import { faultText, madeText } from './text.js';

/** Tells a person how a watch goes; a quiet one tells of faults only. */
export function watchTold(
  { out, err }: Streams,
  quiet: boolean,
): Pick<Watch, 'quiet' | 'made' | 'watching' | 'fault' | 'ended'> {
  const say = quiet ? () => undefined : out;
  return {
    quiet,
    made: (made, folder, milliseconds) =>
      say(milliseconds === undefined ? madeText(made, folder) : againText(made, milliseconds)),
    watching: (files, templates) =>
      say(`Watching ${counted(files, 'file')}${templates ? ' and the templates' : ''}. Ctrl-C ends.\n`),
    fault: (error) => {
      err(faultText(error));
      say('Nothing was made. What was made before stays; save the file again when it is mended.\n');
    },
    // The terminal has written ^C, and what comes next is to stand on a line of its own.
    ended: () => process.stdout.isTTY && out('\n'),
  };
}

/** What was made again, a line each, and how long it took. */
function againText({ documents }: Made, milliseconds: number): string {
  const seconds = `${(milliseconds / 1000).toFixed(2)} s`;
  if (documents.length === 0) return `Saved; nothing on the pages has changed. ${seconds}\n`;
  const alone = documents.length === 1;
  const lines = documents.map(({ file, pages }) => {
    const told = [...(pages === 0 ? [] : [counted(pages, 'page')]), ...(alone ? [seconds] : [])];
    return [file, ...(told.length === 0 ? [] : [told.join(', ')])].join('  ');
  });
  const reports = documents.flatMap(({ file, reports: told = [] }) =>
    told.map((one) => `${basename(file)}: ${one}`),
  );
  const all = alone ? lines : [...lines, `${counted(lines.length, 'document')}, ${seconds}`];
  return [...reports, ...all].map((line) => `${line}\n`).join('');
}
