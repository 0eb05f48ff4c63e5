import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { workInFull } from '../../src/calculations/work.js';
import { evaluateFormula } from '../../src/formula/formula.js';
import { threadTable } from '../../src/handbook/screws/thread-table.js';
import { InputError, work } from '../../src/index.js';

const found = (name: string, given: Record<string, unknown>) =>
  work(name, given).found as Record<string, number>;

/** The line with which a value is refused. */
function refusal(name: string, given: Record<string, unknown>): string {
  try {
    work(name, given);
  } catch (error) {
    if (error instanceof InputError) return error.message;
    throw error;
  }
  throw new Error('was not refused');
}

describe('threads', () => {
  it('every size of every series is answered, with its own name, in all three calculations', () => {
    for (const [series, threads] of Object.entries(threadTable))
      for (const { name, diameter, pitch } of threads) {
        const form = work('thread.form', { series, size: name });
        expect(form.found).toMatchObject({ designation: name, pitch: expect.closeTo(pitch, 9) });
        const drills = [0.8 * diameter, 0.9 * diameter];
        for (const base of ['external', 'internal'])
          work('thread.tappingDrill', { series, size: name, base, drills });
        work('thread.overWires', { series, size: name });
        // By diameter and pitch it is the same thread, though a namesake may come first.
        const same = work('thread.form', { series, diameter, pitch }).found;
        expect({ ...same, designation: '' }).toEqual({ ...form.found, designation: '' });
      }
  });

  it('no slip lands near the right answer on any thread', () => {
    for (const [series, threads] of Object.entries(threadTable))
      for (const { name: size, diameter, pitch } of threads) {
        const drills = [diameter - 0.9 * pitch];
        const bases = series === 'iso' ? ['external', 'internal', 'us'] : ['external', 'internal'];
        const asked: [string, Record<string, unknown>][] = [
          ['thread.form', { series, size }],
          ['thread.overWires', { series, size }],
          ...bases.map((base): [string, Record<string, unknown>] => [
            'thread.tappingDrill',
            { series, size, base, drills },
          ]),
        ];
        for (const [name, given] of asked) {
          const { slips, symbols, found: right } = workInFull(name, given);
          for (const [id, { of, formula }] of Object.entries(slips))
            expect(
              Math.abs(evaluateFormula(formula, symbols) - (right[of] as number)),
              `${size} ${id}`,
            ).toBeGreaterThan(0.01 * pitch);
        }
      }
  });

  it.each([
    ['iso', 'm6', 'M6'],
    ['iso', 'M6 x 1', 'M6'],
    ['iso', 'M6X0.75', 'M6 × 0.75'],
    ['iso', 'M 6 × .75', 'M6 × 0.75'],
    ['whitworth', '1/4', '1/4 BSW'],
    ['whitworth', '1/4" bsf', '1/4 BSF'],
    ['whitworth', '1/4 in BSB', '1/4 BSB'],
    ['whitworth', '1-1/8 BSW', '1 1/8 BSW'],
    ['ba', 2, '2 BA'],
    ['ba', '2BA', '2 BA'],
    ['ba', 0, '0 BA'],
    ['me', '3/16x40', '3/16 × 40 ME'],
    ['me', '3/16-40 ME', '3/16 × 40 ME'],
    ['me', '3/8 ME 32', '3/8 × 32 ME'],
  ])('%s %j is %s', (series, size, designation) =>
    expect(work('thread.form', { series, size }).found.designation).toBe(designation),
  );

  it('a diameter and pitch outside every table is a thread as well; one inside has its name', () => {
    expect(work('thread.form', { series: 'iso', diameter: 6, pitch: 0.9 }).found.designation).toBe(
      '6 × 0.9 mm',
    );
    expect(work('thread.form', { series: 'iso', diameter: 6, pitch: 1 }).found.designation).toBe('M6');
    expect(
      work('thread.form', { series: 'whitworth', diameter: '1/4in', pitch: '1/20in' }).found.designation,
    ).toBe('1/4 BSW');
  });

  it('both routes agree on any diameter and pitch, and the diameters lie in order', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('iso', 'whitworth', 'ba', 'me'),
        fc.double({ min: 0.3, max: 150, noNaN: true }),
        fc.double({ min: 0.01, max: 0.5, noNaN: true }),
        (series, diameter, share) => {
          const pitch = Math.min(12, Math.max(0.05, diameter * share));
          const sizes = found('thread.form', { series, diameter, pitch });
          expect(sizes.majorDiameter).toBeGreaterThan(sizes.pitchDiameter ?? Infinity);
          expect(sizes.pitchDiameter).toBeGreaterThan(sizes.minorDiameter ?? Infinity);
          expect((sizes.minorDiameter ?? 0) - (sizes.coreDiameter ?? 0)).toBeGreaterThan(-1e-9);
          expect(sizes.coreDiameter).toBeGreaterThan(0);
          const wires = found('thread.overWires', { series, diameter, pitch });
          expect(wires.measurement).toBeGreaterThan(diameter);
        },
      ),
      { numRuns: 200 },
    );
  });

  it.each([
    [{ series: 'iso', size: 'M6x0.9' }, /size: "M6X0.9" is not accepted; give a size from M1 to M64/],
    [{ series: 'iso', size: '1/4 BSW' }, /size/],
    [{ series: 'whitworth', size: '1/3 BSW' }, /size/],
    [{ series: 'whitworth', size: '1/0' }, /size/],
    [{ series: 'ba', size: '17 BA' }, /a number from 0 to 16/],
    [{ series: 'me', size: '3/16' }, /with its threads per inch/],
    [{ series: 'me', size: '3/16x26' }, /size/],
    [{ series: 'iso' }, /size is missing; give a size from M1 to M64/],
    [{ series: 'iso', diameter: 6 }, /pitch is missing/],
    [{ series: 'iso', pitch: 1 }, /diameter is missing/],
    [
      { series: 'iso', diameter: 6, pitch: 4 },
      /pitch: 4 is not accepted; give at most half the diameter, 3 mm/,
    ],
    [{ series: 'iso', size: 'M6', pitch: 1 }, /not both/],
  ])('%o is refused', (given, line) => expect(refusal('thread.form', given)).toMatch(line));
});

