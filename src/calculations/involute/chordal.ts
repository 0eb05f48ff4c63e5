import { chordalTooth } from '../../geometry/involute/chordal.js';
import { sideOnCircle, toothSide, wheelFlanks } from '../../geometry/involute/flank.js';
import { calculation } from '../calculation.js';
import { mm } from '../found.js';
import { module, radians, teeth } from './gearing.js';

/** Any pressure angle has the same tooth on the pitch circle; this one is generated and measured. */
const ANGLE = radians(20);

/** A rise too small to tell from nothing with a vernier, mm. */
const UNSEEN = 0.02;

export const chordal = calculation({
  name: 'tooth.chordal',
  title: 'Chordal thickness and addendum of a tooth, for the gear-tooth vernier',
  given: { teeth, module },
  found: {
    chordalThickness: mm('s_c', 'chordal thickness'),
    chordalAddendum: mm('h_c', 'chordal (corrected) addendum'),
  },
  work: (g) => {
    const pitchRadius = (g.module * g.teeth) / 2;
    const flanks = wheelFlanks(g.teeth, g.module, ANGLE);
    const side = sideOnCircle(flanks, pitchRadius);
    const tip = toothSide(flanks, flanks.to);
    return chordalTooth(pitchRadius, Math.atan2(side.y, side.x), Math.hypot(tip.x, tip.y));
  },
  proofs: [
    { of: 'chordalThickness', formula: 'chordal-thickness' },
    { of: 'chordalAddendum', formula: 'chordal-addendum' },
  ],
  working: ['s_c = m*z*sind(90/z)', 'h_c = m + m*z*(1 - cosd(90/z))/2'],
  slips: (g, found) => ({
    wholePitch: {
      of: 'chordalThickness',
      formula: 'm*z*sind(180/z)',
      says: 'That is the chord of a whole pitch. A tooth is half of it: the sine of 90°/z.',
    },
    radius: {
      of: 'chordalThickness',
      formula: 'm*z/2*sind(90/z)',
      says: 'That is half the tooth: the chord takes the diameter.',
    },
    noTeeth: {
      of: 'chordalThickness',
      formula: 'm*sind(90/z)',
      says: 'The pitch diameter is the module times the teeth.',
    },
    radians: {
      of: 'chordalThickness',
      formula: 'm*z*sin(90/z)',
      says: 'The calculator was set to radians.',
    },
    diameter: {
      of: 'chordalAddendum',
      formula: 'm + m*z*(1 - cosd(180/z))/2',
      says: 'Half a tooth takes 90°/z of the circle, not 180°/z.',
    },
    ...(found.chordalAddendum - g.module < UNSEEN
      ? {}
      : {
          notCorrected: {
            of: 'chordalAddendum',
            formula: 'm',
            says: 'That is the addendum to the pitch circle. The chord lies lower, by the rise of the arc.',
          },
          wrongWay: {
            of: 'chordalAddendum',
            formula: 'm - m*z*(1 - cosd(90/z))/2',
            says: 'The rise is added: the chord lies below the arc.',
          },
        }),
  }),
});
