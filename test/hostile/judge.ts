import { mkdirSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { ContentError } from '../../src/diagnostics/diagnostic.js';
import { CommandError, MachineError, ReportedError } from '../../src/diagnostics/errors.js';
import { printDiagnostics } from '../../src/diagnostics/print.js';
import { checkAll } from '../../src/pack/check.js';
import { choose } from '../../src/pack/choose.js';
import type { Kind } from '../../src/pack/kinds.js';
import { type Document, planOf } from '../../src/pack/plan.js';
import { lesson, type Nasty } from './nasty.js';

/** What came of a nasty file: what was told, or the texts of all that would be printed or written. */
export type Outcome = { readonly told: string } | { readonly documents: readonly Made[] };

export interface Made {
  readonly name: string;
  readonly text: string;
}

const KIT = resolve('lessons/kits/harrow-lane.yaml');
const ALL: readonly Kind[] = [
  'handout',
  'problems',
  'key',
  'book',
  'cards',
  'grid',
  'marks',
  'practice',
  'qti',
];
const PLACES: Readonly<Record<Nasty['kind'], string>> = {
  lesson: '01-nasty/lesson.md',
  kit: 'nasty.yaml',
  course: 'nasty.yaml',
  list: 'class.csv',
};

/** Puts a file where its kind belongs, below a folder of its own. */
export function placed({ kind, content }: Pick<Nasty, 'kind' | 'content'>, folder: string): string {
  const file = join(folder, PLACES[kind]);
  mkdirSync(join(file, '..'), { recursive: true });
  writeFileSync(file, content());
  mkdirSync(join(folder, '01-small'), { recursive: true });
  writeFileSync(join(folder, '01-small/lesson.md'), lesson());
  return file;
}

/** Takes a file through the real readers, the check and the plan, to the text of every document. */
export function throughAll(kind: Nasty['kind'], file: string): Outcome {
  try {
    if (kind !== 'list') checkAll([kind === 'lesson' ? join(file, '..') : file]);
    const words = {
      lesson: join(file, '..'),
      course: file,
      kit: join(file, '../01-small'),
      list: join(file, '../01-small'),
    };
    const chosen = choose([words[kind]]);
    const plan = planOf({
      ...chosen,
      kit: kind === 'kit' ? file : kind === 'course' ? chosen.kit : KIT,
      paper: 'a4',
      print: 'plain',
      variant: '7KQ-2M4-X',
      ...(kind === 'list' ? { learners: file } : {}),
      // With all that is printed for a class the cards that last are left out: they say nothing of a course but its name.
      only: new Set(
        ALL.filter((one) => ['list', 'course'].includes(kind) || !['grid', 'marks'].includes(one)),
      ),
    });
    return { documents: plan.documents.map(made) };
  } catch (error) {
    return { told: toldBy(error, file) };
  }
}

function made(document: Document): Made {
  const { name } = document;
  if ('data' in document) {
    const data = document.data();
    return { name, text: typeof data === 'string' ? data : '' };
  }
  return { name, text: 'html' in document ? document.html() : document.paged(new Map()) };
}

/** What the command line would say; any error that is not for a user goes on up. */
export function toldBy(error: unknown, file: string): string {
  if (error instanceof ContentError) {
    for (const { message, start, hints, rule } of error.diagnostics) {
      if (!(start.line >= 1 && start.column >= 1)) throw new Error(`${rule} has no place: ${message}`);
      for (const text of [message, ...hints])
        if (text.length > 2000) throw new Error(`${rule} says ${text.length} characters`);
    }
    return printDiagnostics(error.diagnostics, error.sources);
  }
  if (error instanceof CommandError || error instanceof MachineError)
    return `${file}: ${[error.message, ...error.hints].join('\n')}`;
  if (error instanceof ReportedError) throw new Error(`not told at its place: ${error.message}`);
  throw error;
}
