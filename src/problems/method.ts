import { leftSide, showStep, stepsTo, systemOf, type WorkingStep } from '../calculations/working.js';
import type { UnitSystem } from '../units/format.js';
import { MM_PER_INCH } from '../units/length.js';
import { placed } from './fault.js';
import { namesIn, renamed } from './names.js';
import { numbersOfSides, sidesInWords } from './relation.js';
import type { Row, Trial } from './run.js';
import { inWords } from './show.js';
import { type Subject, subjectOf } from './subject.js';
import { BARE, type Workings } from './workings.js';

/**
 * The method line of an answer: the lesson's own formula, or the working that found it, with its numbers in.
 *
 * @throws {Fault} for a name that is not known
 */
export function methodOf(
  subject: Subject,
  own: string | undefined,
  workings: Workings,
  system: UnitSystem,
): WorkingStep[] {
  if (own !== undefined)
    return placed(['method'], () => [formulaStep(own, subject.symbol, subject.unit, workings, system)]);
  const { from } = subject;
  if (from.kind === 'drawn') return [];
  if (from.kind === 'found') {
    const { full } = from;
    const steps = stepsTo(subject.symbol || from.key, full.steps);
    const sentences = full.steps.filter((step) => typeof step !== 'string');
    return (steps.length > 0 ? steps : sentences).map((step) =>
      showStep(step, { values: full.symbols, units: workings.units }, system),
    );
  }
  const { run } = from;
  switch (run.kind) {
    case 'formula':
      return [
        ...leadingTo(run.declared.formula, workings, system),
        formulaStep(run.declared.formula, subject.symbol || subject.name, subject.unit, workings, system),
      ];
    case 'row':
      return [rowStep(run, subject, workings, system)];
    case 'series':
      return run.rows.map((row) => rowStep(row, subject, workings, system));
    case 'decision':
      return compared(run.declared.decide, workings, system);
    case 'cases':
      return compared(run.declared.cases[run.value]?.when ?? [], workings, system);
    case 'ranking':
      return run.ranked.flatMap(({ name }) =>
        methodOf(subjectOf(name, workings), undefined, workings, system),
      );
    case 'among':
      return run.tried.map((trial) => ({
        say: `${inWords(trial.tried, subject.unit, system)}: ${tellingOf(trial, run.where, workings, system)}.`,
      }));
  }
}

/** A row of a series: its left-hand side is the name of the whole. */
function rowStep(
  row: Row,
  { symbol, name, unit }: Subject,
  workings: Workings,
  system: UnitSystem,
): WorkingStep {
  const left = symbol || (name.split('.')[0] ?? name);
  return formulaStep(row.declared.formula, left, unit, { ...workings, names: row.names }, system);
}

/** Relations with their numbers in, and the working of what they name. */
function compared(relations: readonly string[], workings: Workings, system: UnitSystem): WorkingStep[] {
  return [
    ...relations.flatMap((relation) => leadingTo(relation, workings, system)),
    ...relations.map((relation) => ({
      say: `${relationInWords(relation)}: ${numbersOf(relation, workings, system)}.`,
    })),
  ];
}

/** The working of each found value that a formula names. */
function leadingTo(formula: string, workings: Workings, system: UnitSystem): WorkingStep[] {
  return namesIn(formula).flatMap((name) => {
    const { from, symbol } = subjectOf(name, workings);
    if (from.kind !== 'found' || !symbol) return [];
    const symbols = { values: from.full.symbols, units: workings.units };
    return stepsTo(symbol, from.full.steps).map((step) => showStep(step, symbols, system));
  });
}

/** A lesson's own formula as a step: its names become symbols, or short words where they have none. */
export function formulaStep(
  formula: string,
  symbol: string,
  unit: string,
  workings: Workings,
  system: UnitSystem,
): WorkingStep {
  const values: Record<string, number> = {};
  const units: Record<string, string> = {};
  const meanings = new Map<string, string>();
  const about = (name: string) =>
    Object.hasOwn(workings.names.symbols, name)
      ? { symbol: name, unit: workings.units[name] ?? '' }
      : subjectOf(name, workings);
  const right = formula.slice(formula.indexOf('=') + 1).trim();
  const symbols = namesIn(right).map((name) => about(name).symbol);
  const text = renamed(right, (name) => {
    const { symbol: own, unit: its } = about(name);
    // Two wheels have each their d_a: they are told apart by their own names.
    const shared = own !== '' && symbols.filter((one) => one === own).length > 1;
    const shown = shared
      ? unlike(name.split('.')[0] ?? name, name, meanings)
      : own || unlike(shortName(name), name, meanings);
    meanings.set(shown, name);
    values[shown] = workings.names.number(name);
    units[shown] = its;
    return shown;
  });
  const left = leftSide(formula) || symbol;
  if (left) units[left] = unit;
  return showStep(left ? `${shortName(left)} = ${text}` : text, { values, units }, system);
}

