import { hash32 } from '../../problems/chance.js';
import type { PracticeLesson } from '../practice-lesson.js';
import { begun, type Progress, readProgress } from '../progress.js';

/** The learner's progress, in this browser and nowhere else. */
export class Store {
  readonly #key: string;
  #progress: Progress;
  /** Whether the browser lets the page keep anything. */
  kept = true;

  constructor({ course, name, code, units, kit, problems }: PracticeLesson) {
    // Where the lesson or the workshop has changed, what was answered was answered to something else.
    this.#key = `benchleaf practice ${course}/${name} ${hash32(JSON.stringify([kit, problems]))}`;
    this.#progress = this.#read() ?? begun(code, units);
  }

  get progress(): Progress {
    return this.#progress;
  }

  set progress(progress: Progress) {
    this.#progress = progress;
    try {
      localStorage.setItem(this.#key, JSON.stringify(progress));
      this.kept = true;
    } catch {
      this.kept = false; // a private window, or a full disk: the page works all the same
    }
  }

  #read(): Progress | undefined {
    try {
      return readProgress(localStorage.getItem(this.#key) ?? '');
    } catch {
      this.kept = false;
      return undefined;
    }
  }
}
