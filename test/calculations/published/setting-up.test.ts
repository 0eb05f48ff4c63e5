import { describe, expect, it } from 'vitest';
import { work } from '../../../src/index.js';
import { near } from './near.js';

const INCH = 25.4;
const FOOT = 0.3048;

describe('setting up', () => {
  // Decimal equivalents of an inch, as any engineer's pocket book has them (from memory): 7/32 is 5.556 mm, 23/32 18.256.
  near('size.convert', { length: '7/32in' }, 'inches', 0.21875, 1e-12);
  near('size.convert', { length: 18.256 }, 'sixtyFourths', 46, 0);
  near('size.convert', { length: 7.2 }, 'sixtyFourths', 18, 0);
  near('size.convert', { length: 7.2 }, 'over', -0.05625, 1e-9);

  // A metric micrometer as its makers explain it (from memory): 5 mm, a half, and 28 lines of the thimble are 5.78 mm.
  near('scale.reading', { divisions: 11, division: 0.5, line: 28, lines: 50 }, 'reading', 5.78, 1e-12);
  // An inch one (from memory): 2 tenths, 1 line of 0.025 in and 3 of the thimble are 0.228 in.
  near(
    'scale.reading',
    { divisions: 9, division: '0.025in', line: 3, lines: 25 },
    'reading',
    0.228 * INCH,
    1e-9,
  );

  // The chord of a circle by Pythagoras; the slab-milling value is Groover's (from memory): 0.98 in.
  near(
    'setup.overTravel',
    { cutterDiameter: '3.5in', depth: '0.3in', thickness: 10 },
    'approach',
    0.98 * INCH,
    0.01,
  );
  near('setup.hump', { cutterDiameter: 24, short: 5 }, 'hump', 12 - Math.sqrt(119), 1e-9);
  near('setup.stack', { slideTravel: 30, cutterDiameter: 10, depth: 2, blankThickness: 2 }, 'blanks', 10, 0);

  // Setting the height of the cutter when making a spur gear (web page, read): centres 3.75 in, cutter 0.53 mm.
  near('setup.cutterHeight', { centreHeight: '3.75in', cutterThickness: 0.53 }, 'height', 95.515, 1e-9);
  near('setup.cutterHeight', { centreHeight: 95.25, cutterThickness: 0.53 }, 'gauge', 95.515, 1e-9);
  // The same page nips a paper under the gauge, takes it out and closes by its thickness: until then the face is short.
  it('a paper of 0.04 mm leaves the face 0.04 mm short of the gauge', () => {
    const { height, gauge } = work('setup.cutterHeight', {
      centreHeight: 95.25,
      cutterThickness: 0.53,
      feeler: 0.04,
    }).found as Record<string, number>;
    expect((gauge ?? 0) - (height ?? 0)).toBeCloseTo(0.04, 9);
  });

  // Worked by hand, no published example: the class wheel's pitch circle and an 8-leaf pinion's, module 0.8.
  near('setup.centreError', { diameter: 48, halfTurnStep: 0.16 }, 'offset', 0.08, 0);
  near('setup.centreError', { diameter: 48, halfTurnStep: 0.16 }, 'leanAngle', 0.19, 5e-3);
  near('setup.centreError', { diameter: 6.4, halfTurnStep: 0.16 }, 'leanAngle', 1.43, 5e-3);
  for (const [diameter, offset, lean] of [
    [48, 0.1, 0.24],
    [48, 0.2, 0.48],
    [48, 0.5, 1.19],
    [6.4, 0.1, 1.8],
    [6.4, 0.2, 3.6],
  ] as const)
    near('setup.centreError', { diameter, offset }, 'leanAngle', lean, lean > 1.5 ? 0.05 : 5e-3);
});

