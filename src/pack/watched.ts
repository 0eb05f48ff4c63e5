import { existsSync, readdirSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { TEMPLATES } from '../sheets/templates.js';
import type { Watched } from './lookout.js';
import type { Order } from './plan.js';

/** What an order is made from, but for the templates. */
export function filesOf({ course, kit, learners }: Pick<Order, 'course' | 'kit' | 'learners'>): Watched {
  const named = [course.file, kit, learners].filter((file) => file !== undefined);
  return {
    files: [...new Set([...named, ...course.lessons].map((file) => resolve(file)))],
    // A lesson that is named by a file of another name may lie in any folder, with anything in it.
    folders: course.lessons.filter((file) => basename(file) === 'lesson.md').map((file) => dirname(file)),
  };
}

/** The templates, where they may be changed: in a checkout of Benchleaf, not where it is installed. */
export function templatesHere(): Watched {
  const folder = fileURLToPath(TEMPLATES);
  if (!existsSync(join(folder, '../src'))) return { files: [], folders: [] };
  const kinds = readdirSync(folder, { withFileTypes: true }).filter((entry) => entry.isDirectory());
  return { files: [], folders: kinds.map(({ name }) => join(folder, name)) };
}
