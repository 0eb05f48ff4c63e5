import type { WrongCut } from '../calculations/cutting/given.js';
import { isMoves } from '../calculations/moves.js';
import { NoValueError } from '../formula/formula.js';
import type { UnitSystem } from '../units/format.js';
import type { Answer } from './answer.js';
import { placed } from './fault.js';
import { Names } from './names.js';
import type { SlipLine } from './problem.js';
import type { PartDeclaration } from './schema.js';
import { inWords, measureOf } from './show.js';
import type { Source, Subject } from './subject.js';

interface DeclaredSlip {
  readonly formula: string;
  readonly says: string;
  readonly makes?: string | undefined;
}

/** What prints as nought, in one number or in several: 0.00, 0° 0′. */
const isNothing = (text: string): boolean => /0/.test(text) && !/[1-9]/.test(text);

/** One slip worked: the number it gives, and its line on the key. */
export interface WorkedSlip {
  readonly id: string;
  readonly value: number;
  readonly line: SlipLine;
}

/**
 * The slips of an answer, those of its calculation and those of the lesson; one that has no value with these
 * numbers is left out.
 *
 * @throws {Fault} a formula of the lesson that cannot be worked
 */
export function slipsOf(
  subject: Subject,
  answer: Answer,
  declared: PartDeclaration['slips'],
  names: Names,
  system: UnitSystem,
): WorkedSlip[] {
  if (typeof subject.value !== 'number' && !isMoves(subject.value)) return [];
  const { from, unit } = subject;
  const measure = measureOf(unit, system);
  const own =
    from.kind === 'found' ? Object.entries(from.full.slips).filter(([, slip]) => slip.of === from.key) : [];
  const worked = (id: string, { formula, says, makes }: DeclaredSlip, known: Names): WorkedSlip[] => {
    try {
      const value = known.evaluate(formula);
      const gives = answer.write(value);
      if (isNothing(gives) && !isNothing(answer.text)) return []; // nobody writes down nought
      const teeth = makes === undefined ? '' : ` ${teethMade(known.evaluate(makes), system)}`;
      const cut = from.kind === 'found' ? cutWrong(from, value) : undefined;
      const line = { gives, says: says + teeth, shown: measure.shown(value), ...(cut ? { cut } : {}) };
      return [{ id, value, line }];
    } catch (error) {
      if (error instanceof NoValueError) return [];
      throw error;
    }
  };
  // A calculation's slips are in its own symbols, whatever other workings stand beside it.
  const itsOwn = new Names({}, from.kind === 'found' ? from.full.symbols : {});
  return [
    ...own.filter(([id]) => !Object.hasOwn(declared, id)).flatMap(([id, slip]) => worked(id, slip, itsOwn)),
    ...Object.entries(declared).flatMap(([id, slip]) =>
      slip === false ? [] : placed(['slips', id], () => worked(id, slip, names)),
    ),
  ];
}

/** The wheel that is cut with a wrong value in place of the one found. */
function cutWrong({ full, key }: Extract<Source, { kind: 'found' }>, wrong: number): WrongCut | undefined {
  return full.calculation.cutWrong?.[key]?.(full.values as never, full.found, wrong);
}

/** What the wheel would show. */
function teethMade(teeth: number, system: UnitSystem): string {
  if (Math.abs(teeth - Math.round(teeth)) < 1e-9)
    return `The wheel would come out even, with ${Math.round(teeth)} teeth: count them.`;
  // 6.97 teeth are not 7: that would be a sound wheel.
  const told = [1, 2, 3].map((places) => Number(teeth.toFixed(places))).find((one) => !Number.isInteger(one));
  return `The wheel would close at ${inWords(told ?? teeth, '', system)} teeth: the last one is spoilt.`;
}
