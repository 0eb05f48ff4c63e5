import { directSettings, notchSequence } from '../../geometry/dividing/direct.js';
import { directByTrial, stopsByCounting } from '../../handbook/dividing/direct-trial.js';
import { derived } from '../../handbook/record.js';
import { counted } from '../../units/words.js';
import { calculation } from '../calculation.js';
import { whole, wholes } from '../quantity.js';
import { possible, reason } from './givens.js';

const everyStep = derived('every step tried on every plate');

interface DirectGiven {
  readonly divisions: number;
  readonly notches: readonly number[];
}

const none = ({ divisions }: DirectGiven) =>
  `${divisions} goes into none of these plates a whole number of times`;
const byTrial = (g: DirectGiven) => directByTrial(g.divisions, g.notches);

export const direct = calculation({
  name: 'dividing.direct',
  title: 'Direct dividing from a notched or drilled plate',
  given: {
    divisions: whole('N', 'divisions', 2, 1000),
    notches: wholes('plates, each by its count of notches or holes', 2, 1000),
  },
  found: {
    possible,
    plate: { symbol: 'H', unit: 'notches', name: 'plate used' },
    step: { symbol: 's', unit: 'notches', name: 'notches to move for one division' },
    sequence: { unit: '', name: 'notch for each division, the first in notch 0' },
    plates: { unit: '', name: 'every plate that serves, with its step' },
    reason,
  },
  work: (g) => {
    const plates = directSettings(g.divisions, g.notches);
    const [first] = plates;
    if (!first) return { possible: false, plate: null, step: null, sequence: [], plates, reason: none(g) };
    return { possible: true, ...first, sequence: notchSequence(g.divisions, first.step), plates };
  },
  proofs: [
    { of: 'possible', source: everyStep, value: (g) => byTrial(g).length > 0 },
    { of: 'plate', source: everyStep, value: (g) => byTrial(g)[0]?.plate ?? null },
    { of: 'step', source: everyStep, value: (g) => byTrial(g)[0]?.step ?? null },
    {
      of: 'sequence',
      source: derived('notches counted round the plate, every so many marked'),
      value: (g) => {
        const [first] = byTrial(g);
        return first ? stopsByCounting(g.divisions, first.step) : [];
      },
    },
    { of: 'plates', source: everyStep, value: byTrial },
  ],
  working: (g, found) =>
    found.possible
      ? [
          's = H/N',
          {
            say: `Stops: ${found.sequence.slice(0, 6).join(', ')}${g.divisions > 6 ? ' …' : ''}; after ${counted(g.divisions, 'move')} the plate is back at notch 0.`,
          },
        ]
      : [{ say: `Not possible: ${none(g)}.` }],
  slips: (_, found) =>
    found.possible
      ? {
          fencePost: {
            of: 'step',
            formula: 's + 1',
            says: 'Count moves from notch to notch. The notch you start in is nought, not one.',
          },
          short: {
            of: 'step',
            formula: 's - 1',
            says: 'You counted the notch the detent stands in as one: the move is one short.',
          },
          plateAlone: {
            of: 'step',
            formula: 'H',
            says: 'That is the whole plate, all the way round; share its notches between the divisions.',
          },
        }
      : {},
});
