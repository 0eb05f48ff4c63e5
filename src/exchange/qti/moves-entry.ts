import { movesInWords } from '../../calculations/moves.js';
import type { ExpectedMoves } from '../../problems/expected.js';
import { answerLine, box, type Entry, isMapped, mappedDeclaration } from './entry.js';
import { any, isLike } from './expressions.js';
import { impossibleForms, moveForms, movePattern } from './move-forms.js';
import { element } from './xml.js';

const LENGTH = 40;
const HOW =
  'Write spaces and circle, such as 2 on 9, after any whole turns: 1 and 2 on 9. Or write: not possible.';

/** A movement of the crank in words, of which the usual ways to write it are accepted. */
export function movesEntry({ turns, moves }: ExpectedMoves, id: string): Entry {
  const [first] = moves;
  const [correct = ''] = impossibleForms;
  const accepted = new Set(first ? moves.flatMap((move) => moveForms(turns, move)) : impossibleForms);
  return {
    declarations: [mappedDeclaration(id, first ? movesInWords(turns, [first]) : correct, accepted)],
    body: [answerLine(box(id, LENGTH)), element('p', {}, HOW)],
    right: any([isMapped(id), ...moves.map((move) => isLike(id, movePattern(turns, move)))]),
    slip: ({ shown }) =>
      first && shown !== undefined && Number.isInteger(shown) && shown >= 0
        ? isLike(id, movePattern(turns, { ...first, holes: shown }))
        : undefined,
  };
}