describe('tapping drills', () => {
  const m6 = { series: 'iso', size: 'M6', base: 'external', drills: '4.8,5,5.1,5.2,5.5' };

  it('more thread is a smaller hole; what a hole leaves is what it was made for', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(['iso', 'M6'], ['whitworth', '1/4 BSF'], ['ba', '2 BA'], ['me', '1/4x40']),
        fc.constantFrom('external', 'internal'),
        fc.double({ min: 20, max: 109, noNaN: true }),
        ([series, size], base, engagement) => {
          const given = { series, size, base, engagement, drills: '1,3,5' };
          const { drill = 0 } = found('thread.tappingDrill', given);
          expect(found('thread.tappingDrill', { ...given, engagement: engagement + 1 }).drill).toBeLessThan(
            drill,
          );
          const { engagementAtNearest } = found('thread.tappingDrill', { ...given, drills: [drill] });
          expect(engagementAtNearest).toBeCloseTo(engagement, 8);
        },
      ),
    );
  });

  it('takes the nearest drill there is, of two as near the larger', () => {
    expect(found('thread.tappingDrill', m6)).toMatchObject({ nearestDrill: 5.1 });
    const ba = { series: 'ba', size: '0 BA', base: 'external', engagement: 75 };
    expect(found('thread.tappingDrill', { ...ba, drills: '5,5.2' })).toMatchObject({ nearestDrill: 5.2 });
    expect(found('thread.tappingDrill', { ...ba, drills: '5.2,5' })).toMatchObject({ nearestDrill: 5.2 });
  });

  it('states its base in the working, and that 55° and 47½° threads know only one depth', () => {
    const words = (given: Record<string, unknown>) => work('thread.tappingDrill', given).working.join(' ');
    for (const base of ['external', 'internal', 'us'])
      expect(words({ ...m6, base })).toContain(`Base: ${base}; 100 % is`);
    const ba = { series: 'ba', size: '2 BA', drills: [4] };
    expect(words({ ...ba, base: 'internal' })).toContain('both bases come to the same');
    expect(found('thread.tappingDrill', { ...ba, base: 'internal' }).drill).toBeCloseTo(
      found('thread.tappingDrill', { ...ba, base: 'external' }).drill ?? 0,
      9,
    );
    expect(refusal('thread.tappingDrill', { ...ba, base: 'us' })).toMatch(
      /^base: "us" is not accepted; give/,
    );
  });

  it('says so when every drill is too large', () =>
    expect(work('thread.tappingDrill', { ...m6, drills: '6,8' }).found).toMatchObject({
      possible: false,
      nearestDrill: null,
      reason: 'every drill is as large as the thread itself',
    }));

  it.each([
    ['6', 'no drill near 8.86 mm; 6 mm would leave 246 %'],
    ['9.9,6', 'no drill near 8.86 mm; 9.9 mm would leave 6 %'],
  ])('and when none is near enough to be of use: %s for M10', (drills, reason) =>
    expect(
      work('thread.tappingDrill', { series: 'iso', size: 'M10', base: 'internal', drills }).found,
    ).toMatchObject({ possible: false, nearestDrill: null, engagementAtNearest: null, reason }),
  );

  it('passes over a nearer drill that leaves too little for one that leaves enough', () => {
    const given = { series: 'iso', size: 'M10', base: 'internal', engagement: 20 };
    expect(found('thread.tappingDrill', { ...given, drills: '9.7,9.3' })).toMatchObject({
      nearestDrill: 9.3,
    });
  });
});

