import { fadeStages, type ProblemKind } from '../problems/kind.js';
import type { ProblemDeclaration } from '../problems/schema.js';
import type { FrontMatter } from './schema.js';

/**
 * The problems of a lesson in their order, each as often as it is asked. In a lesson that fades, those of one kind
 * (asked several times, or finding the same by the same calculation) are printed the first with an example worked,
 * the next with one blank, the next with the last steps blank, and then bare; one that stands alone is bare.
 */
export function kindsOf({ problems, fade }: Pick<FrontMatter, 'problems' | 'fade'>): ProblemKind[] {
  const asked = Object.entries(problems).flatMap(([key, declared]) =>
    Array.from({ length: declared.times }, (_, time) => ({
      name: time === 0 ? key : `${key}.${time + 1}`,
      declared,
      like: likeness(key, declared),
    })),
  );
  const seen = new Map<string, number>();
  return asked.map(({ name, declared, like }): ProblemKind => {
    const before = seen.get(like) ?? 0;
    seen.set(like, before + 1);
    const alone = asked.filter((one) => one.like === like).length < 2;
    const stage = fade && !alone && fades(declared) ? (fadeStages[before] ?? 'bare') : 'bare';
    return { name, declared, fade: declared.fade ?? stage };
  });
}

/** What makes two problems of one kind. */
function likeness(key: string, { calculation, find = '', works, method }: ProblemDeclaration): string {
  const own = find === '' || method !== undefined || Object.hasOwn(works, find.split('.')[0] ?? '');
  return calculation === undefined || own ? key : `${calculation}: ${find}`;
}

/** Whether its working can be printed: not of one that prints lines of its own, or is answered by letters. */
const fades = ({ lines, choose }: ProblemDeclaration): boolean => lines === undefined && choose === undefined;
