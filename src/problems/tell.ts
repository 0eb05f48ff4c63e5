import { roundTo, type UnitSystem } from '../units/format.js';
import { MM_PER_INCH } from '../units/length.js';
import { Fault, placed } from './fault.js';
import { Names } from './names.js';
import { replaced } from './replaced.js';
import type { ProblemDeclaration } from './schema.js';
import { measureOf } from './show.js';
import { parseStep } from './step.js';
import { subjectOf } from './subject.js';
import type { Workings } from './workings.js';

/**
 * The workings as the learner is told them: each value that is told is rounded to its step, by name and by symbol.
 *
 * @throws {Fault} an unknown name, or a step that cannot be read
 */
export function told(tell: ProblemDeclaration['tell'], workings: Workings, system: UnitSystem): Workings {
  let { values, symbols } = workings.names;
  for (const [name, text] of Object.entries(tell))
    placed(['tell', name], () => {
      const { value, unit, symbol } = subjectOf(name, workings);
      const step = parseStep(text, unit, system);
      if (typeof value !== 'number' || !step)
        throw new Fault(`cannot tell ${name} to ${JSON.stringify(text)}`, [], '', [
          'Tell a number to a step such as 0.01 mm or 0.001 in.',
        ]);
      const inches = measureOf(unit, system).label === 'in';
      const scale = inches ? MM_PER_INCH : 1;
      const rounded = Number((roundTo(value / scale / step.size, 0) * step.size * scale).toPrecision(13));
      values = replaced(values, name.split('.'), rounded) as typeof values;
      if (symbol && symbols[symbol] === value) symbols = { ...symbols, [symbol]: rounded };
    });
  return { ...workings, names: new Names(values, symbols) };
}
