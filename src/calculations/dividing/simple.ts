import { simpleIndexing } from '../../geometry/dividing/indexing.js';
import { counted } from '../../units/words.js';
import { calculation, type Step } from '../calculation.js';
import { spacesInWords } from '../moves.js';
import { byTrial, type IndexGiven, noCircle, possibleByTrial, trial } from './by-trial.js';
import { circles, divisions, possible, ratio, reason, turns } from './givens.js';
import { turnsForOne } from './turns-in-words.js';

/** Arc seconds. */
const TURN = 1_296_000;

export const simple = calculation({
  name: 'dividing.simple',
  title: 'Simple indexing',
  given: { divisions, ratio, circles },
  found: {
    possible,
    turns,
    settings: { unit: 'spaces', name: 'spaces, on each circle that serves' },
    reason,
  },
  work: (g) => {
    const { turns, settings } = simpleIndexing(g.divisions, g.ratio, g.circles);
    const possible = settings.length > 0;
    return possible ? { possible, turns, settings } : { possible, turns, settings, reason: noCircle(g) };
  },
  proofs: [
    possibleByTrial,
    { of: 'turns', source: byTrial, value: (g) => trial(g).turns },
    {
      of: 'settings',
      source: byTrial,
      value: (g) => trial(g).settings,
    },
  ],
  working: (g, found) => [{ say: turnsForOne(g.divisions, g.ratio) }, ...movesOf(g, found)],
  cutWrong: {
    // Spaces on the first circle that serves. The module is only the scale of the drawing.
    settings: (g, { turns, settings: [first] }, wrong) =>
      first && {
        teeth: g.divisions,
        leaves: 8,
        module: 0.8,
        stepErrorArcSeconds:
          TURN * ((turns * first.circle + wrong) / (g.ratio * first.circle) - 1 / g.divisions),
      },
  },
});

interface Found {
  readonly turns: number;
  readonly settings: readonly { readonly holes: number; readonly circle: number }[];
}

function movesOf(g: IndexGiven, { turns, settings }: Found): Step[] {
  if (settings.length === 0) return [{ say: `Not possible: ${noCircle(g)}.` }];
  if (settings.every(({ holes }) => holes === 0))
    return [{ say: `${counted(turns, 'whole turn')}, no spaces: any circle serves.` }];
  return settings.map(({ holes, circle }) => ({
    say: `${spacesInWords(turns, holes)} on the ${circle}-hole circle. Check: ${g.divisions} × ${turns * circle + holes} = ${g.ratio} × ${circle}.`,
  }));
}
