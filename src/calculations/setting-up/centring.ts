import { InputError } from '../../diagnostics/errors.js';
import { dropToCentre, heightAtTouch, offCentre } from '../../geometry/setting-up/centring.js';
import { derived } from '../../handbook/record.js';
import { calculation, type Slip } from '../calculation.js';
import { mm } from '../found.js';
import { length, optional, orElse } from '../quantity.js';
import { RADIANS, toldApart } from '../slips.js';

const cutterThickness = length('t', 'thickness of the cutter over all', 0.01, 200);
const feeler = orElse(length('f', 'thickness of the feeler', 0, 5), 0);

const heightSlips: Readonly<Record<string, Slip>> = {
  whole: {
    of: 'height',
    formula: 'H + t - f',
    says: 'You added the whole thickness. Half the cutter lies above the centre, half below.',
  },
  below: {
    of: 'height',
    formula: 'H - t/2 - f',
    says: 'That is the lower face. The gauge is set to the upper one, so half the thickness is added.',
  },
  none: {
    of: 'height',
    formula: 'H - f',
    says: 'You left out the cutter: its upper face would stand at the centre, not its middle.',
  },
  paperIn: {
    of: 'height',
    formula: 'H + t/2 + f',
    says: 'You added the feeler. While it is nipped the face is still that much short of the gauge.',
  },
  paperForgotten: {
    of: 'height',
    formula: 'H + t/2',
    says: 'You forgot the feeler: take it out, and close by its thickness.',
  },
};

export const cutterHeight = calculation({
  name: 'setup.cutterHeight',
  title: 'Height of the cutter, by a gauge',
  given: { centreHeight: length('H', 'height of the centres', 1, 1000), cutterThickness, feeler },
  found: {
    height: mm('y', 'height of the cutter’s upper face when the feeler is nipped under the gauge'),
    gauge: mm('G', 'height to set the gauge to, where the upper face must end'),
  },
  work: (g) => heightAtTouch(g.centreHeight, g.cutterThickness, g.feeler),
  proofs: [
    { of: 'height', formula: 'cutter-height' },
    { of: 'gauge', formula: 'cutter-gauge' },
  ],
  working: (g) => [
    'G = H + t/2',
    'y = H + t/2 - f',
    ...(g.feeler > 0
      ? [{ say: 'Nip the feeler between gauge and cutter, take it out, and close by its thickness.' }]
      : []),
  ],
  slips: (g, found) =>
    toldApart(heightSlips, found, { H: g.centreHeight, t: g.cutterThickness, f: g.feeler }),
});

const touchSlips: Readonly<Record<string, Slip>> = {
  diameter: {
    of: 'drop',
    formula: 'D + t/2 + f',
    says: 'You took the whole diameter. From the rim to the centre is half of it.',
  },
  wholeCutter: {
    of: 'drop',
    formula: 'D/2 + t + f',
    says: 'You took the whole cutter. It is the cutter’s middle that must come to the centre.',
  },
  noCutter: {
    of: 'drop',
    formula: 'D/2 + f',
    says: 'That brings the cutter’s face to the centre. Its middle is half the thickness away.',
  },
  less: {
    of: 'drop',
    formula: 'D/2 - t/2 + f',
    says: 'You took half the cutter away. It touched with its near face, so its middle has further to go.',
  },
  noFeeler: {
    of: 'drop',
    formula: 'D/2 + t/2',
    says: 'You forgot the feeler, which held the cutter off the rim.',
  },
};

export const centreFromTouch = calculation({
  name: 'setup.centreFromTouch',
  title: 'From a touch on the rim to the centre',
  given: { blankDiameter: length('D', 'diameter of the blank', 0.5, 2000), cutterThickness, feeler },
  found: { drop: mm('y', 'distance to move, from touching the rim to the centre') },
  work: (g) => ({ drop: dropToCentre(g.blankDiameter, g.cutterThickness, g.feeler) }),
  proofs: [{ of: 'drop', formula: 'centre-from-touch' }],
  working: ['y = D/2 + t/2 + f'],
  slips: (g, found) =>
    toldApart(touchSlips, found, { D: g.blankDiameter, t: g.cutterThickness, f: g.feeler }),
});