/** A word for a name that no other name of the formula has: `circle`, and then `circle_2`. */
function unlike(word: string, name: string, meanings: ReadonlyMap<string, string>): string {
  let said = word;
  for (let next = 2; meanings.has(said) && meanings.get(said) !== name; next++) said = `${word}_${next}`;
  return said;
}

/** `settings.0.holes` is holes, `blank.outsideDiameter` is outsideDiameter. */
function shortName(name: string): string {
  return name.split('.').findLast((word) => !/^\d+$/.test(word)) ?? name;
}

const SIGNS: readonly (readonly [RegExp, string])[] = [
  [/\^2/g, '²'],
  [/\bpi\b/g, 'π'],
  [/\bsqrt\(/g, '√('],
  [/\ba(?=(?:sin|cos|tan)d?\()/g, 'arc'],
  [/(?<=sin|cos|tan)d\(/g, '('],
  [/abs\(([^()]*)\)/g, '|$1|'],
  [/<=/g, '≤'],
  [/>=/g, '≥'],
  [/!=/g, '≠'],
  [/\s*\*\s*/g, ' × '],
  [/(?<=\s)-(?=\s)/g, '−'],
];

/** A relation as it is read aloud: `measured ≤ outside diameter`. */
export function relationInWords(relation: string): string {
  const said = renamed(relation, (name) => spoken(shortName(name)));
  return SIGNS.reduce((text, [sign, word]) => text.replace(sign, word), said);
}

/**
 * The numbers of a relation. On sheets in inches they are in inches where the relation holds in inches as it stands;
 * where a module or a constant of millimetres is in it, they are said to be in millimetres.
 */
export function numbersOf(
  relation: string,
  workings: Workings,
  system: UnitSystem,
  names = workings.names,
): string {
  const lengths = namesIn(relation).filter((name) => {
    const symbol = Object.hasOwn(names.symbols, name) ? name : subjectOf(name, { ...workings, names }).symbol;
    const unit = Object.hasOwn(names.symbols, name)
      ? workings.units[name]
      : subjectOf(name, { ...workings, names }).unit;
    return unit === 'mm' && systemOf(symbol, 'inch') === 'inch';
  });
  if (system === 'mm' || lengths.length === 0) return sidesInWords(relation, names);
  const inches = names.with(new Map(lengths.map((name) => [name, names.number(name) / MM_PER_INCH])));
  const scaled = numbersOfSides(relation, inches);
  const same = numbersOfSides(relation, names).every(
    (side, place) => Math.abs(side / MM_PER_INCH - (scaled[place] ?? 0)) < 1e-9 * Math.max(1, Math.abs(side)),
  );
  return same ? `${sidesInWords(relation, inches)}, in inches` : `${sidesInWords(relation, names)}, in mm`;
}

/** `outsideDiameter` is read aloud as outside diameter. */
function spoken(name: string): string {
  return name.replace(/(?<=[a-z])[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}

/** What became of one that was tried: the numbers that decided, or how far its own working came. */
function tellingOf(
  { names, serves, full }: Trial,
  where: readonly string[],
  workings: Workings,
  system: UnitSystem,
): string {
  const tried = { ...workings, names, runs: new Map(workings.runs).set(BARE, { kind: 'calculation', full }) };
  const compared = where.filter((relation) => /[<>=]/.test(relation));
  if (compared.length === 0) {
    const [first] = full.steps;
    const sum = typeof first === 'object' ? first.say.replace(/^[^:]*: |\.$/g, '') : '';
    return `${sum ? `${sum}; ` : ''}${serves ? 'possible' : 'not possible'}`;
  }
  const numbers = compared.map(
    (relation) => `${relationInWords(relation)}, ${numbersOf(relation, tried, system)}`,
  );
  return `${numbers.join('; ')}: ${serves ? 'serves' : 'does not serve'}`;
}
