import type { LabelOptions, Pen } from '../pen.js';

/** A sentence as lines no wider than so many mm, broken between words. */
export function wrapped(pen: Pen, sentence: string, width: number, options: LabelOptions = {}): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of sentence.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && pen.textSize(longer, options).width > width) {
      lines.push(line);
      line = word;
    } else {
      line = longer;
    }
  }
  return [...lines, line];
}
