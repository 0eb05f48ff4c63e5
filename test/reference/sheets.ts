import { Desk } from '../../src/reference/desk.js';
import { referenceSheets } from '../../src/reference/index.js';
import type { Figure, ReferenceSheet, SheetKind } from '../../src/reference/sheet.js';
import { kits } from '../lesson/lessons.js';

/** The class wheel of the sample course, and one that goes round in no whole quarters. */
const JOBS = [
  { name: 'Class wheel', teeth: 60 },
  { name: 'Odd wheel', teeth: 77 },
];

/** Every sheet for both workshops in both units, worked once. */
export const worked = referenceSheets.flatMap((kind) =>
  kits
    .filter((kit) => kind.needs?.in(kit) ?? true)
    .flatMap((kit) =>
      (['mm', 'inch'] as const).map((units) => {
        const desk = new Desk(units);
        return { kind, kit, units, sheet: kind.make(desk, kit, JOBS), sources: desk.sources };
      }),
    ),
);

export type WorkedSheet = (typeof worked)[number];

/** What a test is called after. */
export const nameOf = ({
  kind,
  kit,
  units,
}: {
  kind: SheetKind;
  kit: { kit: string };
  units: string;
}): string => `${kind.name}, ${kit.kit}, ${units}`;

/** Every figure with its row and column, from 0. */
export const figuresOf = ({ tables }: ReferenceSheet): { figure: Figure; place: string }[] =>
  tables.flatMap(({ rows, title = '' }) =>
    rows.flatMap(({ cells }, row) =>
      cells.flatMap((cell, column) =>
        typeof cell === 'string' ? [] : [{ figure: cell, place: `${title} row ${row} column ${column}` }],
      ),
    ),
  );
