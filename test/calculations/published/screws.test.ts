import { describe, expect, it } from 'vitest';
import { work } from '../../../src/index.js';
import { near } from './near.js';

type Setting = {
  drivers: number[];
  driven: number[];
  pitch: number;
  errorPpm: number;
  errorPer100mm: number;
};

const IN = 25.4;
const form = (series: string, size: string) => work('thread.form', { series, size }).found;
const share = (given: Record<string, unknown>, base: string, drill: unknown): number =>
  work('thread.tappingDrill', { ...given, base, drills: [drill] }).found.engagementAtNearest as number;

describe('BA threads', () => {
  // Diameters: a model engineers' thread table (read); pitches: a magazine article and a fastener maker's table (read).
  it.each([
    ['0 BA', 6, 1],
    ['1 BA', 5.3, 0.9],
    ['2 BA', 4.7, 0.81],
    ['3 BA', 4.1, 0.73],
    ['4 BA', 3.6, 0.66],
    ['6 BA', 2.8, 0.53],
    ['8 BA', 2.2, 0.43],
    ['9 BA', 1.9, 0.39],
    ['10 BA', 1.7, 0.35],
    ['14 BA', 1, 0.23],
    ['15 BA', 0.9, 0.21], // BS 93 (from memory); a rounded pitch would make 0.92
    ['16 BA', 0.79, 0.19], // BS 93 (from memory); a rounded pitch would make 0.82
  ])('%s is %d mm by %d mm', (size, majorDiameter, pitch) =>
    expect(form('ba', size)).toMatchObject({ majorDiameter, pitch, designation: size }),
  );

  it('the rule wants the pitch before rounding: the two ways of stating it wrongly miss', () => {
    // One trade page says d = 6 × pitch, one article that 2 BA is "the square root of 0.9": neither holds.
    expect(6 * 0.81).not.toBeCloseTo(4.7, 1);
    expect(Math.sqrt(0.9)).not.toBeCloseTo(0.81, 1);
    expect(6 * 0.19 ** 1.2).toBeCloseTo(0.818, 3);
    expect(6 * 0.9 ** (16 * 1.2)).toBeCloseTo(0.794, 3);
  });

  // A fastener page (read): minor diameter d - 1.2 p, effective d - 0.6 p.
  near('thread.form', { series: 'ba', size: '2 BA' }, 'minorDiameter', 3.728, 1e-9);
  near('thread.form', { series: 'ba', size: '2 BA' }, 'pitchDiameter', 4.214, 1e-9);
  // A page on the BA profile (read): angular depth 1.13 p, depth 0.6 p, radius 0.1808346 p.
  near('thread.form', { series: 'ba', size: '0 BA' }, 'sharpHeight', 1.13, 0.01);
  near('thread.form', { series: 'ba', size: '0 BA' }, 'depth', 0.6, 1e-12);
  near('thread.form', { series: 'ba', size: '0 BA' }, 'rootRadius', 0.1808346, 5e-7);
  it('the usual statement of the radius, 2p/11, is half a percent more: such an arc would not touch the flanks', () => {
    const radius = form('ba', '0 BA').rootRadius as number;
    expect(2 / 11 / radius).toBeCloseTo(1.0054, 3);
  });
});

