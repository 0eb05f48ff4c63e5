import { dirname, resolve } from 'node:path';
import { z } from 'zod';
import { ContentError, type Diagnostic } from '../diagnostics/diagnostic.js';
import { CommandError } from '../diagnostics/errors.js';
import { readCode } from '../problems/code.js';
import { readAll } from '../reading/all.js';
import { printableName } from '../reading/glyphs.js';
import type { Path } from '../reading/places.js';
import { leadsAstray } from '../reading/plain-name.js';
import { leadsOut, readText } from '../reading/text.js';
import { readYaml } from '../reading/yaml.js';
import { type Job, jobSchema } from './job.js';
import { isFile, kitHint, lessonFile, lessonHint, OWN_LESSONS } from './shelf.js';

/** What to print for a class. Paths are absolute. */
export interface Course {
  readonly file: string;
  readonly title: string;
  readonly club: string;
  readonly kit: string;
  /** As it is printed; undefined where the course has none. */
  readonly variant: string | undefined;
  /** The file of each lesson, in the order of the course. */
  readonly lessons: readonly string[];
  readonly jobs: readonly Job[];
}

/** Under any system: what is on another machine would be asked for over the network. */
const path = z
  .string()
  .min(1)
  .max(500)
  .refine((typed) => !leadsAstray(typed), {
    message: 'expected a path from the folder of the course, such as ../kits/my-kit.yaml',
  });
const kitPath = path.refine((typed) => /\.ya?ml$/i.test(typed), {
  message: 'expected the file of a kit, which ends in .yaml',
});
const code = z
  .string('expected a variant code in quotation marks, such as "7KQ-2M4-X"')
  .transform((typed, context) => {
    try {
      return readCode(typed);
    } catch (error) {
      if (!(error instanceof CommandError)) throw error;
      context.addIssue({ code: 'custom', message: error.message });
      return z.NEVER;
    }
  });

const courseSchema = z.strictObject({
  course: printableName,
  club: printableName,
  kit: kitPath,
  variant: code.optional(),
  lessons: z.array(path).min(1).max(60),
  jobs: z.array(jobSchema).max(60).default([]),
});

/**
 * Reads and checks a course. Its kit is named from its own folder; its lessons are too, or are among those that
 * come with Benchleaf.
 *
 * @throws {CommandError} no such file; {ContentError} with every fault and its place
 */
export function readCourse(file: string): Course {
  const [course] = readAll([file], (one) => readText(one, 'course'), courseFrom);
  return course as Course;
}

function courseFrom(yaml: string, file: string): Course {
  const { data, places } = readYaml(yaml, courseSchema, { file, area: 'course' });
  const { course: title, club, variant, jobs } = data;
  const here = dirname(resolve(file));
  const shelves = [here, OWN_LESSONS];
  const faults: Diagnostic[] = [];
  const fault = (rule: string, at: Path, message: string, hint: string) =>
    faults.push({
      severity: 'error',
      rule: `course/${rule}`,
      message,
      file,
      ...places.value(at),
      hints: [hint],
    });

  const kit = resolve(here, data.kit);
  if (!isFile(kit))
    fault('kit', ['kit'], `there is no kit ${JSON.stringify(data.kit)}`, kitHint(data.kit, here));
  else if (leadsOut(kit))
    fault('kit', ['kit'], 'the kit is a link that leads out of its folder', 'Put the file itself there.');
  const lessons: string[] = [];
  for (const [index, folder] of data.lessons.entries()) {
    const found = lessonFile(folder, shelves);
    const at = ['lessons', index];
    if (found === undefined)
      fault('lesson', at, `there is no lesson ${JSON.stringify(folder)}`, lessonHint(folder, shelves));
    else if (lessons.includes(found))
      fault('lesson', at, 'the lesson is there already', 'Name each lesson once.');
    else lessons.push(found);
  }
  if (faults.length > 0) throw new ContentError(faults);
  return { file: resolve(file), title, club, kit, variant, lessons, jobs };
}
