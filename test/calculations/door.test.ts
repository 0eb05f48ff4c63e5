import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/calculations/catalogue.js';
import { workInFull } from '../../src/calculations/work.js';
import { leftSide } from '../../src/calculations/working.js';
import { evaluateFormula, symbolsOf } from '../../src/formula/formula.js';
import { formulas } from '../../src/handbook/formulas.js';
import { CommandError, InputError, listCalculations, work } from '../../src/index.js';
import { cpuTime } from '../cpu-time.js';
import { sensible } from './sensible/index.js';

const nasty = [
  -4,
  0,
  1e9,
  1e300,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  '',
  'abc',
  '1/0',
  'NaN',
  '1e999',
  null,
  {},
  [],
  true,
  [[]],
];

/** Far more than anybody has a use for. */
const long = [
  Array(1e6).fill(15),
  '15,'.repeat(3e5),
  '9'.repeat(1e6),
  `${'1 '.repeat(5e5)}mm`,
  Array(1e5).fill([15]),
];

/** Nought, or less than nought, where the value may be so: stopping nothing short is a fair question. */
const isFair = (name: string, key: string, value: unknown): boolean =>
  (value === 0 || value === -4) &&
  catalogue.find((one) => one.name === name)?.given[key]?.read(value) !== undefined;

describe.each(catalogue.map((one) => one.name))('%s', (name) => {
  const good = sensible[name] ?? {};

  it('proves every value it finds', () => {
    const { checks, found } = work(name, good);
    expect(new Set(checks.map((check) => check.of))).toEqual(
      new Set(Object.keys(found).filter((key) => key !== 'reason')),
    );
    expect(checks.every((check) => check.agrees)).toBe(true);
  });

  it('proves no value by one that is proven by it', () => {
    const { calculation } = workInFull(name, good);
    const keyOf = new Map(Object.entries(calculation.found).map(([key, { symbol }]) => [symbol ?? '', key]));
    const leansOn = (key: string): string[] =>
      calculation.proofs
        .filter((proof) => proof.of === key && 'formula' in proof)
        .flatMap((proof) => ('formula' in proof ? symbolsOf(formulas[proof.formula].formula) : []))
        .flatMap((symbol) => keyOf.get(symbol) ?? []);
    const reaches = (key: string, seen: readonly string[]): boolean =>
      leansOn(key).some((next) => seen.includes(next) || reaches(next, [...seen, next]));
    expect(Object.keys(calculation.found).filter((key) => reaches(key, [key]))).toEqual([]);
  });

  it('has no slip that lands on the right answer', () => {
    const { slips, symbols, found } = workInFull(name, good);
    for (const [id, slip] of Object.entries(slips)) {
      const wrong = evaluateFormula(slip.formula, symbols);
      const right = found[slip.of] as number;
      expect(Math.abs(wrong - right), id).toBeGreaterThan(Math.min(0.01, 0.02 * Math.abs(right)));
    }
  });

  it('shows a working that comes out at what was found', () => {
    const { steps, symbols } = workInFull(name, good);
    for (const step of steps) {
      const symbol = typeof step === 'string' ? leftSide(step) : '';
      // The stack's division is shown before it is cut down to whole blanks.
      if (typeof step !== 'string' || symbols[symbol] === undefined || name === 'setup.stack') continue;
      expect(evaluateFormula(step, symbols), step).toBeCloseTo(symbols[symbol] as number, 8);
    }
  });

  it('refuses an unknown name, and each missing value', () => {
    expect(() => work(name, { ...good, nosuch: 1 })).toThrow(InputError);
    for (const key of Object.keys(good)) {
      const { [key]: _, ...rest } = good;
      expect(() => work(name, rest), key).toThrow(InputError);
    }
  });

  it('refuses what is far too long, and never ponders over a refusal', () => {
    for (const key of Object.keys(good))
      for (const value of [...long, ...nasty]) {
        if (isFair(name, key, value)) continue;
        // One try in ten is enough: memory is cleared up at times.
        let quickest = Number.POSITIVE_INFINITY;
        for (let tries = 0; tries < 10 && quickest >= 50; tries++) {
          const start = cpuTime();
          expect(() => work(name, { ...good, [key]: value }), key).toThrow(InputError);
          quickest = Math.min(quickest, cpuTime() - start);
        }
        expect(quickest, `${key}: ms`).toBeLessThan(50);
      }
  });

  it('refuses bad values in one line that says what is accepted', () => {
    for (const key of Object.keys(good))
      for (const value of nasty) {
        if (isFair(name, key, value)) continue;
        let message = '';
        try {
          work(name, { ...good, [key]: value });
        } catch (error) {
          if (!(error instanceof InputError)) throw error;
          message = error.message;
        }
        expect(message, `${key} = ${String(value)}`).toMatch(
          /^\w+: .{1,80} is not accepted; give [^\n]{3,160}$/,
        );
      }
  });
});