describe('Whitworth threads', () => {
  // A fastener maker's table of thread geometry (read), inches.
  it.each([
    ['1/8', 40, 0.109, 0.093],
    ['5/32', 32, 0.1362, 0.1162],
    ['3/16', 24, 0.1608, 0.1341],
    ['1/4', 20, 0.218, 0.186],
    ['5/16', 18, 0.2769, 0.2414],
    ['3/8', 16, 0.335, 0.295],
    ['1/2', 12, 0.4467, 0.3933], // another table (read) has 0.4466, as the arithmetic does; converted from mm here
    ['5/8', 11, 0.5668, 0.5086],
    ['1', 8, 0.92, 0.84], // another table (read) has the core 0.8399, as the arithmetic does
  ])('%s BSW: %d to the inch, effective %d, core %d', (size, tpi, effective, core) => {
    const found = form('whitworth', `${size} BSW`);
    expect(IN / (found.pitch as number)).toBeCloseTo(tpi, 9);
    expect(Math.abs((found.pitchDiameter as number) / IN - effective)).toBeLessThanOrEqual(1e-4);
    expect(Math.abs((found.coreDiameter as number) / IN - core)).toBeLessThanOrEqual(1e-4);
    expect(found.minorDiameter).toBeCloseTo(found.coreDiameter as number, 9);
  });

  it('5/16 BSW is 0.0356 in deep; one table prints 0.0076, which is its radius over again', () => {
    const { depth, rootRadius } = form('whitworth', '5/16 BSW');
    expect((depth as number) / IN).toBeCloseTo(0.0356, 4);
    expect((rootRadius as number) / IN).toBeCloseTo(0.0076, 4);
  });

  // A page on BSW threads (read): depth 0.640327 p, radius 0.137329 p.
  near('thread.form', { series: 'whitworth', size: '1/4 BSW' }, 'depth', 0.640327 * 1.27, 1e-6);
  near('thread.form', { series: 'whitworth', size: '1/4 BSW' }, 'rootRadius', 0.137329 * 1.27, 1e-6);

  // A gauge maker's list after BS 84:2007 (read).
  it.each([
    ['3/16', 32],
    ['7/32', 28],
    ['1/4', 26],
    ['5/16', 22],
    ['3/8', 20],
    ['7/16', 18],
    ['1/2', 16],
    ['5/8', 14],
    ['3/4', 12],
    ['1', 10],
  ])('%s BSF has %d to the inch', (size, tpi) =>
    expect(form('whitworth', `${size} BSF`).pitch).toBeCloseTo(IN / tpi, 9),
  );
  it('British Standard Brass has 26 to the inch throughout (the same list, read)', () => {
    for (const size of ['1/8', '1/4', '1/2', '1'])
      expect(form('whitworth', `${size} BSB`).pitch).toBeCloseTo(IN / 26, 9);
  });
});

describe('ISO metric threads', () => {
  // Basic minor diameters D1 as a tool catalogue and a metric thread table print them (read), after ISO 724.
  for (const [size, minor] of [
    ['M2', 1.567],
    ['M2.5', 2.013],
    ['M3', 2.459],
    ['M3.5', 2.85],
    ['M4', 3.242],
    ['M5', 4.134],
    ['M10', 8.376],
    ['M12', 10.106],
    ['M16', 13.835],
    ['M20', 17.294],
  ] as const)
    near('thread.form', { series: 'iso', size }, 'minorDiameter', minor, 5e-4);

  it('M8 is 6.647 by ISO 724; one table prints 6.917, which belongs to M8 × 1', () => {
    expect(form('iso', 'M8').minorDiameter).toBeCloseTo(6.647, 3);
    expect(form('iso', 'M8x1').minorDiameter).toBeCloseTo(6.917, 3);
  });

  // Shop practice, the depths of a screw reckoned by 0.6134 P.
  near('thread.form', { series: 'iso', size: 'M10' }, 'depth', 0.92, 5e-4);
  near('thread.form', { series: 'iso', size: 'M10' }, 'coreDiameter', 8.16, 5e-4);
  near('thread.form', { series: 'iso', size: 'M10' }, 'pitchDiameter', 9.026, 5e-4);
  it('a screw of 8 to the inch: 0.0928 in along a slide at 29° is a sharp V, deeper than the ISO 0.0767', () => {
    const { sharpHeight, depth } = work('thread.form', { series: 'iso', diameter: '1in', pitch: '1/8in' })
      .found as Record<string, number>;
    const flat = 0.75 * (sharpHeight ?? 0);
    expect(flat / Math.cos((29 * Math.PI) / 180) / IN).toBeCloseTo(0.0928, 4);
    expect((depth ?? 0) / IN).toBeCloseTo(0.0767, 4);
  });
});

