import type { PreparedLesson } from '../lesson/prepare.js';
import type { Setting } from '../problems/draw.js';

/** Lessons as they were last worked, for whoever makes the same ones again and again: only what changed is worked anew. */
export class WorkedLessons {
  readonly #last = new Map<string, { readonly from: string; readonly lesson: PreparedLesson }>();

  /**
   * The lesson of a file, worked unless its text, the kit and the units are those of the last time.
   *
   * @throws what `work` throws; nothing is kept then
   */
  lesson(file: string, text: string, { kit, units }: Setting, work: () => PreparedLesson): PreparedLesson {
    const place = `${units} ${file}`;
    const from = JSON.stringify([text, kit]);
    const last = this.#last.get(place);
    if (last?.from === from) return last.lesson;
    const lesson = work();
    this.#last.set(place, { from, lesson });
    return lesson;
  }
}
