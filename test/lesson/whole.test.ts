import { describe, expect, it } from 'vitest';
import { prepareLesson } from '../../src/lesson/prepare.js';
import { kits, lessons, sourceOf } from './lessons.js';

describe.each(lessons)('%s', (name) => {
  it('has its cautions, goals, sources, example, figures and problems for both workshops', () => {
    for (const kit of kits) {
      const { lesson } = prepareLesson(sourceOf(name), { kit, units: kit.units });
      expect(lesson.cautions.length).toBeGreaterThan(0);
      expect(lesson.goals.length).toBeGreaterThan(0);
      expect(lesson.sources.length).toBeGreaterThan(0);
      expect(lesson.body).toMatch(/^\{\{problems\}\}$/m);
      expect(lesson.body).toMatch(/^\{\{worked "/m);
      expect(lesson.body).toMatch(/^\{\{figure "/m);
    }
  });
});