describe('wires', () => {
  it('refuses a wire that sinks below the crests or rides on them, and takes the limits it names', () => {
    for (const [series, size] of [
      ['iso', 'M10'],
      ['whitworth', '1/2 BSW'],
      ['ba', '0 BA'],
    ] as const)
      for (const wireDiameter of [0.02, 19]) {
        const line = refusal('thread.overWires', { series, size, wireDiameter });
        const [, least, most] = /crests, ([\d.]+) to ([\d.]+) mm$/.exec(line) ?? [];
        for (const limit of [least, most])
          work('thread.overWires', { series, size, wireDiameter: Number(limit) });
      }
  });
});

describe('change wheels', () => {
  const set = '20,25,30,35,40,45,50,55,60,65';

  it('says how near it comes where nothing is exact', () => {
    const given = { pitch: 1, leadTpi: 8, wheels: `${set},63,80` };
    const { found: none } = work('screwcut.changeWheels', given);
    expect(none).toMatchObject({ possible: false, count: 0, settings: [] });
    expect(none.reason).toMatch(
      /^no two or four of these wheels give 40\/127 exactly; the nearest is .* \+125 ppm/,
    );
    const { found: some } = work('screwcut.changeWheels', { ...given, tolerancePpm: 125 });
    expect((some.settings as unknown[])[0]).toEqual(none.nearest);
    expect(work('screwcut.changeWheels', { ...given, tolerancePpm: 124 }).found.possible).toBe(false);
  });

  it('an inch set cuts inch threads and a metric set metric ones exactly; 127 carries one over to the other', () => {
    for (const tpi of [10, 12, 16, 20, 24, 32, 40])
      expect(
        work('screwcut.changeWheels', { tpi, leadTpi: 8, wheels: `${set},100,48,32` }).found.possible,
      ).toBe(true);
    for (const pitch of [0.5, 0.75, 1, 1.25, 1.5, 2])
      expect(
        work('screwcut.changeWheels', { pitch, leadTpi: 8, wheels: `${set},127,80,100` }).found.settings,
      ).toContainEqual(expect.objectContaining({ errorPpm: 0 }));
  });

  it('one wheel makes no train, and no wheels near it come nowhere near', () => {
    const lone = work('screwcut.changeWheels', { pitch: 1, leadPitch: 3, wheels: [40] }).found;
    expect(lone).toMatchObject({ possible: false, nearest: null });
    expect(lone.reason).toMatch(/none comes within two percent$/);
  });

  it('lists 200 at most and says how many there are', () => {
    const wheels = Array.from({ length: 60 }, (_, i) => 141 + i);
    const { count, settings } = work('screwcut.changeWheels', {
      pitch: 2.97,
      leadPitch: 3,
      wheels,
      tolerancePpm: 20_000,
    }).found as { count: number; settings: unknown[] };
    expect(settings).toHaveLength(200);
    expect(count).toBeGreaterThan(100_000);
  });

  it('takes a length with its unit, inches exactly', () => {
    const cut = (given: Record<string, unknown>) =>
      work('screwcut.changeWheels', { ...given, wheels: set }).found;
    expect(cut({ pitch: '0.8mm', leadPitch: '3 mm' })).toEqual(cut({ pitch: 0.8, leadPitch: 3 }));
    expect(cut({ pitch: '1/32in', leadPitch: '1/8"' })).toMatchObject({ numerator: 1, denominator: 4 });
    expect(cut({ pitch: '1/32in', leadPitch: 3 })).toEqual(cut({ tpi: 32, leadPitch: 3 }));
    expect(refusal('screwcut.changeWheels', { pitch: '5in', leadPitch: 3, wheels: set })).toMatch(
      /^pitch: "5in" is not accepted; give a length above 0 and up to 100 mm/,
    );
  });

  it('writes a decimal as a decimal, and says where each wheel goes', () => {
    const { working } = work('screwcut.changeWheels', { tpi: 11.5, leadTpi: 8, wheels: '40,20,46,25' });
    expect(working[0]).toBe('Thread: 11.5 threads to the inch, 25.4 ÷ 11.5 = 2.2087 mm.');
    const two = work('screwcut.changeWheels', { pitch: 1, leadPitch: 3, wheels: '25,20,50,30' }).working;
    expect(two.join(' ')).toContain(
      '25 on the mandrel; 50 and 20 together on the stud; 30 on the lead screw (the drivers may change places)',
    );
    const one = work('screwcut.changeWheels', { pitch: 1, leadPitch: 3, wheels: '20,60' }).working.join(' ');
    expect(one).toContain('Best: 20 on the mandrel; 60 on the lead screw; exact.');
  });

  it.each([
    [{ pitch: 1, tpi: 20, leadPitch: 3 }, /^tpi: "20" is not accepted; give pitch or tpi, not both$/],
    [{ pitch: 1, leadPitch: 3, leadTpi: 8 }, /^leadTpi: .*not both$/],
    [{ leadPitch: 3 }, /^pitch is missing; give pitch in mm, or tpi/],
    [{ pitch: 1 }, /^leadPitch is missing/],
    [{ pitch: '1.23456789', leadPitch: '2.98765432' }, /fewer figures/],
    [{ pitch: '999999999999/1000000000001', leadTpi: '1.0000001' }, /fewer figures|accepted/],
  ])('%o is refused', (given, line) =>
    expect(refusal('screwcut.changeWheels', { ...given, wheels: set })).toMatch(line),
  );

  it('the pitch cut is the lead screw’s times drivers over driven, and its errors are of that pitch', () => {
    const { settings } = work('screwcut.changeWheels', {
      pitch: 1.25,
      leadTpi: 8,
      wheels: `${set},63,80`,
      tolerancePpm: 5000,
    }).found as {
      settings: {
        drivers: number[];
        driven: number[];
        pitch: number;
        errorPpm: number;
        errorPer100mm: number;
      }[];
    };
    expect(settings.length).toBeGreaterThan(5);
    const product = (list: number[]) => list.reduce((so, one) => so * one, 1);
    for (const { drivers, driven, pitch, errorPpm, errorPer100mm } of settings) {
      expect(pitch).toBeCloseTo((3.175 * product(drivers)) / product(driven), 10);
      expect(errorPpm).toBeCloseTo((pitch / 1.25 - 1) * 1e6, 6);
      expect(errorPer100mm).toBeCloseTo(100 * (pitch / 1.25) - 100, 9);
    }
  });
});
