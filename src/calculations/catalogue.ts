import { CommandError } from '../diagnostics/errors.js';
import { nearest } from '../diagnostics/suggest.js';
import type { Calculation } from './calculation.js';
import { cutting } from './cutting/index.js';
import { dividing } from './dividing/index.js';
import { finishing } from './finishing/index.js';
import { involute } from './involute/index.js';
import { screws } from './screws/index.js';
import { settingUp } from './setting-up/index.js';
import { trains } from './trains/index.js';
import { trigonometry } from './trigonometry/index.js';
import { wheels } from './wheels/index.js';

/** Every calculation, in the order of the trade. */
export const catalogue: readonly Calculation[] = [
  ...trains,
  ...wheels,
  ...involute,
  ...dividing,
  ...settingUp,
  ...cutting,
  ...finishing,
  ...screws,
  ...trigonometry,
];

/**
 * The calculation of a name.
 *
 * @throws {CommandError} when there is none, with the nearest name
 */
export function findCalculation(name: string): Calculation {
  if (typeof name !== 'string')
    throw new CommandError('a calculation is named by a text, such as wheel.blank');
  const found = catalogue.find((one) => one.name === name);
  if (found) return found;
  const near = nearest(
    name,
    catalogue.map((one) => one.name),
  );
  throw new CommandError(`no calculation is called ${JSON.stringify(name.slice(0, 60))}`, [
    near ? `Did you mean ${near}?` : 'See benchleaf list calculations.',
  ]);
}

/** A calculation as `benchleaf list calculations --json` shows it. */
export interface CalculationEntry {
  readonly name: string;
  readonly title: string;
  readonly given: readonly {
    key: string;
    symbol?: string;
    unit: string;
    name: string;
    accepts: string;
    default?: unknown;
    optional?: true;
  }[];
  readonly found: readonly { key: string; symbol?: string; unit: string; name: string }[];
}

/** All calculations, with what each is given and finds. */
export function listCalculations(): CalculationEntry[] {
  return catalogue.map(({ name, title, given, found }) => ({
    name,
    title,
    given: Object.entries(given).map(([key, { read: _, fallback, ...shown }]) => ({
      key,
      ...shown,
      ...(fallback === undefined ? {} : { default: fallback }),
    })),
    found: Object.entries(found).map(([key, quantity]) => ({ key, ...quantity })),
  }));
}