it('refuses a call that names no calculation, or gives no values', () => {
  expect(() => work(undefined as never, {})).toThrow(CommandError);
  expect(() => work({} as never, {})).toThrow(CommandError);
  for (const given of [undefined, null, 'x', [1]])
    expect(() => work('wheel.blank', given as never)).toThrow(InputError);
});

/** Every number in a value, however deep. */
function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}

/** Does something within a second; tried again when it took longer, as when memory is cleared up. */
function soon<T>(work: () => T, tries = 3): T {
  const start = cpuTime();
  const result = work();
  if (cpuTime() - start < 1000) return result;
  if (tries > 1) return soon(work, tries - 1);
  throw new Error('took more than a second, three times');
}

it('20,000 random inputs: an answer both routes agree on, or a refusal', () => {
  const names = catalogue.map((one) => one.name);
  const value = fc.oneof(
    fc.integer({ min: -5, max: 400 }),
    fc.double({ min: 0, max: 120, noNaN: true }),
    fc.double(),
    fc.constantFrom(...nasty, '1/32in', '15,16,17', '2.76', 'module', 'leaves', '3.00'),
    fc.array(fc.integer({ min: 0, max: 70 }), { maxLength: 8 }),
    fc.string(),
  );
  let answered = 0;
  fc.assert(
    fc.property(
      fc.constantFrom(...names),
      fc.array(value, { minLength: 8, maxLength: 8 }),
      fc.nat(),
      (name, values, pick) => {
        const given: Record<string, unknown> = { ...sensible[name] };
        const keys = Object.keys(catalogue.find((one) => one.name === name)?.given ?? {});
        keys.forEach((key, place) => {
          if ((pick >> place) & 1) given[key] = values[place];
        });
        try {
          const { found } = soon(() => work(name, given));
          answered++;
          expect(numbersIn(found).filter((one) => !Number.isFinite(one))).toEqual([]);
        } catch (error) {
          if (!(error instanceof InputError))
            throw new Error(`${name} ${JSON.stringify(given)}: ${(error as Error).message}`);
        }
      },
    ),
    { numRuns: 20_000 },
  );
  expect(answered).toBeGreaterThan(2_000);
});

it('an unknown calculation is refused with the nearest name', () => {
  expect(() => work('wheel.blnk', {})).toThrow(CommandError);
  expect(() => work('constructor', {})).toThrow(CommandError);
});

it('listCalculations names every given and found value', () => {
  const blank = listCalculations().find((one) => one.name === 'wheel.blank');
  expect(blank?.given.map((one) => one.key)).toEqual([
    'teeth',
    'leaves',
    'module',
    'convention',
    'depthForm',
  ]);
  expect(blank?.found.map((one) => one.key)).toContain('outsideDiameter');
});

it('the addendum factor agrees for every wheel that drives a pinion no larger than itself', () => {
  for (let leaves = 5; leaves <= 100; leaves++)
    for (let teeth = Math.max(6, leaves); teeth <= 1000; teeth += 7)
      work('wheel.addendumFactor', { teeth, leaves });
  expect(() => work('wheel.addendumFactor', { teeth: 7, leaves: 34 })).toThrow(/at most as many/);
});

describe('what the trade says must hold', () => {
  const blank = (teeth: number, module: number) =>
    work('wheel.blank', { teeth, module, convention: '2.76' }).found.outsideDiameter as number;

  it('one more tooth is one more module of blank; twice the module is twice the blank', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 6, max: 400 }),
        fc.double({ min: 0.1, max: 5, noNaN: true }),
        (teeth, module) => {
          expect(blank(teeth + 1, module) - blank(teeth, module)).toBeCloseTo(module, 8);
          expect(blank(teeth, 2 * module)).toBeCloseTo(2 * blank(teeth, module), 8);
        },
      ),
    );
  });
});
