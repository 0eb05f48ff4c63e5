import type { Expected } from '../../src/problems/expected.js';
import { classLine } from '../../src/sheets/class-line.js';
import type { ClassLine, ClassSet } from '../../src/sheets/class-model.js';
import { head, lesson, problems } from './class-lessons.js';

const MOVES: Expected = {
  kind: 'moves',
  turns: 0,
  moves: [
    { holes: 10, circle: 15 },
    { holes: 12, circle: 18 },
  ],
};
const lessons = [lesson(), lesson({ number: 16, name: '16-simple-indexing', title: 'Simple indexing' })];
/** As the fixtures are, but for a movement, which is kept as one. */
const asked = problems.map((problem) => ({
  ...problem,
  parts: problem.parts.map((part) =>
    part.answer.startsWith('possible') ? { ...part, expects: MOVES } : part,
  ),
}));
const LONG = 'Maximiliana Wilhelmina Constantia Featherstonehaugh-Cholmondeley-Marjoribanks II';

/** A class of so many, one of them with the longest name there may be. */
export function classOf(count: number, more: Partial<ClassLine> = {}): ClassSet {
  const sheet = {
    head,
    variant: '7KQ-2M4-X',
    lessons: lessons.map((one) => ({ lesson: one, problems: asked })),
  };
  const lines = Array.from({ length: count }, (_, place) => ({
    ...classLine(sheet, {
      seat: String(place + 1),
      learner: place === 4 ? LONG : `Zoë Müller-Żółć ${place + 1}`,
      version: '',
    }),
    ...more,
  }));
  return { head, variant: '8FJ-1B1-4', lessons, lines };
}

export const STYLES = {
  'A4, plain': { paper: 'a4', units: 'mm', print: 'plain' },
  'A4, large': { paper: 'a4', units: 'mm', print: 'large' },
  'Letter, plain': { paper: 'letter', units: 'mm', print: 'plain' },
  'Letter, large': { paper: 'letter', units: 'mm', print: 'large' },
} as const;