describe('tapping drills', () => {
  // Tap Drill Sizes, a tool catalogue, p. 782 (read): holes for 80, 75, 70, 65 and 60 % on the US base.
  it.each([
    ['M2', [1.58, 1.61, 1.64, 1.66, 1.69]],
    ['M2.5', [2.03, 2.06, 2.09, 2.12, 2.15]],
    ['M4', [3.27, 3.32, 3.36, 3.41, 3.45]],
  ] as const)('%s: the catalogue’s holes', (size, holes) =>
    holes.forEach((hole, i) => {
      const engagement = 80 - 5 * i;
      const given = { series: 'iso', size, base: 'us', engagement, drills: [hole] };
      expect(Math.abs((work('thread.tappingDrill', given).found.drill as number) - hole)).toBeLessThanOrEqual(
        0.0055,
      );
    }),
  );

  it('M3 with 2.5 and M6 with 5.0 are 77, 82 or 92 % by the base (drill charts, from memory)', () => {
    for (const [size, drill] of [
      ['M3', 2.5],
      ['M6', 5],
    ] as const)
      for (const [base, percent] of [
        ['us', 77],
        ['external', 82],
        ['internal', 92],
      ] as const)
        expect(Math.round(share({ series: 'iso', size }, base, drill))).toBe(percent);
  });

  it('M6 at 65 %: 5.20 on the screw’s depth, 5.30 on the nut’s (an article on tapping sizes, read)', () => {
    const hole = (base: string) =>
      work('thread.tappingDrill', { series: 'iso', size: 'M6', base, engagement: 65, drills: [5] }).found
        .drill;
    expect(hole('external')).toBeCloseTo(5.2, 2);
    expect(hole('internal')).toBeCloseTo(5.3, 2);
  });

  // A trainees' handbook, Thread Cutting by Dies and Taps, appendix 1 (read): older sizes, diameter less pitch.
  it.each([
    ['M6', 5],
    ['M8', 6.75],
    ['M10', 8.5],
    ['M12', 10.25],
    ['M14', 12],
    ['M16', 14],
    ['M20', 17.5],
    ['M24', 21],
  ])('%s with %d is the whole pitch off the diameter, 92.4 %% on the internal base', (size, drill) =>
    expect(share({ series: 'iso', size }, 'internal', drill)).toBeCloseTo(92.4, 1),
  );

  // ISO 2306 and drill charts (from memory); M8 and M12 are the present sizes, 0.05 over or under those above.
  it.each([
    ['M2', 1.6],
    ['M2.5', 2.05],
    ['M3', 2.5],
    ['M4', 3.3],
    ['M5', 4.2],
    ['M6', 5],
    ['M8', 6.8],
    ['M10', 8.5],
    ['M12', 10.2],
  ])('%s with %d leaves 88 to 96 %% on the internal base', (size, drill) => {
    const left = share({ series: 'iso', size }, 'internal', drill);
    expect(left).toBeGreaterThan(88);
    expect(left).toBeLessThan(96);
  });

  it('1/4 BSW: 5.10 leaves 77 % (threading tables, read; a trainees’ handbook has 5.0 or 5.10)', () => {
    expect(Math.round(share({ series: 'whitworth', size: '1/4 BSW' }, 'external', 5.1))).toBe(77);
    // The clearance drill beside it, 6.50, leaves none.
    const { found } = work('thread.tappingDrill', {
      series: 'whitworth',
      size: '1/4 BSW',
      base: 'external',
      drills: [6.5],
    });
    expect(found).toMatchObject({ possible: false, nearestDrill: null, engagementAtNearest: null });
  });

  // A model engineers' thread table (read), inches; the shares are arithmetic.
  it.each([
    ['3/16 × 40', '5/32in', 0.1555, 97.6],
    ['7/32 × 40', '3/16in', 0.1867, 97.6],
    ['5/16 × 32', '0.277in', 0.2725, 88.7],
    ['3/8 × 32', '0.332in', 0.335, 107.4], // Q is smaller than the core: more than a full thread
    ['3/8 × 40', '11/32in', 0.343, 97.6],
  ])('%s ME with %s: core %d in, %d %%', (size, drill, core, percent) => {
    expect((form('me', size).coreDiameter as number) / IN).toBeCloseTo(core, 4);
    expect(share({ series: 'me', size }, 'external', drill)).toBeCloseTo(percent, 0);
  });

  // Machinery's Handbook, 31st ed., p. 2155, table 2 (read): 60° threads, US base. Its figures are rounded from other
  // roundings: up to a point and a half from its own formula, which is followed.
  it.each([
    [0.06, 80, 0.0492, 68, 1.6],
    [0.06, 80, 0.0472, 79, 0.5],
    [0.073, 64, 0.0625, 51, 0.8],
    [0.073, 64, 0.061, 59, 0.5],
    [0.073, 72, 0.0635, 53, 0.5],
    [0.073, 72, 0.0595, 75, 0.5],
    [0.086, 56, 0.073, 56, 0.5],
    [0.086, 56, 0.07, 69, 0.5],
    [0.086, 56, 0.0689, 74, 0.5],
    [0.086, 64, 0.0748, 55, 0.5],
    [0.086, 64, 0.073, 64, 0.5],
    [0.086, 64, 0.0709, 74, 0.5],
    [0.086, 64, 0.07, 79, 0.5],
  ])('%d in by %d to the inch, drill %d: %d %%', (diameter, tpi, drill, percent, within) => {
    const given = { series: 'iso', diameter: `${diameter}in`, pitch: `1/${tpi}in` };
    expect(Math.abs(share(given, 'us', `${drill}in`) - percent)).toBeLessThanOrEqual(within);
  });
});

