import { describe, expect, it } from 'vitest';
import { work } from '../../../src/index.js';
import { near } from './near.js';

/** The evening class's wheel, which none of the sources has; the figures of each source are as it prints them. */
const wheel = { teeth: 60, leaves: 8, module: 0.8 };

describe('a cutter maker’s dimension table (to BS 978 Part 2, NHS 56702), read', () => {
  // “Full tooth depth” 2.95, 3.38 and 2.45 modules stands on an addendum of 1.38, for any wheel and pinion; by leaf
  // count the addendum of this pair is 0.95 × 1.5486. The dedendum is what the two have in common.
  for (const [depthForm, dedendum] of [
    ['2.95', 1.57],
    ['3.38', 2],
    ['2.45', 1.07],
  ] as const)
    it(`form ${depthForm}: ${dedendum} modules below the pitch line`, () => {
      const depth = work('cutter.form', { ...wheel, depthForm }).found.depth as number;
      const { addendum, depthOfCut } = work('wheel.blank', { ...wheel, depthForm }).found;
      expect(depth - (addendum as number)).toBeCloseTo(dedendum * 0.8, 9);
      expect(depth).toBeCloseTo(depthOfCut as number, 9);
    });

  // “Tooth thickness” 1.57 modules: the space is the other half of the pitch. Straight across it is a chord, which is
  // shorter by less than the figure’s last digit.
  near('cutter.form', wheel, 'pitchWidth', 1.57 * 0.8, 0.005 * 0.8);
});

describe('a wheel-cutting class’s table of signs (common practice, no source; recomputed by cutting)', () => {
  // One space of the 18-hole circle on a 40:1 head is 0.5°, 0.209 mm on the class wheel.
  const slip = { ...wheel, slipAt: 20, slipArcSeconds: 1800 };
  near('cut.simulate', { ...wheel, stepErrorArcSeconds: -1800 }, 'leftOver', 30, 1e-9);
  near('cut.simulate', slip, 'lastTooth', 0.4 * Math.PI - 0.2094, 0.0015);
  near('cut.simulate', { ...wheel, offset: 0.1 }, 'lean', 0.24, 0.005);
  near('cut.simulate', { ...wheel, offset: 0.2 }, 'lean', 0.48, 0.005);

  const verdict = (given: Record<string, unknown>) =>
    work('cut.simulate', { ...wheel, ...given }).found.verdict;

  it.each<[string, Record<string, unknown>, RegExp]>([
    ['nothing wrong', {}, /alike all round and stand upright\.$/],
    [
      'every move a hole short',
      { stepErrorArcSeconds: -1800 },
      /^The last tooth is fat: every move was a little short/,
    ],
    [
      'every move a little short',
      { stepErrorArcSeconds: -30 },
      /^The last tooth is fat: every move was a little short/,
    ],
    ['every move a little long', { stepErrorArcSeconds: 30 }, /^The last tooth is thin or gone/],
    ['every move a hole long', { stepErrorArcSeconds: 1800 }, /^The last cuts ran past the first/],
    ['a slip kept', slip, /one move slipped and was never put back\.$/],
    ['a slip put back', { ...slip, slipPutBack: 'yes' }, /one move slipped and the next put it back\.$/],
    ['57 cuts', { steps: 57 }, /^The last tooth has room for more teeth/],
    ['61 cuts: the start counted twice', { steps: 61 }, /alike all round/],
    [
      '56 for 60: 15 spaces of 21 moved',
      { steps: 56, stepErrorArcSeconds: (360 / 56 - 6) * 3600 },
      /not the number that was wanted/,
    ],
    ['the cutter off centre', { offset: 0.2 }, /^The teeth lean/],
    ['too deep', { depthError: 0.2 }, /too deep/],
    ['too shallow', { depthError: -0.2 }, /^The spaces are too shallow/],
    ['a blank that runs out', { eccentricity: 0.2 }, /^The tips are broad on one side/],
    ['a cutter of module 0.85', { cutterModule: 0.85 }, /^The spaces are wide/],
    ['a cutter of module 0.75', { cutterModule: 0.75 }, /^The spaces are narrow/],
    ['the blank of an involute wheel', { blankDiameter: 49.6 }, /^There are broad flats/],
    ['a blank too large', { blankDiameter: 50.6 }, /^The tips are sharper/],
  ])('%s', (_, given, words) => expect(verdict(given)).toMatch(words));
});
