import type { Fault } from '../../geometry/cutting/faults.js';

/** What each fault looks like and where it comes from, in shop words; no part of one is part of another. */
const WORDS: Readonly<Record<Fault, string>> = {
  overrun: 'The last cuts ran past the first and spoiled its teeth: every move was too long.',
  uneven: 'The teeth are uneven in more than one place: more than one move went wrong.',
  slip: 'One tooth is out, and the closing tooth is out by as much the other way: one move slipped and was never put back.',
  slipPutBack:
    'One tooth and its neighbour are out, one thick and one thin, and the rest are right: one move slipped and the next put it back.',
  unfinished:
    'The last tooth has room for more teeth in it: moves are still to be made, or some were left out.',
  closingThick: 'The last tooth is fat: every move was a little short, and the shortage gathered there.',
  closingThin:
    'The last tooth is thin or gone: every move was a little long, and the excess was taken from it.',
  otherCount:
    'Even teeth all round, but not the number that was wanted: the move was right for another count.',
  lean: 'The teeth lean: the cutter is off the centre line of the work.',
  deep: 'The spaces are too deep for this wheel.',
  shallow: 'The spaces are too shallow: there is depth still to cut.',
  wideSpaces:
    'The spaces are wide and every tooth is thin at the pitch line: look at the cutter’s module and the depth.',
  narrowSpaces:
    'The spaces are narrow and every tooth is thick at the pitch line: look at the cutter’s module and the depth.',
  runOut: 'The tips are broad on one side of the wheel and sharp on the other: the blank ran out of true.',
  flats: 'There are broad flats on all the tips, and the depth is right: the blank is small.',
  sharp: 'The tips are sharper than they should be, and the depth is right: the blank is large.',
};

const CLEAN = 'The teeth are alike all round and stand upright.';

/** The faults of a wheel, each in a sentence; one sentence too when there are none. */
export const verdictOf = (faults: readonly Fault[]): string =>
  faults.length === 0 ? CLEAN : faults.map((fault) => WORDS[fault]).join(' ');

/** The faults that a verdict names: the closed list, 1 named, 0 not. */
export const faultsNamed = (verdict: string): Record<string, number> =>
  Object.fromEntries(Object.entries(WORDS).map(([fault, words]) => [fault, verdict.includes(words) ? 1 : 0]));
