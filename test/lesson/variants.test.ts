import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { openKits } from '../../src/kit/open.js';
import type { Kit } from '../../src/kit/schema.js';
import { problemsOf } from '../../src/lesson/class-set.js';
import { prepareLesson } from '../../src/lesson/prepare.js';
import { readLesson } from '../../src/lesson/source.js';
import type { Part } from '../../src/problems/problem.js';
import { keyOf } from '../../src/problems/kind.js';

const kits = openKits(['lessons/kits/harrow-lane.yaml', 'lessons/kits/mill-yard.yaml']) as [Kit, Kit];
const lessons = readdirSync('lessons').filter((name) => /^\d\d-/.test(name));
/** Of each kind of problem, in all; each kit and its units get half. */
const VARIANTS = 2000;

/** Numbers of a printed text: `50.20 mm to 50.22 mm` is 50.2 and 50.22; `6° 26′` is 6.4333…. */
function numbersOf(text: string): number[] {
  if (/°\s*\d+′/.test(text))
    return [...text.matchAll(/(\d+)°\s(\d+)′(?:\s(\d+)″)?/g)].map(
      ([, d, m, s]) => Number(d) + Number(m) / 60 + Number(s ?? 0) / 3600,
    );
  return [...text.replaceAll('−', '-').matchAll(/-?\d+(?:\.\d+)?/g)].map(Number);
}

/** What is wrong with a part, judged by nothing but what is printed. */
function wrong({ answer, accepted, slips, checks, method, marks }: Part): string | undefined {
  if (method.length === 0 || marks.length === 0 || checks.length === 0) return 'a line of the key is missing';
  if (checks.some(({ source, value, agreement }) => !source || !value || !agreement)) return 'an empty check';
  if (slips.some(({ gives }) => gives === answer)) return 'a slip prints as the answer';
  if (/NaN|undefined|Infinity/.test(JSON.stringify([answer, accepted, slips, checks, method])))
    return 'no number';
  const [low, high] = / to /.test(accepted) && !/in this order/.test(accepted) ? numbersOf(accepted) : [];
  if (low === undefined || high === undefined) return undefined;
  const [right = Number.NaN] = numbersOf(answer);
  if (!(low <= right && right <= high && low < high)) return 'the answer is outside its own range';
  const inside = slips.find(({ gives }) => {
    const [given = Number.NaN] = numbersOf(gives);
    return given >= low && given <= high;
  });
  return inside && `the slip ${inside.gives} is taken as right`;
}

/** What is wrong with options and their letters. */
function wronglyLettered({ options, expects, slips }: Part): string | undefined {
  if (options === undefined) return undefined;
  if (expects.kind !== 'choice' && expects.kind !== 'order') return 'options for no letter';
  const letters = options.map(({ letter }) => letter);
  if (letters.join('') !== 'ABCDE'.slice(0, options.length)) return 'letters out of order';
  if (new Set(options.map(({ text }) => text)).size < options.length) return 'two options alike';
  const right = expects.kind === 'choice' ? [expects.letter] : expects.letters;
  if (right.some((letter) => !letters.includes(letter))) return 'a right letter that is not printed';
  if (expects.kind === 'order' && new Set(right).size < letters.length) return 'a letter left out';
  return slips.some(({ gives }) => gives.split(', ').some((letter) => !letters.includes(letter)))
    ? 'a slip for no option'
    : undefined;
}

/** Whether what is printed of the working tells the answer. */
function tells({ shown, expects }: Part): string | undefined {
  if (shown === undefined || expects.kind !== 'number') return undefined;
  const within = expects.step / 2;
  const figures = numbersOf(JSON.stringify(shown).replaceAll(/"formula":"[^"]*"/g, ''));
  return figures.some((figure) => Math.abs(figure - expects.value) <= within)
    ? 'the working tells the answer'
    : undefined;
}

/** What follows from a slip is another answer than the right one. */
function follows(part: Part): string | undefined {
  const line = (part.follows ?? []).find(
    ({ answer }) => answer === part.answer || /NaN|undefined/.test(answer),
  );
  return line && 'a slip that changes nothing';
}

describe.each(lessons)('%s', (name) => {
  const file = `lessons/${name}/lesson.md`;
  const source = readLesson(readFileSync(file, 'utf8'), file);

  it(`${VARIANTS} variants of each problem: both routes agree, and no slip is taken as right`, () => {
    const answers = new Map<string, Set<string>>();
    for (const kit of kits) {
      const setting = { kit, units: kit.units };
      const prepared = prepareLesson(source, setting);
      for (let variant = 0; variant < VARIANTS / kits.length; variant++)
        for (const problem of problemsOf(prepared, `${kit.kit}/${variant}`, setting))
          for (const part of problem.parts) {
            const fault = wrong(part) ?? wronglyLettered(part) ?? tells(part) ?? follows(part);
            if (fault)
              expect.fail(`${problem.name}, variant ${variant}: ${fault}: ${JSON.stringify(part, null, 1)}`);
            answers.set(problem.name, (answers.get(problem.name) ?? new Set()).add(part.answer));
          }
    }
    // A problem whose answer never changes is not one.
    for (const [problem, different] of answers) expect(different.size, problem).toBeGreaterThan(1);
    expect(new Set([...answers.keys()].map((name) => keyOf({ name })))).toEqual(
      new Set(Object.keys(source.matter.problems)),
    );
  }, 600_000);

  it('has its cautions, goals, sources, example, figures and problems for both workshops', () => {
    for (const kit of kits) {
      const { lesson } = prepareLesson(source, { kit, units: kit.units });
      expect(lesson.cautions.length).toBeGreaterThan(0);
      expect(lesson.goals.length).toBeGreaterThan(0);
      expect(lesson.sources.length).toBeGreaterThan(0);
      expect(lesson.body).toMatch(/^\{\{problems\}\}$/m);
      expect(lesson.body).toMatch(/^\{\{worked "/m);
      expect(lesson.body).toMatch(/^\{\{figure "/m);
    }
  });
});