describe('cutting speeds: each printed speed and diameter gives the printed rev/min, and back', () => {
  /** ft/min, inches and the printed rev/min, rounded to so much. */
  function printed(feet: number, inches: number, revPerMin: number, within = 0.5): void {
    const diameter = inches * INCH;
    near('cut.spindleSpeed', { cuttingSpeed: feet * FOOT, diameter }, 'revPerMin', revPerMin, within);
    near(
      'cut.surfaceSpeed',
      { revPerMin, diameter },
      'cuttingSpeed',
      feet * FOOT,
      (within / revPerMin) * feet * FOOT + 1e-9,
    );
  }

  // Cutting Speeds, a university instrument shop's table (read): aluminium 300 ft/min, mild steel 120.
  printed(300, 1 / 16, 18_335);
  printed(120, 1 / 16, 7334);
  printed(300, 1 / 8, 9167);
  printed(120, 1 / 8, 3667);
  printed(300, 1 / 4, 4584);
  printed(120, 1 / 4, 1833);
  printed(300, 3 / 8, 3056);
  printed(120, 3 / 8, 1222);
  printed(300, 1 / 2, 2292);
  printed(120, 1 / 2, 917);
  // F. D. Jones, Turning and Boring (read): 60 ft/min on 5 in, 46 rev/min.
  printed(60, 5, 46);
  // Machine Shop Work, Cutting Speeds part 2 (read): 40 ft/min with a 2½ in mill, “about sixty turns”.
  printed(40, 2.5, 60, 1.5);

  // The same (read): Addy's rule for cast iron, 240 over the diameter in inches, is one speed for all, 62.8 ft/min.
  it.each([0.5, 2, 5])('Addy’s rule on %f in', (inches) => {
    const given = { revPerMin: 240 / inches, diameter: inches * INCH };
    expect((work('cut.surfaceSpeed', given).found.cuttingSpeed as number) / FOOT).toBeCloseTo(62.8, 1);
  });

  // Machine Tool Speeds and Feeds and a course handout (read): 3.82 (or 3.8, or 4) times ft/min over inches.
  // Two lathe manuals (read) use 4: 300 × 4 ÷ 0.5 = 2400, 60 × 2 × 4 ÷ 1 = 480 for carbide, 300 × 4 ÷ 1 = 1200.
  // The circle gives 12/π = 3.8197, which is followed; 4 is 4.7 % fast.
  it.each([
    [300, 0.5, 2400],
    [120, 1, 480],
    [300, 1, 1200],
  ])('%i ft/min on %f in: the rule of 4 says %i, which is 4.7 %% fast', (feet, inches, byFour) => {
    const exact = work('cut.spindleSpeed', { cuttingSpeed: feet * FOOT, diameter: inches * INCH }).found
      .revPerMin as number;
    expect((exact * inches) / feet).toBeCloseTo(3.82, 3);
    expect(byFour / exact - 1).toBeCloseTo(0.0472, 4);
  });

  // A cutter maker's chart (read): pinion cutters of high-speed steel in carbon steel. No speed is printed; all four
  // come to the same, 18.8 to 22.1 m/min.
  it.each([
    [14, 430, 500],
    [20, 300, 350],
    [24, 250, 290],
    [26, 230, 270],
  ])('a pinion cutter of %i mm at %i to %i rev/min', (diameter, slow, fast) => {
    const speed = (revPerMin: number) =>
      work('cut.surfaceSpeed', { revPerMin, diameter }).found.cuttingSpeed as number;
    expect(speed(slow)).toBeGreaterThan(18.7);
    expect(speed(slow)).toBeLessThan(19);
    expect(speed(fast)).toBeGreaterThan(21.8);
    expect(speed(fast)).toBeLessThan(22.1);
  });

  // Tables of cutting speed for high-speed steel disagree by as much as two to one, so speeds are what a reader gives,
  // never what we say. Brass, for one (all read): 45–120 m/min turning and 60–150 milling in one set of design tables,
  // 200 ft/min (61) in a page of speeds and feeds, 150 ft/min (46) in a milling-machine manual, 120 ft/min (37) for
  // carbon-steel cutters in Machine Shop Work.
  it('what is called right for brass spans more than four to one on one cutter', () => {
    const turns = [45, 120, 60, 150, 200 * FOOT, 150 * FOOT, 120 * FOOT].map(
      (cuttingSpeed) => work('cut.spindleSpeed', { cuttingSpeed, diameter: 24 }).found.revPerMin as number,
    );
    expect(Math.max(...turns) / Math.min(...turns)).toBeCloseTo(4.1, 1);
    expect(Math.min(...turns)).toBeCloseTo(485, 0);
    expect(Math.max(...turns)).toBeCloseTo(1989, 0);
  });
});

describe('feeds and times', () => {
  // Groover, slab milling (inputs read, answers from memory): 125 ft/min, cutter 3.5 in of 10 teeth, 0.008 in a tooth,
  // 12 in of work, 0.300 in deep: 136.4 rev/min, 10.91 in/min, 1.19 min.
  near('cut.spindleSpeed', { cuttingSpeed: 125 * FOOT, diameter: '3.5in' }, 'revPerMin', 136.4, 0.05);
  near(
    'cut.feed',
    { revPerMin: 136.4, cutterTeeth: 10, feedPerTooth: '0.008in' },
    'feedPerMin',
    10.91 * INCH,
    0.005 * INCH,
  );
  // Montana State notes (read): time is work and approach over the feed, (L + A)/f.
  near(
    'cut.wheelTime',
    { teeth: 1, travel: `${12 + 0.98}in`, feedPerMin: 10.91 * INCH, returnMinutes: 0, indexMinutes: 0 },
    'minutes',
    1.19,
    5e-3,
  );
  // A cutting-tool maker's course (read): 100 mm in a minute at 1000 rev/min is 0.1 mm a turn; 100 mm at 20 mm/min, 5 min.
  near('cut.feed', { revPerMin: 1000, cutterTeeth: 1, feedPerTooth: 0.1 }, 'feedPerMin', 100, 1e-9);
  near(
    'cut.wheelTime',
    { teeth: 1, travel: 100, feedPerMin: 20, returnMinutes: 0, indexMinutes: 0 },
    'minutes',
    5,
    1e-12,
  );
  // No published example of a cutter's strikes: 900 rev/min is 15 a second, of 12 teeth each.
  near('cut.toothFrequency', { revPerMin: 900, cutterTeeth: 12 }, 'hertz', 180, 1e-12);
});

describe('escape wheels', () => {
  // Escape wheels, cut with a fly cutter set over (web page, read): 30 teeth, faces at 10°, set-over taken from a
  // drawing, no figure printed. By hand for 30 mm over the tips; a clockmakers' thread (read) keeps slopes to 6–10°.
  near('escape.offset', { diameter: 30, faceAngle: 10 }, 'offset', 2.605, 5e-4);
  near('escape.offset', { diameter: 30, faceAngle: 6 }, 'offset', 1.568, 5e-4);
  near('escape.offset', { diameter: 40, faceAngle: 10 }, 'offset', 3.473, 5e-4);

  // Online clock-building notes (read): a 16-tooth wheel of 1.125 in is indexed by 22.5°, which is 360/16. The page
  // prints “365 degrees / 16 teeth = 22.5”; 365/16 would be 22.81.
  it('sixteen teeth are 22.5° apart: 360/16, where 365/16 is a misprint', () => {
    const { angle } = work('circle.chord', { diameter: '1.125in', divisions: 16 }).found;
    expect(angle).toBe(22.5);
    expect(Math.abs((angle as number) - 365 / 16)).toBeGreaterThan(0.3);
  });
});
