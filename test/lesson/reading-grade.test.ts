import { fleschKincaid } from 'flesch-kincaid';
import { syllable } from 'syllable';
import { expect, it } from 'vitest';
import { prepareLesson } from '../../src/lesson/prepare.js';
import { kits, lessons, sourceOf } from './lessons.js';
import { sentencesOf } from './prose.js';

/** Many readers last did school arithmetic decades ago. */
const HIGHEST = 9;

// The formula of Kincaid and others (1975), by the packages flesch-kincaid and syllable.
it.each(lessons)('%s reads at grade 9 or under', (name) => {
  const [kit] = kits;
  const { lesson } = prepareLesson(sourceOf(name), { kit, units: kit.units });
  const sentences = sentencesOf(lesson, kit.units);
  const words = sentences.flatMap((one) => one.match(/[A-Za-z][A-Za-z’'-]*|\d[\d.,]*/g) ?? []);
  const syllables = words.reduce((sum, word) => sum + Math.max(1, /\d/.test(word) ? 1 : syllable(word)), 0);
  expect(words.length).toBeGreaterThan(200);
  const grade = fleschKincaid({ sentence: sentences.length, word: words.length, syllable: syllables });
  if (process.env.BENCHLEAF_TELL) console.log(name, grade.toFixed(1), sentences.length, words.length);
  expect(grade).toBeLessThanOrEqual(HIGHEST);
});
