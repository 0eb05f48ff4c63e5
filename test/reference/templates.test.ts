import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { InputError } from '../../src/diagnostics/errors.js';
import { drawingOf } from '../../src/figures/index.js';
import { jobSchema } from '../../src/pack/job.js';
import { Desk } from '../../src/reference/desk.js';
import type { Table } from '../../src/reference/sheet.js';
import { checkBarFor } from '../../src/reference/templates/check-bar.js';
import { templates } from '../../src/reference/templates/index.js';
import { printedBy } from '../../src/reference/templates/printed-by.js';
import type { Piece, TemplateJob } from '../../src/reference/templates/template.js';
import { kits } from '../lesson/lessons.js';
import { isHeld } from './held.js';
import { byRule, classWheel, large, others, small } from './template-jobs.js';

const JOBS = [classWheel, byRule, large, small, ...others];
const [harrowLane] = kits;

const made = (name: string, jobs: readonly TemplateJob[], units: 'mm' | 'inch' = 'mm', kit = harrowLane) =>
  templates.find((kind) => kind.name === name)?.make(new Desk(units), kit, jobs);

const worked = templates.flatMap((kind) =>
  kits.flatMap((kit) =>
    (['mm', 'inch'] as const).map((units) => {
      const desk = new Desk(units);
      const template = kind.make(desk, kit, JOBS);
      return { name: `${kind.name}, ${kit.kit}, ${units}`, template, desk, units };
    }),
  ),
);

describe.each(worked.map((one) => [one.name, one] as const))('%s', (_, { template, desk, units }) => {
  const figures = template.pieces.flatMap(({ tables }) =>
    tables
      .flatMap(({ rows }) => rows.flatMap(({ cells }) => cells))
      .filter((cell) => typeof cell !== 'string'),
  );

  it('prints in every cell what the handbook says', () => {
    expect(figures.length).toBeGreaterThan(0);
    expect(figures.filter((figure) => !isHeld(figure)).map(({ text, find }) => `${find} ${text}`)).toEqual(
      [],
    );
  });

  it('has a cell for each column', () => {
    for (const { tables } of template.pieces)
      for (const { columns, rows } of tables)
        expect(rows.every(({ cells }) => cells.length === columns.length)).toBe(true);
  });

  it('draws every drawing that it names', () => {
    for (const { drawings } of template.pieces)
      for (const { figure, given } of drawings) {
        const style = { labelSize: 2.8, units, maxWidth: Number.POSITIVE_INFINITY };
        expect(drawingOf(figure, { ...given }, style).scale).toMatch(/^(true scale|20 : 1)$/);
      }
  });

  it('says its conventions and what it was held against', () => {
    expect(template.conventions.length).toBeGreaterThan(0);
    expect(desk.sources.length).toBeGreaterThan(0);
  });
});

describe('crossing out', () => {
  const cells = (tables: readonly Table[] = []): Record<string, string> =>
    Object.fromEntries(
      tables.flatMap(({ rows }) =>
        rows.map(({ cells: [head, size, by] }) => [
          String(head),
          [size, by].map((cell) => (typeof cell === 'string' ? cell : cell?.text)).join(' '),
        ]),
      ),
    );

  it('takes what the course names, as lesson 14 prints it', () => {
    // Lesson 14 and its needs: rim 40.8, hub 14, chord 23.98, tips 50.21, root 45.49.
    expect(cells(made('crossing', [classWheel])?.pieces[0]?.tables)).toEqual({
      'Over the tips': '50.21 the sum',
      'Root diameter': '45.49 the sum',
      'Rim, inside diameter': '40.80 the course',
      'Hub, diameter': '14.00 the course',
      'Arm, width at the rim': '2.40 the course',
      'Arm, width at the hub': '3.40 the course',
      'Corners, radius': '1.00 the course',
      'Chord from arm to arm': '23.98 the sum',
      Hole: '6.00 the course',
    });
  });

  it('goes by the rule where it names nothing: 45.488 − 4.72 inside, 2.36 and 3.54 wide', () => {
    expect(cells(made('crossing', [byRule])?.pieces[0]?.tables)).toMatchObject({
      'Rim, inside diameter': '40.77 the rule',
      'Hub, diameter': '13.59 the rule',
      'Arm, width at the rim': '2.36 the rule',
      'Arm, width at the hub': '3.54 the rule',
      'Corners, radius': '0.94 the rule',
    });
  });

  it('takes the hub from the arbor where that is named', () => {
    expect(cells(made('crossing', [large])?.pieces[0]?.tables)['Hub, diameter']).toBe('49.00 the rule');
  });

  it('says which wheel it leaves out, and why', () => {
    const told = made('crossing', [classWheel, small]);
    expect(told?.pieces.map(({ part }) => part)).toEqual([
      'Class wheel: the sizes',
      'Class wheel: to glue on',
    ]);
    expect(told?.conventions.at(-1)).toMatch(/^Small wheel is not here: .{20,}\.$/);
  });

  it('draws nothing over 500 mm, and nothing too fine to be sawn', () => {
    const huge = { ...byRule, name: 'Tower wheel', teeth: 300, module: 3 };
    expect(made('crossing', [byRule, huge])?.conventions.at(-1)).toMatch(
      /^Tower wheel is not here: it is over 500 mm/,
    );
    const tiny = { ...byRule, name: 'Watch wheel', teeth: 40, module: 0.1 };
    expect(made('crossing', [byRule, tiny])?.conventions.at(-1)).toMatch(
      /^Watch wheel is not here: .*too small/,
    );
    const check = templates.find(({ name }) => name === 'wheel-check')?.needs;
    expect([check?.in(harrowLane, [huge]), check?.in(harrowLane, [large])]).toEqual([false, true]);
  });

  it('needs a wheel that can be crossed out', () => {
    const needs = templates.find(({ name }) => name === 'crossing')?.needs;
    expect([[], [small], [small, byRule]].map((jobs) => needs?.in(harrowLane, jobs))).toEqual([
      false,
      false,
      true,
    ]);
  });

  it.each([
    [{ hubDiameter: 3.6 }, /crossing: "Class wheel" .*the arms meet at the hub/],
    [{ rimInsideDiameter: 10 }, /hubDiameter|rimInsideDiameter/],
  ])('refuses a crossing that the course asks for and no wheel can have: %j', (wrong, message) => {
    const job = { ...classWheel, crossing: { ...classWheel.crossing, ...wrong } };
    expect(() => made('crossing', [job])).toThrow(InputError);
    expect(() => made('crossing', [job])).toThrow(message);
  });
});

