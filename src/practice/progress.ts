import { asText, csv } from '../exchange/csv.js';
import type { UnitSystem } from '../units/format.js';
import type { Outcome } from './remark.js';

/** An answer that was given. */
export interface Try {
  /** When, in the time of the machine: `2026-11-25T20:15:00.000Z`. */
  readonly at: string;
  /** `16.3`, with the letter of its part: `16.3 (b)`. */
  readonly problem: string;
  readonly variant: string;
  readonly typed: string;
  readonly outcome: Outcome;
}

/** What stands in the boxes of a problem, and how it was taken. */
export interface Sheet {
  /** The code of its numbers. */
  readonly code: string;
  /** Part by part; empty where nothing was typed. */
  readonly typed: readonly string[];
  /** Parts that are right. */
  readonly right: readonly number[];
  /** Whether the working was looked at. */
  readonly shown: boolean;
}

/** All that a page keeps of one learner and one lesson. */
export interface Progress {
  readonly code: string;
  readonly units: UnitSystem;
  /** By the problem's name; those with the numbers of the page's own code may be missing. */
  readonly sheets: Readonly<Record<string, Sheet>>;
  readonly tries: readonly Try[];
}

/** A browser keeps a few megabytes: the oldest go first. */
const MOST_TRIES = 5000;

/** The start: nothing answered. */
export const begun = (code: string, units: UnitSystem): Progress => ({ code, units, sheets: {}, tries: [] });

/** The boxes of a problem as they stand. */
export const sheetOf = ({ sheets, code }: Progress, name: string): Sheet =>
  sheets[name] ?? { code, typed: [], right: [], shown: false };

/** With the boxes of a problem changed. */
export function changed(progress: Progress, name: string, change: Partial<Sheet>): Progress {
  const sheet = { ...sheetOf(progress, name), ...change };
  return { ...progress, sheets: { ...progress.sheets, [name]: sheet } };
}

/** With an answer to a part of a problem. */
export function tried(
  progress: Progress,
  { name, part, parts }: { readonly name: string; readonly part: number; readonly parts: number },
  one: Try,
): Progress {
  const { typed, right } = sheetOf(progress, name);
  const all = Array.from({ length: parts }, (_, at) => (at === part ? one.typed : (typed[at] ?? '')));
  const others = right.filter((at) => at !== part);
  return {
    ...changed(progress, name, {
      typed: all,
      right: one.outcome === 'right' ? [...others, part].sort() : others,
    }),
    tries: [...progress.tries, one].slice(-MOST_TRIES),
  };
}

/** What was kept, as it was read back; undefined where it is not what a page keeps. */
export function readProgress(text: string): Progress | undefined {
  try {
    const kept = JSON.parse(text) as Progress;
    const sound =
      typeof kept.code === 'string' &&
      (kept.units === 'mm' || kept.units === 'inch') &&
      Object.values(kept.sheets).every(
        ({ code, typed, right }) => typeof code === 'string' && Array.isArray(typed) && Array.isArray(right),
      ) &&
      kept.tries.every(({ typed, problem }) => typeof typed === 'string' && typeof problem === 'string');
    return sound ? kept : undefined;
  } catch {
    return undefined; // somebody else's, or cut short
  }
}

/** Every answer that was given, in a file for a spreadsheet. */
export function progressCsv(lesson: string, { tries }: Progress): string {
  const rows = tries.map(({ at, problem, variant, typed, outcome }) => [
    at,
    lesson,
    problem,
    variant,
    asText(typed),
    OUTCOMES[outcome],
  ]);
  return csv([['when', 'lesson', 'problem', 'code', 'answer', 'result'], ...rows]);
}

const OUTCOMES: Readonly<Record<Outcome, string>> = {
  right: 'right',
  follows: 'follows from an earlier slip',
  slip: 'slip',
  near: 'nearly',
  wrong: 'not right',
  unread: 'could not be read',
};
