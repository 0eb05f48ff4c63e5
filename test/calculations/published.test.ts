import { describe, expect, it } from 'vitest';
import { work } from '../../src/index.js';

const near = (name: string, given: Record<string, unknown>, key: string, value: number, within: number) =>
  it(`${name} ${JSON.stringify(given)}: ${key} = ${value}`, () =>
    expect(Math.abs((work(name, given).found[key] as number) - value)).toBeLessThanOrEqual(within));

describe("a cutter maker's dimension table (BS 978 Part 2, NHS 56702-4), read", () => {
  // The second wheel form's root is (N - 4) M, the short form's (N - 2.14) M, the round-bottom form's blank (N + 2.50) M.
  const wheel = { teeth: 60, module: 0.8, convention: '2.76' };
  near('wheel.blank', wheel, 'outsideDiameter', 0.8 * 62.76, 1e-9);
  near('wheel.blank', { ...wheel, depthForm: '3.38' }, 'rootDiameter', 0.8 * 56, 1e-9);
  near('wheel.blank', { ...wheel, depthForm: '2.45' }, 'depthOfCut', 1.96, 1e-9);
  near('wheel.blank', { ...wheel, depthForm: 3 }, 'outsideDiameter', 50, 1e-9);
  near('pinion.blank', { leaves: 8, module: 0.8 }, 'outsideDiameter', 7.768, 1e-9);
  near('pinion.blank', { leaves: 10, module: 1 }, 'depthOfCut', 2.855, 1e-9);
});

describe('BS 978-2 practical addendum factors, as commonly reported (from memory; figures already times 0.95)', () => {
  for (const [leaves, ratio, factor] of [
    [6, 6, 1.303],
    [7, 8, 1.399],
    [8, 7.5, 1.471],
    [10, 8, 1.607],
    [12, 10, 1.734],
    [16, 12, 1.94],
  ] as const)
    near('wheel.addendumFactor', { teeth: leaves * ratio, leaves }, 'practicalFactor', factor, 6e-4);

  // Ward L. Goodrich, The Modern Clock (1905): seven-twentieths of the pinion's pitch radius for eight leaves,
  // an older rule about 4 % below the standard. Both stand; the standard is followed.
  it('eight leaves stand 3 to 6 % above the old seven-twentieths rule', () => {
    const found = work('wheel.addendumFactor', { teeth: 56, leaves: 8 }).found.practicalFactor as number;
    expect(found / (0.35 * 4)).toBeGreaterThan(1.03);
    expect(found / (0.35 * 4)).toBeLessThan(1.06);
  });
});

describe('module and pitch', () => {
  near('module.convert', { circularPitch: '0.1245in' }, 'module', 1.00659, 1e-4); // common practice: near module 1
  near('module.convert', { diametralPitch: 16 }, 'circularPitch', 4.98728, 1e-4); // 25.4 pi / 16
  near('mesh.centreDistance', { teeth: 50, leaves: 10, module: 0.4 }, 'centreDistance', 12, 1e-12); // a published lesson on module, read
});

describe('indexing', () => {
  const plates = '15,16,17,18,19,20,21,23,27,29,31,33,37,39,41,43,47,49';
  // Brown & Sharpe and Machinery's Handbook index tables, from memory; US Army OD1644 (read) for 42 on a 21 circle.
  const rows: [number, number, number, number][] = [
    [3, 13, 13, 39],
    [7, 5, 35, 49],
    [9, 4, 12, 27],
    [13, 3, 3, 39],
    [22, 1, 27, 33],
    [32, 1, 5, 20],
    [42, 0, 20, 21],
    [56, 0, 35, 49],
    [60, 0, 26, 39],
    [64, 0, 10, 16],
    [95, 0, 8, 19],
    [144, 0, 5, 18],
    [164, 0, 10, 41],
    [180, 0, 6, 27],
  ];
  it.each(rows)('%i divisions on a 40:1 head: %i turns and %i in %i', (divisions, turns, holes, circle) => {
    const { found } = work('dividing.simple', { divisions, ratio: 40, circles: plates });
    expect(found.turns).toBe(turns);
    expect(found.settings).toContainEqual({ holes, circle });
  });

  // A rotary-table manual (read): 17, 19 and 53 divisions at 90:1.
  it.each([
    [17, 5, 10, 34],
    [19, 4, 28, 38],
    [53, 1, 37, 53],
  ])('%i divisions at 90:1: %i turns and %i in %i', (divisions, turns, holes, circle) => {
    const { found } = work('dividing.simple', { divisions, ratio: 90, circles: [34, 38, 53] });
    expect(found).toMatchObject({ turns, settings: [{ holes, circle }] });
  });

  it('cannot do 25 at 72:1 on 33, 35, 36, 37, 39: a published practice sheet asks it all the same', () =>
    expect(
      work('dividing.simple', { divisions: 25, ratio: 72, circles: '33,35,36,37,39' }).found.possible,
    ).toBe(false));

  it('reaches every count to 50 on the three plates at 40:1, as the index tables say, and 96 not', () => {
    for (let divisions = 2; divisions <= 50; divisions++)
      expect(work('dividing.simple', { divisions, ratio: 40, circles: plates }).found.possible).toBe(true);
    expect(work('dividing.simple', { divisions: 96, ratio: 40, circles: plates }).found.possible).toBe(false);
  });

  it('the tally ends on the head’s whole ratio and marks quarters', () => {
    const rows = work('dividing.tally', { divisions: 60, ratio: 40, circles: '18' }).found.rows as Record<
      string,
      unknown
    >[];
    expect(rows[15]).toMatchObject({ tooth: 15, turns: 10, holes: 0, angle: '90° 0′ 0″', quarter: true });
    expect(rows.at(-1)).toMatchObject({ tooth: 60, turns: 40, holes: 0, quarter: true });
    expect(rows.filter((row) => row.quarter)).toHaveLength(5);
  });
});

describe('setting up and cutting', () => {
  // The chord of a circle by Pythagoras; the slab-milling value is Groover's (from memory): 0.98 in.
  near(
    'setup.overTravel',
    { cutterDiameter: '3.5in', depth: '0.3in', thickness: 10 },
    'approach',
    0.98 * 25.4,
    0.01,
  );
  near('setup.hump', { cutterDiameter: 24, short: 5 }, 'hump', 12 - Math.sqrt(119), 1e-9);
  near('setup.stack', { slideTravel: 30, cutterDiameter: 10, depth: 2, blankThickness: 2 }, 'blanks', 10, 0);
  // University instrument shop speed table (read): 1/4 in at 300 ft/min and 3/8 in at 120 ft/min.
  near('cut.spindleSpeed', { cuttingSpeed: 91.44, diameter: '1/4in' }, 'revPerMin', 4584, 0.5);
  near('cut.spindleSpeed', { cuttingSpeed: 36.576, diameter: '3/8in' }, 'revPerMin', 1222, 0.5);
  // J. Rose (1887), standard set of eight (read).
  near('involute.cutterNumber', { teeth: 68 }, 'number', 2, 0);
  near('involute.cutterNumber', { teeth: 22 }, 'number', 5, 0);
  near('involute.cutterNumber', { teeth: 13 }, 'number', 8, 0);
  near('involute.cutterNumber', { teeth: 13, series: 'module' }, 'number', 1, 0); // common practice, no source
});