describe('threads over wires', () => {
  // A model engineers' club page (read): M = D + 3W - 1.5155/N; best, largest and smallest wire for 14 to the inch.
  const unified = { series: 'iso', diameter: '7/16in', pitch: '1/14in' };
  near('thread.overWires', { ...unified, wireDiameter: '0.045in' }, 'measurement', 0.464 * IN, 5e-4 * IN);
  near('thread.overWires', unified, 'bestWire', 0.041 * IN, 5e-4 * IN);
  it('the page’s largest and smallest wires, 0.064 and 0.040 in, are shop limits within the true ones', () => {
    const { largestWire, smallestWire } = work('thread.overWires', unified).found as Record<string, number>;
    expect(0.064 * IN).toBeLessThan(largestWire ?? 0);
    expect(0.04 * IN).toBeGreaterThan(smallestWire ?? Infinity);
  });
  // US Army Ordnance OD1645 (read): 0.57735 over the threads per inch.
  near(
    'thread.overWires',
    { series: 'iso', diameter: '1in', pitch: '1/8in' },
    'bestWire',
    (0.57735 / 8) * IN,
    1e-5,
  );
  // The Whitworth form over wires (handbooks, from memory): M = E + 3.1657 W - 0.9605 p; best wire 0.5637 p.
  near('thread.overWires', { series: 'whitworth', size: '1/4 BSW' }, 'bestWire', 0.5637 * 1.27, 1e-4);
  near(
    'thread.overWires',
    { series: 'whitworth', size: '1/4 BSW', wireDiameter: 0.75 },
    'measurement',
    0.218 * IN + 3.1657 * 0.75 - 0.9605 * 1.27,
    2e-3,
  );
  near('thread.overWires', { series: 'iso', size: 'M10' }, 'measurement', 10.325, 5e-4); // worked in the shop way
});

