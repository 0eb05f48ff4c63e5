import type { Part, Problem } from '../../problems/problem.js';
import type { PortablePart, PortableProblem } from '../../sheets/portable.js';
import { letterOf } from '../../sheets/problem-marks.js';
import { formatted } from './maths.js';
import { answerWords, stepLine } from './working.js';
import { element, type Xml } from './xml.js';

/** A problem worked with other numbers, before the one that is asked; the last line says that it begins. */
export function exampleBlocks(example: Problem, { ask, parts }: PortableProblem): Xml[] {
  return [
    element(
      'div',
      { class: 'worked-example' },
      heading('Worked with other numbers, before you do this one'),
      ...(ask.xhtml === '' ? [] : [formatted(ask.xhtml)]),
      ...parts.flatMap((asked, at) => partOf(example.parts[at] as Part, letterOf(at, example), asked)),
    ),
    heading('Now yours'),
  ];
}

function partOf(part: Part, letter: string, { xhtml, options }: PortablePart): Xml[] {
  return [
    ...(letter === '' ? [] : [heading(letter)]),
    ...[xhtml, ...options.map(lettered)].filter((text) => text !== '').map(formatted),
    ...part.method.map(stepLine),
    element('p', {}, 'Answer: ', ...answerWords(part, options)),
  ];
}

/** An option with its letter before it. */
export const lettered = ({ letter, xhtml }: PortablePart['options'][number]): string =>
  xhtml.replace(/^<p>/, `<p><strong>${letter}</strong> `);

const heading = (text: string): Xml => element('p', {}, element('strong', {}, text));
