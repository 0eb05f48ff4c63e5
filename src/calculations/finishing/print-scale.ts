import { InputError } from '../../diagnostics/errors.js';
import { printedLength } from '../../geometry/finishing/print-scale.js';
import { calculation, type Slip } from '../calculation.js';
import { mm } from '../found.js';
import { length, orElse } from '../quantity.js';
import { toldApart } from '../slips.js';

/** A printer further out than this is not printing at full size at all. */
const FURTHEST = 2;

const slips: Readonly<Record<string, Slip>> = {
  upsideDown: {
    of: 'printed',
    formula: 'L*b/q',
    says: 'You have the bar upside down. A short bar makes a small print.',
  },
  difference: {
    of: 'printed',
    formula: 'L + q - b',
    says: 'You took off what the bar has lost. A print shrinks in proportion.',
  },
  same: { of: 'printed', formula: 'L', says: 'That is the size it should have. The bar says otherwise.' },
};

export const printScale = calculation({
  name: 'print.scale',
  title: 'What a printer makes of a length, by a bar that was measured',
  given: {
    length: length('L', 'length as it should be', 0.01, 10_000),
    measured: length('q', 'what the bar measures', 0.1, 10_000),
    bar: orElse(length('b', 'what the bar should be', 1, 5000), 100),
  },
  found: {
    scale: { symbol: 'k', unit: '', name: 'scale of the print' },
    percent: { symbol: 'p', unit: '%', name: 'how far it is over; under 0 where it prints short' },
    printed: mm('y', 'the length as printed'),
    drawn: mm('w', 'what to draw, so that it prints right'),
  },
  refuse: ({ measured, bar }) => {
    if (measured > FURTHEST * bar || measured < bar / FURTHEST)
      throw new InputError(
        'measured',
        measured,
        `what a bar of ${bar} mm may print as, ${bar / FURTHEST} to ${FURTHEST * bar} mm`,
      );
  },
  work: (g) => printedLength(g.length, g.measured, g.bar),
  proofs: [
    { of: 'scale', formula: 'print-scale' },
    { of: 'percent', formula: 'print-percent' },
    { of: 'printed', formula: 'printed-length' },
    { of: 'drawn', formula: 'drawn-length' },
  ],
  working: ['k = q/b', 'p = 100*(k - 1)', 'y = L*k', 'w = L/k'],
  slips: (g, found) => toldApart(slips, found, { L: g.length, q: g.measured, b: g.bar }),
});
