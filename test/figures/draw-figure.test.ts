import { describe, expect, it } from 'vitest';
import { InputError } from '../../src/diagnostics/errors.js';
import { drawFigure } from '../../src/figures/index.js';
import { classWheel, handout } from './class-wheel.js';

const refusal = (name: string, given: Record<string, unknown>, maxWidth = handout.maxWidth): string => {
  try {
    drawFigure(name, given, { ...handout, maxWidth });
  } catch (error) {
    if (error instanceof InputError) return error.message;
    throw error;
  }
  return 'drawn';
};

describe('drawFigure refuses', () => {
  it.each([
    ['a figure there is none of', 'wheel', {}, /^figure: "wheel" .*index-plate/],
    ['a missing value', 'index-plate', { circle: 21 }, /^spaces is missing; give a whole number, 0 to 4000/],
    [
      'a name it does not know',
      'index-plate',
      { circle: 21, spaces: 5, hole: 3 },
      /^hole: 3 .*only circle, spaces, others/,
    ],
    ['half a hole', 'index-plate', { circle: 20.5, spaces: 5 }, /^circle: 20.5 .*whole number, 3 to 400/],
    ['a word for a number', 'quarter-marks', { teeth: 'sixty' }, /^teeth: "sixty" .*whole number/],
    ['NaN', 'quarter-marks', { teeth: NaN }, /^teeth: NaN /],
    ['Infinity', 'depth-forms', { module: Infinity }, /^module: Infinity .*0.05 to 5/],
    ['zero module', 'depth-forms', { module: 0 }, /^module: 0 /],
    ['10⁹ teeth', 'quarter-marks', { teeth: 1e9 }, /^teeth: 1000000000 /],
    [
      'a value in a default it does not like',
      'stack',
      { ...classWheel.stack, clearance: -1 },
      /^clearance: -1 .*0 to 50/,
    ],
    [
      'a list with a word in it',
      'cutting-passes',
      { depth: 2, passes: '1, x' },
      /^passes: "1, x" .*depths in mm/,
    ],
    [
      'passes that miss the depth',
      'cutting-passes',
      { depth: 2, passes: [1, 0.5] },
      /^passes: .*add up to the full depth/,
    ],
    [
      'a root outside the pitch circle',
      'wheel-blank',
      { ...classWheel['wheel-blank'], rootDiameter: 49 },
      /^rootDiameter: 49/,
    ],
    [
      'a pitch circle outside the blank',
      'wheel-blank',
      { ...classWheel['wheel-blank'], pitchDiameter: 51 },
      /^pitchDiameter/,
    ],
    ['a bore that leaves no wheel', 'wheel-blank', { ...classWheel['wheel-blank'], bore: 46 }, /^bore: 46/],
    [
      'a face that cannot reach the tip',
      'tooth-form',
      { ...classWheel['tooth-form'], flankRadius: 0.5 },
      /^flankRadius: 0.5 .*0.639 mm or more/,
    ],
    [
      'leaves that touch',
      'pinion-section',
      { ...classWheel['pinion-section'], leafThickness: 2.6 },
      /^leafThickness/,
    ],
    [
      'a cut deeper than the cutter',
      'over-travel',
      { cutterDiameter: 4, depth: 2.36, thickness: 2 },
      /^depth: 2.36/,
    ],
    ['a hump that is not the geometry’s', 'hump', { cutterDiameter: 24, short: 3, hump: 0.5 }, /^hump: 0.5/],
    [
      'a form there is none of',
      'cutter-stamp',
      { module: 0.8, form: 'fine' },
      /^form: "fine" .*2.95, 3.38, 2.45, 3.00/,
    ],
  ])('%s', (_, name, given, message) => {
    expect(refusal(name, given)).toMatch(message);
  });

  it('a page too narrow, and says how wide it must be', () => {
    expect(refusal('check-bar', { length: 100 }, 90)).toMatch(
      /^width of the page: "90 mm" .*at least 110 mm/,
    );
  });
});

describe('drawFigure accepts', () => {
  it('lists as arrays and as text with commas', () => {
    const draw = (passes: unknown) => drawFigure('cutting-passes', { depth: 2.36, passes }, handout).svg;
    expect(draw('0.9, 0.9,0.56')).toBe(draw([0.9, 0.9, 0.56]));
  });

  it('whole turns, and turns with spaces over', () => {
    const label = (spaces: number) => drawFigure('index-plate', { circle: 21, spaces }, handout).label;
    expect(label(0)).toContain('whole turns only');
    expect(label(42)).toContain('2 whole turns');
    expect(label(26)).toContain('5 spaces = 6 holes inside the arms, after 1 whole turn');
  });

  it('inches', () => {
    const { svg, label } = drawFigure('pitch-circles', classWheel['pitch-circles'] ?? {}, {
      ...handout,
      units: 'inch',
    });
    expect(svg).toContain('centre distance a = 1.071\u2009in');
    expect(label).not.toContain('mm');
  });
});
