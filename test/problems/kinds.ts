import { openKits } from '../../src/kit/open.js';
import type { Kit } from '../../src/kit/schema.js';
import { drawProblem, type Wish } from '../../src/problems/draw.js';
import { Fault } from '../../src/problems/fault.js';
import type { ProblemKind } from '../../src/problems/kind.js';
import type { Part, Problem } from '../../src/problems/problem.js';
import { problemSchema } from '../../src/problems/schema.js';

export const [metric, inch] = openKits(['lessons/kits/harrow-lane.yaml', 'lessons/kits/mill-yard.yaml']) as [
  Kit,
  Kit,
];

/** A problem as the front matter of a lesson declares it, drawn. */
export function draw(
  declared: object,
  seed = 'A',
  { kit = metric, wish = {}, fade }: { kit?: Kit; wish?: Wish; fade?: ProblemKind['fade'] } = {},
): Problem {
  const kind = { name: 'one', declared: problemSchema.parse(declared), ...(fade ? { fade } : {}) };
  return drawProblem(kind, seed, { kit, units: kit.units }, wish);
}

/** Many of one kind. */
export const many = (declared: object, count: number, options: Parameters<typeof draw>[2] = {}): Problem[] =>
  Array.from({ length: count }, (_, seed) => draw(declared, `${seed}`, options));

/** The first part of a problem, which has one. */
export function firstPart({ parts }: Problem): Part {
  const [part] = parts;
  if (!part) throw new Error('a problem without parts');
  return part;
}

export function faultOf(declared: object): Fault {
  try {
    draw(declared);
  } catch (error) {
    if (error instanceof Fault) return error;
    throw error;
  }
  throw new Error('there was no fault');
}

/** A wheel blank, and two workings that follow from it. */
export const blank = {
  calculation: 'wheel.blank',
  with: { convention: 2.76 },
  vary: { teeth: '50..90', module: '0.5..1.0 by 0.05 mm' },
  works: {
    half: { formula: 'outsideDiameter/2', check: '2*half = outsideDiameter', unit: 'mm' },
    left: { formula: 'half - 1', check: 'left + 1 = half', unit: 'mm' },
  },
  ask: 'How big?',
  answer: { to: '0.01 mm', accept: '0.01 mm' },
};

/** Readings of a crank that goes round. */
export const tally = {
  vary: { moved: '7..30', circle: '[39, 41, 43]' },
  works: {
    reading: {
      each: { tooth: '1..6' },
      formula: 'tooth*moved - circle*floor(tooth*moved/circle)',
      check: 'round((tooth*moved - reading)/circle)*circle + reading = tooth*moved',
      title: 'spaces past the start',
    },
  },
  ask: 'Which is missing?',
  lines: 'reading',
};
