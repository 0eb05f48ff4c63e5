import type { UnitSystem } from '../units/format.js';
import { MM_PER_INCH, parseLength } from '../units/length.js';

/** A step that answers are rounded to or accepted within, in the unit that is shown. */
export interface Step {
  readonly size: number;
  readonly kind: 'plain' | 'percent' | 'minute' | 'second';
}

const PLAIN = /^(?<size>\d+(?:\.\d+)?|\.\d+)\s*(?<of>%|°|minutes?|′|seconds?|″|[a-z/ ]*)$/i;

/**
 * Reads a step: `0.01 mm or 0.001 in`, `1 minute`, `5 %`, `0.5`, `1 rev/min`. Where a length is stated in
 * millimetres only, sheets in inches take a tenth of the figure, as the trade does: 0.01 mm, 0.001 in.
 *
 * @param unit of the value, as the catalogue has it
 * @returns undefined when it cannot be read
 */
export function parseStep(text: string, unit: string, system: UnitSystem): Step | undefined {
  const [first = '', second] = text.split(/\s+or\s+/);
  if (unit === 'mm' && !/%\s*$/.test(first)) {
    const asked = system === 'inch' ? (second ?? first) : first;
    const mm = parseLength(asked);
    if (mm === undefined || !(mm > 0)) return undefined;
    const inInches = /(?:in|"|″)$/.test(asked.trim());
    if (system === 'mm') return inInches ? undefined : { size: mm, kind: 'plain' };
    return { size: dustless(inInches ? mm / MM_PER_INCH : mm / 10), kind: 'plain' };
  }
  const found = PLAIN.exec(first.trim())?.groups;
  if (!found) return undefined;
  const size = Number(found.size);
  const of = found.of ?? '';
  if (!(size > 0) || !Number.isFinite(size)) return undefined;
  if (of === '%' && unit !== '%') return { size, kind: 'percent' };
  if (/^(minute|′)/i.test(of)) return { size: size / 60, kind: 'minute' };
  if (/^(second|″)/i.test(of)) return { size: size / 3600, kind: 'second' };
  return { size, kind: 'plain' };
}

const dustless = (size: number) => Number(size.toPrecision(9));
