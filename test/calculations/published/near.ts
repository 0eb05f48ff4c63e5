import { expect, it } from 'vitest';
import { work } from '../../../src/index.js';

/** A published number that a calculation must come to, within so much. */
export function near(
  name: string,
  given: Record<string, unknown>,
  key: string,
  value: number,
  within: number,
): void {
  it(`${name} ${JSON.stringify(given)}: ${key} = ${value}`, () =>
    expect(Math.abs((work(name, given).found[key] as number) - value)).toBeLessThanOrEqual(within));
}