interface ErrorGiven {
  readonly diameter: number;
  readonly offset?: number | undefined;
  readonly halfTurnStep?: number | undefined;
}

/** How far off centre, whichever way it is given; refused where neither or both are. */
const offsetOf = (g: ErrorGiven): number => g.offset ?? (g.halfTurnStep ?? 0) / 2;

function refuseUnclear(g: ErrorGiven): void {
  const { offset, halfTurnStep } = g;
  if (offset === undefined && halfTurnStep === undefined)
    throw new InputError('offset', undefined, 'either offset or halfTurnStep');
  if (offset !== undefined && halfTurnStep !== undefined)
    throw new InputError('halfTurnStep', halfTurnStep, 'either offset or halfTurnStep, not both');
  if (offset !== undefined && offset > g.diameter / 4)
    throw new InputError('offset', offset, `at most half the radius, ${g.diameter / 4} mm`);
  if (halfTurnStep !== undefined && halfTurnStep > g.diameter / 2)
    throw new InputError('halfTurnStep', halfTurnStep, `at most the radius, ${g.diameter / 2} mm`);
}

const stepSlips: Readonly<Record<string, Slip>> = {
  undoubled: { of: 'offset', formula: 's', says: 'The half-turn test doubles the error.' },
  doubled: { of: 'offset', formula: '2*s', says: 'You doubled the step. The test has doubled it already.' },
};

const offsetSlips: Readonly<Record<string, Slip>> = {
  single: {
    of: 'halfTurnStep',
    formula: 'e',
    says: 'Half a turn carries the cut as far to the other side: the step is twice the error.',
  },
};

const leanSlips: Readonly<Record<string, Slip>> = {
  diameter: {
    of: 'leanAngle',
    formula: 'asind(e/D)',
    says: 'You used the diameter. The lean goes by the error over the radius.',
  },
  twice: {
    of: 'leanAngle',
    formula: 'asind(4*e/D)',
    says: 'You used the step of the half-turn test, which is twice the error.',
  },
  radians: { of: 'leanAngle', formula: 'asin(2*e/D)', says: RADIANS },
};

export const centreError = calculation({
  name: 'setup.centreError',
  title: 'Cutter off centre: how far, and how the teeth lean',
  given: {
    diameter: length('D', 'diameter where the lean is measured', 0.5, 2000),
    offset: optional(length('e', 'distance of the cutter’s middle from the centre', 0, 500)),
    halfTurnStep: optional(length('s', 'step between two cuts half a turn apart', 0, 1000)),
  },
  found: {
    offset: mm('e', 'distance of the cutter’s middle from the centre'),
    halfTurnStep: mm('s', 'step that the half-turn test shows'),
    leanAngle: { symbol: 'A', unit: '°', name: 'lean of the teeth from the radius' },
    atRim: mm('b', 'the same along the rim'),
  },
  refuse: refuseUnclear,
  work: (g) => ({ offset: offsetOf(g), ...offCentre(g.diameter, offsetOf(g)) }),
  proofs: [
    {
      of: 'offset',
      source: derived('half the step of the half-turn test, or as it was given'),
      value: (g) => g.offset ?? 0.5 * (g.halfTurnStep ?? 0),
    },
    { of: 'halfTurnStep', formula: 'half-turn-step' },
    { of: 'leanAngle', formula: 'lean' },
    { of: 'atRim', formula: 'lean-at-rim' },
  ],
  working: (g) => [g.offset === undefined ? 'e = s/2' : 's = 2*e', 'A = asind(2*e/D)', 'b = pi*D*A/360'],
  slips: (g, found) =>
    toldApart({ ...(g.offset === undefined ? stepSlips : offsetSlips), ...leanSlips }, found, {
      D: g.diameter,
      e: found.offset,
      s: found.halfTurnStep,
    }),
});