describe('any job that a course may have', () => {
  it('is drawn, left out, or refused when it is read: never when it is printed', () => {
    const wheels = fc.record({
      teeth: fc.integer({ min: 6, max: 400 }),
      module: fc.double({ min: 0.05, max: 5, noNaN: true }),
      leaves: fc.option(fc.integer({ min: 5, max: 40 }), { nil: undefined }),
      depthForm: fc.constantFrom('2.95', '3.38', '2.45', '3.00'),
      convention: fc.constantFrom('leaves', '2.76'),
      hole: fc.option(fc.double({ min: 0.2, max: 20, noNaN: true }), { nil: undefined }),
      crossing: fc.option(fc.record({ arms: fc.integer({ min: 3, max: 12 }) }), { nil: undefined }),
    });
    const units = fc.constantFrom<'mm' | 'inch'>('mm', 'inch');
    fc.assert(
      fc.property(wheels, units, (wheel, system) => {
        const read = jobSchema.safeParse({ name: 'Any', blankThickness: 2, ...wheel });
        if (!read.success) return;
        for (const { name, needs } of templates) {
          if (!(needs?.in(harrowLane, [read.data]) ?? true)) continue;
          for (const { figure, given } of piecesOf(name, read.data, system).flatMap(
            (piece) => piece.drawings,
          ))
            drawingOf(
              figure,
              { ...given },
              { labelSize: 2.8, units: system, maxWidth: Number.POSITIVE_INFINITY },
            );
        }
      }),
      { numRuns: 150 },
    );
  });

  /** None for one that is refused. */
  function piecesOf(name: string, job: TemplateJob, units: 'mm' | 'inch'): readonly Piece[] {
    try {
      return made(name, [job], units)?.pieces ?? [];
    } catch (error) {
      if (error instanceof InputError) return [];
      throw error;
    }
  }
});

describe('division plates', () => {
  it.each(kits.map((kit) => [kit.kit, kit] as const))(
    '%s: holes clear of each other on every circle',
    (_, kit) => {
      for (const units of ['mm', 'inch'] as const)
        for (const { drawings } of made('division-plate', [], units, kit)?.pieces ?? []) {
          const { circles, diameters, holeDiameter, bore } = drawings[0].given as Record<string, number> & {
            circles: number[];
            diameters: number[];
          };
          circles.forEach((holes, at) => {
            const chord = (diameters[at] ?? 0) * Math.sin(Math.PI / holes);
            expect(chord).toBeGreaterThan(1.5 * (holeDiameter ?? 0));
            const within = at === 0 ? Number(bore) : (diameters[at - 1] ?? 0);
            expect((diameters[at] ?? 0) - within).toBeGreaterThan(3 * (holeDiameter ?? 0));
          });
        }
    },
  );
});

describe('the bar', () => {
  it('is 100 mm or 4 in, right within a fifth of a hundredth', () => {
    const told = (units: 'mm' | 'inch') => {
      const { length, least, most, unit } = checkBarFor(new Desk(units));
      return [length, least.text, most.text, unit];
    };
    expect(told('mm')).toEqual([100, '99.8', '100.2', 'mm']);
    expect(told('inch')).toEqual([101.6, '3.992', '4.008', 'in']);
  });

  it('that measures 96.5 makes 48.45 of 50.21', () => {
    // Lesson 14 (needs of the trade, worked by hand).
    expect(printedBy(new Desk('mm'), { x: 0.965, y: 1.001 }, { words: 'the wheel', length: 50.208 })).toMatch(
      /the wheel should be 50\.21.mm, and comes out 48\.45.mm across and 50\.26.mm down/,
    );
  });
});
