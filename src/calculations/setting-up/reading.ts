import { InputError } from '../../diagnostics/errors.js';
import { readingOf } from '../../geometry/setting-up/reading.js';
import { derived } from '../../handbook/record.js';
import { countedInParts } from '../../handbook/setting-up/reading.js';
import { calculation } from '../calculation.js';
import { mm } from '../found.js';
import { length, whole } from '../quantity.js';

const smallest = derived('counted in the smallest parts');

export const scaleReading = calculation({
  name: 'scale.reading',
  title: 'Reading of a main scale with its vernier or thimble',
  given: {
    divisions: whole('n', 'divisions of the main scale that are passed', 0, 4000),
    division: length('t', 'one division of the main scale, or the pitch of the screw', 0.01, 10),
    line: whole('k', 'line in step, or at the datum line', 0, 199),
    lines: whole('N', 'lines that share one division', 2, 200),
  },
  found: {
    mainPart: mm('a', 'read from the main scale'),
    linePart: mm('b', 'read from vernier or thimble'),
    reading: mm('x', 'reading'),
  },
  refuse: ({ line, lines }) => {
    if (line >= lines) throw new InputError('line', line, `less than the ${lines} lines`);
  },
  work: ({ divisions, division, line, lines }) => ({
    mainPart: readingOf(divisions, division, 0, lines),
    linePart: readingOf(0, division, line, lines),
    reading: readingOf(divisions, division, line, lines),
  }),
  proofs: [
    {
      of: 'mainPart',
      source: smallest,
      value: (g) => countedInParts(g.divisions, g.division, 0, g.lines),
      within: 1e-9,
    },
    {
      of: 'linePart',
      source: smallest,
      value: (g) => countedInParts(0, g.division, g.line, g.lines),
      within: 1e-9,
    },
    {
      of: 'reading',
      source: smallest,
      value: (g) => countedInParts(g.divisions, g.division, g.line, g.lines),
      within: 1e-9,
    },
  ],
  working: ['a = n*t', 'b = k*t/N', 'x = a + b'],
  slips: {
    inStep: {
      of: 'reading',
      formula: '(n + k)*t',
      says: 'You read the main scale where the lines are in step. Read it at the nought.',
    },
    left: { of: 'reading', formula: 'n*t', says: 'You left out the vernier or the thimble.' },
  },
});
