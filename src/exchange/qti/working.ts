import type { WorkingStep } from '../../calculations/working.js';
import { lettersOf } from '../../problems/expected.js';
import type { Part } from '../../problems/problem.js';
import type { PortableOption } from '../../sheets/portable.js';
import { mathsStep } from '../../sheets/portable-step.js';
import { formatted } from './maths.js';
import { type Child, element, type Xml } from './xml.js';

/** A line of working. */
export function stepLine(step: WorkingStep): Xml {
  if ('say' in step) return element('p', {}, step.say);
  const { mathml, result } = mathsStep(step);
  return element('p', {}, formatted(mathml), ` = ${result}`);
}

/** An answer as the key prints it: of letters, what they stand for as well. */
export function answerWords({ answer, expects }: Part, options: readonly PortableOption[]): Child[] {
  const chosen = lettersOf(expects)
    .map((letter) => options.find((one) => one.letter === letter)?.xhtml ?? '')
    .map((xhtml) => ONE_LINE.exec(xhtml)?.[1])
    .filter((text) => text !== undefined);
  const joined = chosen.flatMap((text, at) => [at === 0 ? ' ' : ', ', formatted(text)]);
  return [element('strong', {}, answer), ...joined];
}

/** A single paragraph, as it stands in a line of others. */
const ONE_LINE = /^<p>((?:(?!<p>|<img)[^])*)<\/p>$/;
