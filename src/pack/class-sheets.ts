import { learnerCodes, problemsOf } from '../lesson/class-set.js';
import type { PreparedLesson } from '../lesson/prepare.js';
import type { Setting } from '../problems/draw.js';
import { printedVariant } from '../problems/variant.js';
import { classLine } from '../sheets/class-line.js';
import type { ClassLine } from '../sheets/class-model.js';
import type { LessonProblems, ProblemSheet, SheetHead, SheetStyle } from '../sheets/model.js';
import type { UnitSystem } from '../units/format.js';
import { fileName } from './file-name.js';
import type { Learner } from './learners.js';
import { inSeats } from './seats.js';

/** One sheet, its problems drawn when they are wanted. */
export interface Sheet {
  /** As it is printed. */
  readonly variant: string;
  readonly learner?: string;
  /** Of its documents, without an ending; none where there is only one sheet. */
  readonly file?: string;
  readonly style: SheetStyle;
  problems(): ProblemSheet;
}

/** All that a class is handed, and what an instructor marks from. */
export interface ClassSheets {
  readonly sheets: readonly Sheet[];
  /** One for each sheet that has numbers of its own. */
  readonly keys: readonly Sheet[];
  /** Of every learner, or of every version where nobody is named. Read when the sheets are drawn. */
  lines(): ClassLine[];
}

/** Whose sheets, in whose numbers. */
export interface ClassOrder {
  readonly code: string;
  readonly head: SheetHead;
  readonly kit: Setting['kit'];
  readonly style: SheetStyle;
  readonly learners?: readonly Learner[] | undefined;
  /** Two: A and B take turns along the seats. */
  readonly versions?: 2 | undefined;
  lessonsIn(units: UnitSystem): readonly PreparedLesson[];
}

/** Draws that are kept: a sheet's key is written right after it, but those of a whole class would fill the memory. */
const KEPT = 4;
const VERSIONS = ['A', 'B'] as const;

/** The sheets of an order, nothing drawn yet. */
export function classSheets(order: ClassOrder): ClassSheets {
  const { code, learners, versions, style } = order;
  const draw = drawing(order);
  const seated = learners && inSeats(learners);
  const whose = seated ?? (versions ? VERSIONS.map(() => undefined) : [undefined]);
  const named = versions ? VERSIONS.map((version) => `version ${version}`) : seated?.map(({ name }) => name);
  const codes = named ? learnerCodes(code, named) : [code];

  const all = whose.map((learner, place) => {
    const own = { ...style, units: learner?.units ?? style.units, print: learner?.print ?? style.print };
    const at = place % codes.length;
    const version = versions ? (VERSIONS[at] ?? '') : '';
    const numbers = { code: codes[at] ?? code, units: own.units, version };
    const file = learner ? fileName(learner, place + 1) : versions && versionFile(numbers, style);
    return { learner, own, numbers, ...(file === undefined ? {} : { file }) };
  });
  const sheet = ({ learner, own, numbers, file }: (typeof all)[number]): Sheet => {
    const who = learner === undefined ? {} : { learner: learner.name };
    return {
      variant: printedVariant(numbers.code, numbers.units, order.kit),
      ...who,
      ...(file === undefined ? {} : { file }),
      style: own,
      problems: () => ({ ...draw(numbers), ...who }),
    };
  };
  // Who has the same version and the same units has the same key.
  const keyed = new Map(
    all.map((one) => [`${one.numbers.code} ${one.numbers.units} ${versions ? '' : one.file}`, one]),
  );
  return {
    sheets: all.map(sheet),
    keys: [...keyed.values()].map((one) => {
      // A key is the instructor's: as large as theirs, in the learner's units.
      const own = { ...one.own, print: style.print };
      return versions
        ? sheet({ ...one, own, learner: undefined, file: versionFile(one.numbers, style) })
        : sheet({ ...one, own });
    }),
    lines: () =>
      all.map((one) =>
        classLine(draw(one.numbers), {
          seat: one.learner?.seat ?? '',
          learner: one.learner?.name ?? '',
          version: one.numbers.version,
        }),
      ),
  };
}

interface Numbers {
  readonly code: string;
  readonly units: UnitSystem;
  readonly version: string;
}

function versionFile({ version, units }: Numbers, style: SheetStyle): string {
  return ['version', version.toLowerCase(), ...(units === style.units ? [] : [units])].join('-');
}

/** Draws the problems of a code, or has them from before. */
function drawing({ head, kit, lessonsIn }: ClassOrder): (numbers: Numbers) => ProblemSheet {
  const kept = new Map<string, readonly LessonProblems[]>();
  return ({ code, units, version }) => {
    const variant = printedVariant(code, units, kit);
    const lessons =
      kept.get(variant) ??
      lessonsIn(units).map((prepared) => ({
        lesson: prepared.lesson,
        problems: problemsOf(prepared, code, { kit, units }),
      }));
    kept.delete(variant);
    kept.set(variant, lessons);
    for (const [oldest] of kept) if (kept.size > KEPT) kept.delete(oldest);
    return { head, variant, ...(version === '' ? {} : { version }), lessons };
  };
}
