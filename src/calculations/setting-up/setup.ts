import { InputError } from '../../diagnostics/errors.js';
import { turnsForSpeed } from '../../geometry/setting-up/speed.js';
import { approach, humpLeft, passDepths } from '../../geometry/setting-up/travel.js';
import { derived } from '../../handbook/record.js';
import { passesByLaying } from '../../handbook/setting-up/passes.js';
import { calculation } from '../calculation.js';
import { mm } from '../found.js';
import { length, number, orElse } from '../quantity.js';

const cutterDiameter = length('D', 'cutter diameter', 1, 500);
const depth = length('h', 'depth of cut', 0.001, 100);
const clearance = orElse(length('c', 'clearance at each end', 0, 100), 1);

function refuseDeepCut(g: { readonly cutterDiameter: number; readonly depth: number }): void {
  if (g.depth > g.cutterDiameter / 2)
    throw new InputError('depth', g.depth, `at most half the cutter, ${g.cutterDiameter / 2} mm`);
}

export const overTravel = calculation({
  name: 'setup.overTravel',
  title: 'Travel of the slide past a round cutter',
  given: {
    cutterDiameter,
    depth,
    thickness: length('b', 'thickness of blank or stack', 0.01, 1000),
    clearance,
  },
  found: {
    approach: mm('g', 'approach'),
    travel: mm('T', 'travel'),
    leastExit: mm('x', 'least travel past the far face'),
  },
  refuse: refuseDeepCut,
  work: (g) => {
    const reach = approach(g.cutterDiameter, g.depth);
    return { approach: reach, travel: g.thickness + 2 * (reach + g.clearance), leastExit: reach };
  },
  proofs: [
    { of: 'approach', formula: 'approach' },
    { of: 'travel', formula: 'travel' },
    { of: 'leastExit', formula: 'approach' },
  ],
  working: ['g = sqrt(h*(D - h))', 'T = b + 2*g + 2*c'],
  slips: {
    oneEnd: {
      of: 'travel',
      formula: 'b + g + c',
      says: 'You allowed for one end only. The cutter has a front and a back.',
    },
    none: {
      of: 'travel',
      formula: 'b',
      says: 'You left out the approach: the cutter would start and stop while it is still in the work.',
    },
    shallow: {
      of: 'approach',
      formula: 'sqrt(D*h)',
      says: 'You took h × D. Under the square root it is h × (D − h).',
    },
    asRadius: { of: 'approach', formula: 'sqrt(h*(2*D - h))', says: 'You used the diameter as the radius.' },
  },
});

export const hump = calculation({
  name: 'setup.hump',
  title: 'Root left high when the travel stops short',
  given: { cutterDiameter, short: length('s', 'distance the travel stops short', 0, 250) },
  found: { hump: mm('u', 'hump at the far face') },
  refuse: (g) => {
    if (g.short > g.cutterDiameter / 2)
      throw new InputError('short', g.short, `at most half the cutter, ${g.cutterDiameter / 2} mm`);
  },
  work: (g) => ({ hump: humpLeft(g.cutterDiameter, g.short) }),
  proofs: [{ of: 'hump', formula: 'hump' }],
  working: ['u = D/2 - sqrt((D/2)^2 - s^2)'],
  slips: {
    asRadius: { of: 'hump', formula: 'D - sqrt(D^2 - s^2)', says: 'You used the diameter as the radius.' },
    straight: { of: 'hump', formula: 's', says: 'That is the distance short, not the height of metal left.' },
  },
});

