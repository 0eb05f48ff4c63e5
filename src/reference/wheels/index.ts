import { addendumFactors } from './addendum-factors.js';
import { chordalTeeth } from './chordal-teeth.js';
import { pinionSizes } from './pinion-sizes.js';
import { pitches } from './pitches.js';
import { spans } from './spans.js';
import { wheelSizes } from './wheel-sizes.js';

export const wheelSheets = [wheelSizes, pinionSizes, addendumFactors, pitches, spans, chordalTeeth];
