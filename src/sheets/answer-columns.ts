import type { ClassLine, ClassPart } from './class-model.js';
import type { ClassSetting } from './class-setting.js';
import { textWidth } from './text-width.js';

/** One answer of a lesson, for every line of a class. */
export interface Column {
  /** `16.3 (a)` */
  readonly number: string;
  /** Units, each with what it may be out: `mm ±0.01`. */
  readonly notes: readonly string[];
  /** One for each line; empty for a learner who was not asked this. */
  readonly cells: readonly string[];
  /** In mm, with the room beside it. */
  readonly width: number;
}

/** The answers of one lesson, in the order they are asked. */
export function answerColumns(
  lines: readonly ClassLine[],
  lesson: number,
  setting: ClassSetting,
): readonly Column[] {
  const asked = lines.map(({ lessons }) => new Map((lessons[lesson] ?? []).flatMap(answersOf)));
  const numbers = [...new Set(asked.flatMap((answers) => [...answers.keys()]))];
  return numbers.map((number) =>
    columnOf(
      number,
      asked.map((answers) => answers.get(number)),
      setting,
    ),
  );
}

function answersOf({ number, parts }: ClassLine['lessons'][number][number]): [string, ClassPart][] {
  return parts.map((part) => [part.letter === '' ? number : `${number} ${part.letter}`, part]);
}

function columnOf(
  number: string,
  parts: readonly (ClassPart | undefined)[],
  { letters, gap, answer: most }: ClassSetting,
): Column {
  const all = parts.filter((part) => part !== undefined);
  const units = byCount(all.map(({ unit }) => unit));
  // What all with one unit share stands at the head, once.
  const shared = new Map(units.map((unit) => [unit, sharedWithin(all.filter((part) => part.unit === unit))]));
  const cells = parts.map((part) => {
    if (!part) return '';
    const { answer, unit, within } = part;
    return [answer, unit !== units[0] && unit, within !== shared.get(unit) && within]
      .filter(Boolean)
      .join(' ');
  });
  const notes = units
    .map((unit) => [unit, shared.get(unit)].filter(Boolean).join(' '))
    .filter((note) => note !== '');
  const widest = Math.max(...[number, ...notes].map((text) => textWidth(text, letters, 600)), 0);
  const content = Math.max(...cells.map((text) => textWidth(text, letters)), 0);
  return { number, notes, cells, width: Math.max(widest, Math.min(most, content)) + gap };
}

/** Each once, the commonest first: that one goes without saying. */
function byCount(units: readonly string[]): string[] {
  const counts = new Map<string, number>();
  for (const unit of units) counts.set(unit, (counts.get(unit) ?? 0) + 1);
  return [...counts].sort((a, b) => b[1] - a[1]).map(([unit]) => unit);
}

function sharedWithin(parts: readonly ClassPart[]): string {
  const [first, ...others] = new Set(parts.map(({ within }) => within));
  return others.length === 0 ? (first ?? '') : '';
}