export const stack = calculation({
  name: 'setup.stack',
  title: 'Blanks that the slide’s travel lets you cut in one stack',
  given: {
    slideTravel: length('T', 'travel of the slide', 1, 2000),
    cutterDiameter,
    depth,
    blankThickness: length('t', 'thickness of one blank', 0.05, 100),
    backing: orElse(length('k', 'thickness of backing', 0, 100), 0),
    clearance,
  },
  found: {
    blanks: { symbol: 'q', unit: '', name: 'blanks in the stack' },
    possible: { unit: '', name: 'possible' },
    reason: { unit: '', name: 'why it is not possible' },
  },
  refuse: refuseDeepCut,
  work: (g) => {
    const room = g.slideTravel - 2 * approach(g.cutterDiameter, g.depth) - 2 * g.clearance - g.backing;
    // A stack that fits to the last ten-millionth of a millimetre fits.
    const blanks = Math.max(0, Math.floor(room / g.blankThickness + 1e-7));
    return blanks > 0
      ? { blanks, possible: true }
      : {
          blanks,
          possible: false,
          reason: 'the approach, clearance and backing leave no room for one blank',
        };
  },
  proofs: [
    {
      of: 'blanks',
      source: derived('blanks added one at a time while the travel needed fits'),
      value: (g) => {
        const ends = 2 * Math.sqrt(g.depth * (g.cutterDiameter - g.depth)) + 2 * g.clearance + g.backing;
        let blanks = 0;
        while (ends + (blanks + 1) * g.blankThickness <= g.slideTravel + 1e-7 * g.blankThickness) blanks++;
        return blanks;
      },
    },
    {
      of: 'possible',
      source: derived('one blank fits, or none'),
      value: (g) =>
        g.blankThickness * (1 - 1e-7) <=
        g.slideTravel - 2 * Math.sqrt(g.depth * (g.cutterDiameter - g.depth)) - 2 * g.clearance - g.backing,
    },
  ],
  working: (_, found) => [
    'g = sqrt(h*(D - h))',
    'q = (T - 2*sqrt(h*(D - h)) - 2*c - k)/t',
    { say: found.possible ? `Whole blanks only: ${found.blanks}.` : 'Not possible: no whole blank fits.' },
  ],
});

export const passes = calculation({
  name: 'setup.passes',
  title: 'Passes and dial divisions for a depth of cut',
  given: {
    depth,
    largestPass: length('q', 'largest pass', 0.01, 50),
    dialPerDivision: length('w', 'depth for one division of the dial', 0.0005, 5),
  },
  found: {
    passes: { unit: 'mm', name: 'depth of each pass' },
    divisions: { symbol: 'N', unit: '', name: 'divisions of the dial in all' },
  },
  refuse: (g) => {
    if (g.depth / g.largestPass > 1000)
      throw new InputError('largestPass', g.largestPass, 'a pass of at least a thousandth of the depth');
  },
  work: (g) => ({ passes: passDepths(g.depth, g.largestPass), divisions: g.depth / g.dialPerDivision }),
  proofs: [
    {
      of: 'passes',
      source: derived('passes laid one on another until they reach the depth, the last one smaller'),
      within: 1e-9,
      value: (g) => {
        const count = passesByLaying(g.depth, g.largestPass);
        return Array.from({ length: count }, (_, i) => Math.min(g.largestPass, g.depth - i * g.largestPass));
      },
    },
    { of: 'divisions', formula: 'dial-divisions' },
  ],
  working: [
    'passes = ceil(h/q)',
    { say: 'Take the largest pass as often as it goes in; the last pass takes what is left.' },
    'N = h/w',
  ],
  slips: {
    diameter: {
      of: 'divisions',
      formula: 'h/(2*w)',
      says: 'You took each division to be worth twice its depth. This dial already gives depth.',
    },
    doubled: {
      of: 'divisions',
      formula: '2*h/w',
      says: 'You doubled the depth: that is for a dial that reads diameter. This one gives depth.',
    },
    upsideDown: { of: 'divisions', formula: 'w/h', says: 'The division is upside down.' },
  },
});

export const spindleSpeed = calculation({
  name: 'cut.spindleSpeed',
  title: 'Spindle speed for a cutting speed',
  given: {
    cuttingSpeed: number('V', 'cutting speed', 'm/min', 0.1, 2000),
    diameter: length('D', 'diameter', 0.1, 2000),
  },
  found: { revPerMin: { symbol: 'S', unit: 'rev/min', name: 'spindle speed' } },
  work: (g) => ({ revPerMin: turnsForSpeed(g.cuttingSpeed, g.diameter) }),
  proofs: [{ of: 'revPerMin', formula: 'spindle-speed' }],
  working: ['S = 1000*V/(pi*D)'],
  slips: {
    noPi: { of: 'revPerMin', formula: '1000*V/D', says: 'You left out π.' },
    radius: {
      of: 'revPerMin',
      formula: '2000*V/(pi*D)',
      says: 'You used the radius; the rim is π times the diameter.',
    },
    thousand: {
      of: 'revPerMin',
      formula: 'V/(pi*D)',
      says: 'Cutting speed is in metres, diameter in millimetres.',
    },
  },
});
