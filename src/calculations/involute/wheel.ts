import { basicRack } from '../../geometry/involute/rack.js';
import { undercutLimit } from '../../geometry/involute/undercut.js';
import { involuteSizes } from '../../geometry/involute/wheel.js';
import { calculation, type Step } from '../calculation.js';
import { mm } from '../found.js';
import { decimals } from '../working.js';
import { type InvoluteGiven, module, pressureAngle, radians, teeth } from './gearing.js';

/** A module so near 1 that dividing by it is no different from multiplying. */
const isOne = (module: number): boolean => Math.abs(module - 1) < 0.02;

/** Below this, mm, many makers cut deeper than the basic rack. */
const FINE = 1.25;

const least = (limit: number): number => Math.ceil(limit - 1e-9);

function aboutUndercut(g: InvoluteGiven): Step[] {
  const angle = radians(g.pressureAngle);
  const { straightTo } = basicRack(angle);
  const teeth = least(undercutLimit(angle, straightTo));
  if (g.teeth >= teeth) return [];
  const shallow = least(undercutLimit(angle, 1));
  const say = `Fewer than ${teeth} teeth: the rack cuts into the foot of the flanks (undercut).`;
  return [
    {
      say:
        shallow === teeth
          ? say
          : `${say} At this angle its flank is straight to ${decimals(straightTo, 3)} modules deep; reckoned to 1 module, as the rule has it, ${shallow} would do.`,
    },
  ];
}

export const wheel = calculation({
  name: 'involute.wheel',
  title: 'Sizes of an involute wheel, to the basic rack of ISO 53',
  given: { teeth, module, pressureAngle },
  found: {
    pitchDiameter: mm('d', 'pitch diameter'),
    outsideDiameter: mm('d_a', 'outside diameter'),
    rootDiameter: mm('d_f', 'root diameter'),
    baseDiameter: mm('d_b', 'base diameter'),
    toothThickness: mm('s', 'tooth thickness, along the pitch circle'),
    depthOfCut: mm('h', 'full depth of cut'),
  },
  work: (g) => involuteSizes(g.teeth, g.module, radians(g.pressureAngle)),
  proofs: [
    { of: 'pitchDiameter', formula: 'pitch-diameter' },
    { of: 'outsideDiameter', formula: 'involute-outside' },
    { of: 'rootDiameter', formula: 'involute-root' },
    { of: 'baseDiameter', formula: 'base-diameter' },
    { of: 'toothThickness', formula: 'involute-thickness' },
    { of: 'depthOfCut', formula: 'involute-depth' },
  ],
  working: (g) => [
    {
      say: 'Basic rack of ISO 53: addendum 1, dedendum 1.25 modules. A cutter marked with another depth is cut to its mark.',
    },
    ...(g.module < FINE
      ? [{ say: 'Cutters of so fine a pitch are often made 2.4 modules deep: look at the mark.' }]
      : []),
    'd = m*z',
    'd_a = m*(z + 2)',
    'h = 2.25*m',
    'd_f = m*(z - 2.5)',
    'd_b = d*cosd(A)',
    's = pi*m/2',
    ...aboutUndercut(g),
  ],
  slips: (g) => ({
    clock: {
      of: 'outsideDiameter',
      formula: 'm*(z + 2.76)',
      says: '2.76 is the allowance of a clock wheel. An involute wheel stands 2 modules proud.',
    },
    twice: {
      of: 'outsideDiameter',
      formula: 'm*(z + 4)',
      says: 'You added 2 on each side. The 2 has both sides in it already.',
    },
    once: {
      of: 'outsideDiameter',
      formula: 'm*(z + 1)',
      says: 'You added one addendum; there is a tooth at each end of the diameter.',
    },
    ...(isOne(g.module)
      ? {}
      : {
          diametral: {
            of: 'outsideDiameter',
            formula: '(z + 2)/m',
            says: 'You divided, as for diametral pitch. A module is multiplied.',
          },
        }),
    halfTeeth: {
      of: 'outsideDiameter',
      formula: 'm*(z/2 + 2)',
      says: 'You took half the teeth; m × z is the whole diameter.',
    },
    rootOnce: {
      of: 'rootDiameter',
      formula: 'm*(z - 1.25)',
      says: 'You took one dedendum off; there is a space at each end of the diameter.',
    },
    double: {
      of: 'depthOfCut',
      formula: '2*h',
      says: 'You doubled the depth: the cutter goes in on one side only.',
    },
    addendumTwice: {
      of: 'depthOfCut',
      formula: '2*m',
      says: 'That is the working depth; the cutter goes deeper by the clearance.',
    },
    finePitch: {
      of: 'depthOfCut',
      formula: '2.4*m',
      says: '2.4 modules is a fine-pitch depth. The basic rack cuts 2.25.',
    },
    pitch: {
      of: 'toothThickness',
      formula: 'pi*m',
      says: 'That is the circular pitch: one tooth and one space.',
    },
    sine: {
      of: 'baseDiameter',
      formula: 'm*z*sind(A)',
      says: 'You used the sine; the base circle takes the cosine.',
    },
    radians: {
      of: 'baseDiameter',
      formula: 'm*z*cos(A)',
      says: 'The calculator was set to radians.',
    },
    fromOutside: {
      of: 'baseDiameter',
      formula: 'd_a*cosd(A)',
      says: 'You started from the outside; the pressure angle belongs to the pitch circle.',
    },
  }),
});
