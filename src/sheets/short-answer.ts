import type { Expected, ExpectedNumber } from '../problems/expected.js';
import type { Part } from '../problems/problem.js';
import { counted } from '../units/words.js';

/** An answer cut down to what is compared while marking. */
export interface ShortAnswer {
  /** Without its unit. */
  readonly answer: string;
  readonly unit: string;
  /** `±0.01`; empty where nothing else is taken, or the answer is no number. */
  readonly within: string;
}

/** The short form of a part's answer: `50.21`, `1 turn 2/28, 3/42`, `not possible`, `C`. */
export function shortAnswer({ answer, unit, expects }: Part): ShortAnswer {
  if (expects.kind === 'moves') return { answer: movesOf(expects), unit: '', within: '' };
  const [first] = expects.kind === 'numbers' ? expects.each : [expects];
  if (first?.kind !== 'number') return { answer, unit: '', within: '' };
  const bare = answer.split(', ').map((one) => withoutUnit(one, unit));
  return { answer: bare.join(', '), unit, within: withinOf(first) };
}

function withoutUnit(answer: string, unit: string): string {
  return unit !== '' && answer.endsWith(unit) ? answer.slice(0, -unit.length).trimEnd() : answer;
}

/** Spaces over the circle, as a fraction of a turn is written: `1 turn 2/28, 3/42`. */
function movesOf({ turns, moves }: Extract<Expected, { kind: 'moves' }>): string {
  if (moves.length === 0) return 'not possible';
  const whole = turns === 0 ? [] : [counted(turns, 'turn')];
  const some = moves.filter(({ holes }) => holes > 0).map(({ holes, circle }) => `${holes}/${circle}`);
  return [...whole, some.join(', ')].filter((piece) => piece !== '').join(' ');
}

/** Whole steps, for an answer is rounded before it is judged. */
function withinOf({ step, within, angle }: ExpectedNumber): string {
  const steps = step === 0 ? 0 : Math.floor(within / step + 0.01);
  if (steps === 0) return '';
  if (angle !== undefined) {
    const seconds = Math.round(steps * step * 3600);
    return seconds % 60 === 0 ? `±${seconds / 60}′` : `±${seconds}″`;
  }
  return `±${Number((steps * step).toPrecision(9))}`;
}