describe('change wheels', () => {
  const settings = (given: Record<string, unknown>) =>
    work('screwcut.changeWheels', given).found.settings as Setting[];

  it.each([
    // F. D. Jones, Turning and Boring (read): 3 mm on a screw constant of 6: stud 90, lead screw 127.
    [{ pitch: 3, leadTpi: 6, wheels: '90,127' }, [90], [127]],
    // J. Rose (read): 36/48 × 66/18 × 4 is 11 to the inch; in that sum 36 and 66 are on the lead screw's side.
    [{ tpi: 11, leadTpi: 4, wheels: '36,66,48,18' }, [48, 18], [66, 36]],
    // Construction Tools, Selection of Simple Gear Wheels and of Screwing Wheels (read).
    [{ tpi: 4, leadTpi: 2, wheels: '20,40' }, [20], [40]],
    [{ tpi: 1.5, leadTpi: 2, wheels: '20,15' }, [20], [15]],
    [{ tpi: 1.5, leadTpi: 2, wheels: '40,30' }, [40], [30]],
    [{ tpi: 7, leadTpi: 1, wheels: '20,140' }, [20], [140]],
    // Metric Threading on the Lathe (read): 8 to the inch through 127/100 is 2.5 mm.
    [{ pitch: 2.5, leadTpi: 8, wheels: '100,127' }, [100], [127]],
    // Shop practice: 1 mm on 8 to the inch, 3 mm on the same, 20 to the inch on 3 mm.
    [{ pitch: 1, leadTpi: 8, wheels: '40,127' }, [40], [127]],
    [{ pitch: 3, leadTpi: 8, wheels: '120,127' }, [120], [127]],
  ] as const)('%o: exactly', (given, drivers, driven) =>
    expect(settings(given)).toContainEqual({
      drivers,
      driven,
      pitch: expect.any(Number),
      errorPpm: 0,
      errorPer100mm: 0,
    }),
  );

  it('2.3 to the inch on 1.8: a wheel of 25.5555 teeth is none, so the train is compound', () => {
    const { found } = work('screwcut.changeWheels', { tpi: 2.3, leadTpi: 1.8, wheels: '20,25,26,30,35,40' });
    expect(found).toMatchObject({ numerator: 18, denominator: 23, possible: false });
    expect((20 * (found.denominator as number)) / (found.numerator as number)).toBeCloseTo(25.5555, 3);
    expect(settings({ tpi: 2.3, leadTpi: 1.8, wheels: '20,45,46,25' })[0]).toMatchObject({
      drivers: [45, 20],
      driven: [46, 25],
    });
  });

  // A chart for metric threads on 8 to the inch (read): 80 and 63 for 127 and 100, one part in 8000 long.
  // Its first three rows have 70 and 35 besides, and 50 on the lead screw: here one wheel of 100 does their work.
  it.each([
    [0.7, [28, 100], 0.70009],
    [0.75, [30, 100], 0.75009],
    [0.8, [32, 100], 0.8001],
    [1.25, [30, 60], 1.25016],
    [1.5, [30, 50], 1.50019],
    [2, [40, 50], 2.00025],
    [2.5, [55, 55], 2.50031],
    [3, [60, 50], 3.00038],
  ] as const)('%d mm on 8 to the inch with 63 and 80: %o', (pitch, [first, last], cut) => {
    const found = settings({ pitch, leadTpi: 8, wheels: [first, last, 63, 80], tolerancePpm: 200 });
    const setting = found.find(
      ({ drivers, driven }) =>
        drivers.includes(63) && drivers.includes(first) && driven.includes(80) && driven.includes(last),
    );
    expect(setting?.pitch).toBeCloseTo(cut, 4);
    expect(setting?.errorPpm).toBeCloseTo(125, 9);
    expect(setting?.errorPer100mm).toBeCloseTo(0.0125, 12);
  });

  it('20 driving 63 is not half of 127: 1.0079 mm, 0.79 % long; 37 driving 47 … is 0.021 % short', () => {
    const [half] = settings({ pitch: 1, leadTpi: 8, wheels: '20,63', tolerancePpm: 8000 });
    expect(half?.pitch).toBeCloseTo(1.0079, 4);
    expect(half?.errorPpm).toBeCloseTo(7937, 0);
    // 37/47 for 100/127.
    const [prime] = settings({ pitch: 2.5, leadTpi: 8, wheels: '37,47', tolerancePpm: 300 });
    expect(prime?.errorPpm).toBeCloseTo(-212.8, 1);
  });

  it('a screw of 14/11 mm taken for one of 1/20 in slips a thread in 23.33 in (a club page on a dial, read)', () => {
    const [same] = settings({ tpi: 20, leadPitch: '14/11', wheels: '40,40', tolerancePpm: 3000 });
    expect(same?.pitch).toBeCloseTo(1.2727, 4);
    const error = (same?.errorPpm ?? 0) / 1e6;
    expect((0.05 * (1 + error)) / error).toBeCloseTo(23.33, 2);
  });
});
