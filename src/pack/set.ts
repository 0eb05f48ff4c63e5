import { readFileSync, statSync } from 'node:fs';
import { basename, dirname } from 'node:path';
import { MachineError } from '../diagnostics/errors.js';
import { release } from '../exchange/release.js';
import { sha256Of } from '../print/print-store.js';
import { kindNames } from './kinds.js';
import { digestOfData } from './packing-list.js';
import type { PackingList } from './packing-list-schema.js';
import type { Order } from './plan.js';

/** What a set is: all that its documents follow from. */
export type SetMade = Pick<PackingList, 'set' | 'release' | 'course' | 'options' | 'madeFrom'>;

/** @param date written into the files, where one is told */
export function setOf(order: Order, date: Date | undefined): SetMade {
  const { course, paper, print, units, variant = course.variant, versions, only, printer } = order;
  const named = (['sheets', 'templates', 'cards'] as const).flatMap((kind) =>
    (course[kind] ?? []).map((name) => `${kind}:${name}`),
  );
  const about = {
    release,
    course: { name: course.name, title: course.title, club: course.club },
    options: {
      paper,
      print,
      ...(units === undefined ? {} : { units }),
      ...(variant === undefined ? {} : { variant }),
      ...(versions === undefined ? {} : { versions }),
      only: kindNames.filter((kind) => only.has(kind)),
      ...(named.length === 0 ? {} : { named }),
      ...(printer === undefined ? {} : { printer: { x: printer.x, y: printer.y } }),
      ...(date === undefined ? {} : { date: date.toISOString() }),
    },
    madeFrom: inputsOf(order),
  };
  return { set: digestOfData(about), ...about };
}

/**
 * Works from the files of an order, and makes sure that they were the same all the while.
 *
 * @throws {MachineError} when one was changed meanwhile; what `work` throws
 */
export function fromUnchanged<T>(order: Order, { madeFrom }: SetMade, work: () => T): T {
  const worked = work();
  const now = inputsOf(order);
  const changed = now.find(({ sha256 }, at) => sha256 !== madeFrom[at]?.sha256);
  if (changed)
    throw new MachineError(`the ${changed.what} ${changed.name} was changed while it was read`, [
      'Make the documents again.',
    ]);
  return worked;
}

function inputsOf({ course, kit, learners }: Order): PackingList['madeFrom'] {
  const file = (what: 'course' | 'kit' | 'learners', path: string | undefined) =>
    path === undefined ? [] : [{ what, name: basename(path), sha256: digestOfFile(path) }];
  return [
    ...file('course', course.file),
    ...file('kit', kit),
    ...file('learners', learners),
    ...course.lessons.map((path) => ({
      what: 'lesson' as const,
      name: basename(dirname(path)),
      sha256: digestOfFile(path),
    })),
    ...(course.file === undefined && course.jobs.length > 0
      ? [{ what: 'jobs' as const, name: 'jobs', sha256: digestOfData(course.jobs) }]
      : []),
  ];
}

/** One that cannot be read, or is no file or far too large, is told of by what reads it. */
function digestOfFile(path: string): string {
  try {
    const about = statSync(path);
    return sha256Of(about.isFile() && about.size < MOST ? readFileSync(path) : '');
  } catch {
    return sha256Of('');
  }
}
const MOST = 10_000_000;
