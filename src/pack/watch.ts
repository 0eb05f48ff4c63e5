import { ContentError } from '../diagnostics/diagnostic.js';
import { ReportedError } from '../diagnostics/errors.js';
import { forgetTemplates } from '../sheets/templates.js';
import { Lookout, same, seenOf, type Watched } from './lookout.js';
import { type Made, make } from './make.js';
import type { Order } from './plan.js';
import { Standing } from './standing.js';
import { tidily } from './tidily.js';
import { filesOf, templatesHere } from './watched.js';

/** What is made again and again, and who is told of it. */
export interface Watch {
  /** The course, if it is one: looked after even where it cannot be read at first. */
  readonly course: string | undefined;
  /** What is wanted, and the folder it goes to, read anew each time. */
  ask(): { readonly order: Order; readonly folder: string };
  readonly quiet: boolean;
  /** @param milliseconds since the file was saved; none the first time */
  made(made: Made, folder: string, milliseconds: number | undefined): void;
  /** Told once: how many files are looked after, and whether the templates are too. */
  watching(files: number, templates: boolean): void;
  /** Told of an error that is no bug. */
  fault(error: ContentError | ReportedError): void;
  /** At the very end, after Ctrl-C. */
  ended(): void;
}

/**
 * Makes what is asked for, and again whatever changes when a file that it is made from is saved, until Ctrl-C. Content
 * at fault is told, and what was made before stays.
 *
 * @throws {CommandError} {MachineError} when the first making fails so that saving a file mends nothing
 */
export async function watch(about: Watch): Promise<never> {
  const lookout = new Lookout();
  const templates = templatesHere();
  let standing = new Standing();
  let watched: Watched = { files: about.course === undefined ? [] : [about.course], folders: [] };
  let seen = new Map(seenOf(watched));
  let styled = seenOf(templates);

  const round = async (saved: number | undefined): Promise<void> => {
    try {
      seen = new Map(seenOf(watched));
      const { order, folder } = about.ask();
      watched = { ...filesOf(order), except: (file) => standing.latest.has(file) };
      // What was seen before the course was read tells whether it has been saved since.
      seen = new Map([...seenOf(watched)].map(([file, stamp]) => [file, seen.get(file) ?? stamp]));
      const quiet = about.quiet || (saved !== undefined && !process.stdout.isTTY);
      const made = await make(order, folder, { quiet, standing });
      for (const file of seen.keys()) if (standing.latest.has(file)) seen.delete(file);
      about.made(made, folder, saved === undefined ? undefined : performance.now() - saved);
    } catch (error) {
      if (!(error instanceof ContentError || error instanceof ReportedError)) throw error;
      if (saved === undefined && !isOfContent(error)) throw error;
      about.fault(error);
    }
  };

  return tidily(
    async () => {
      let saved: number | undefined;
      for (;;) {
        await round(saved);
        if (saved === undefined) about.watching(seen.size, styled.size > 0);
        saved = await lookout.changed(both(watched, templates), new Map([...seen, ...styled]));
        const now = seenOf(templates);
        if (!same(now, styled)) {
          forgetTemplates();
          await standing.close();
          standing = new Standing();
        }
        styled = now;
      }
    },
    async () => {
      lookout.close();
      await standing.close();
    },
    about.ended,
  );
}

const both = (one: Watched, other: Watched): Watched => ({
  ...one,
  files: [...one.files, ...other.files],
  folders: [...one.folders, ...other.folders],
});

/** What the author can mend by saving a file. */
const isOfContent = (error: ContentError | ReportedError): boolean =>
  error instanceof ContentError || error.exitCode === 1;
