import { inv } from '../../geometry/involute/involute.js';
import { spanOver, spansThatServe, usualSpan } from '../../geometry/involute/span.js';
import { involuteByArea } from '../../handbook/involute/involute-tables.js';
import { spanByTrial } from '../../handbook/involute/trials.js';
import { derived } from '../../handbook/record.js';
import { calculation } from '../calculation.js';
import { mm } from '../found.js';
import { optional, whole } from '../quantity.js';
import {
  flanksOf,
  type InvoluteGiven,
  module,
  pressureAngle,
  radians,
  refuseOutside,
  teeth,
} from './gearing.js';

interface SpanGiven extends InvoluteGiven {
  readonly spanTeeth?: number | undefined;
}

const spanned = (g: SpanGiven): number => g.spanTeeth ?? usualSpan(g.teeth, radians(g.pressureAngle));

export const span = calculation({
  name: 'involute.span',
  title: 'Span over several teeth of an involute wheel',
  given: {
    teeth,
    module,
    pressureAngle,
    spanTeeth: optional(whole('k', 'teeth between the anvils', 2, 500)),
  },
  found: {
    spanTeeth: { symbol: 'k', unit: 'teeth', name: 'teeth between the anvils' },
    inv: { symbol: 'inv_A', unit: '', name: 'involute of the pressure angle, in radians' },
    span: mm('W', 'span over the teeth'),
  },
  refuse: (g) => {
    const { least, most } = spansThatServe(flanksOf(g));
    const why = 'over more or fewer teeth the anvils do not touch the flanks';
    refuseOutside('spanTeeth', spanned(g), { least: String(least), most: String(most), unit: 'teeth' }, why);
  },
  work: (g) => ({
    spanTeeth: spanned(g),
    inv: inv(radians(g.pressureAngle)),
    span: spanOver(flanksOf(g), spanned(g)),
  }),
  proofs: [
    {
      of: 'spanTeeth',
      source: derived('count by count, the span nearest to the chord d·sin α; or as given'),
      value: (g) => g.spanTeeth ?? spanByTrial(g.teeth, g.pressureAngle),
    },
    {
      of: 'inv',
      source: derived('area under tan² from 0 to the angle, by Simpson’s rule'),
      within: 1e-8,
      value: (g) => involuteByArea(g.pressureAngle),
    },
    { of: 'span', formula: 'base-tangent' },
  ],
  working: (g, found) => [
    g.spanTeeth === undefined
      ? {
          say: `Teeth to span: z × A ÷ 180 + ½, to the nearest whole (a half goes up), 2 at the least: ${found.spanTeeth}.`,
        }
      : { say: `Over ${found.spanTeeth} teeth, as given.` },
    'inv_A = tand(A) - A*pi/180',
    'W = m*cosd(A)*(pi*(k - 1/2) + z*inv_A)',
    { say: 'One tooth more adds the base pitch, π × m × cos A. Take that as the check.' },
  ],
  slips: {
    oneMore: {
      of: 'span',
      formula: 'W + pi*m*cosd(A)',
      says: 'The anvils stood over one tooth too many. Count teeth, not the spaces between.',
    },
    oneFewer: {
      of: 'span',
      formula: 'W - pi*m*cosd(A)',
      says: 'The anvils stood over one tooth too few: you counted the spaces.',
    },
    wholePitches: {
      of: 'span',
      formula: 'm*cosd(A)*(pi*k + z*inv_A)',
      says: 'From flank to flank is half a pitch less than k pitches: take k − ½.',
    },
    degrees: {
      of: 'span',
      formula: 'm*cosd(A)*(pi*(k - 1/2) + z*(tand(A) - A))',
      says: 'The involute was taken with degrees. Outside the tangent the angle is in radians.',
    },
    noCosine: {
      of: 'span',
      formula: 'm*(pi*(k - 1/2) + z*inv_A)',
      says: 'The cosine is missing: the anvils measure along a tangent to the base circle.',
    },
  },
});
