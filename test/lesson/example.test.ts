import { expect, it } from 'vitest';
import { workedExample } from '../../src/lesson/example.js';
import { runWorkings } from '../../src/problems/workings.js';
import { kits } from './lessons.js';

it('tells a module in millimetres on a sheet in inches, whichever rule it came by', () => {
  const works = {
    size: { formula: 'across/teeth', check: ['size*teeth = across'], unit: 'mm', symbol: 'm' },
    step: { formula: 'across*pi/teeth', check: ['step*teeth = across*pi'], unit: 'mm' },
  };
  const workings = runWorkings(works as never, { across: 48, teeth: 60 }, kits[0], {
    lengths: new Set(['across']),
    absentMay: true,
  });
  expect(workedExample('size', '', workings, 'inch').found[0]?.value).toBe('0.80\u202Fmm');
  expect(workedExample('step', '', workings, 'inch').found[0]?.value).toBe('0.099\u202Fin');
});
