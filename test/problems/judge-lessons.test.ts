import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { openKits } from '../../src/kit/open.js';
import type { Kit } from '../../src/kit/schema.js';
import { problemsOf } from '../../src/lesson/class-set.js';
import { prepareLesson } from '../../src/lesson/prepare.js';
import { readLesson } from '../../src/lesson/source.js';
import { judge, takesNumber } from '../../src/problems/judge.js';
import type { Part } from '../../src/problems/problem.js';

const kits = openKits(['lessons/kits/harrow-lane.yaml', 'lessons/kits/mill-yard.yaml']) as [Kit, Kit];
/** Of each kind of problem, for each of two workshops. */
const VARIANTS = 200;
const MM = 25.4;

/** Other ways to write the printed answer. */
function equivalents({ answer, expects }: Part): string[] {
  const plain = answer.replace(/[\u202F\u00A0]/g, ' ').replaceAll('−', '-');
  const always = [` ${plain}. `, plain.toUpperCase(), plain.replaceAll(' ', '\u2009')];
  switch (expects.kind) {
    case 'number':
      return [...always, ...numberForms(plain, expects)];
    case 'moves':
      return [...always, ...movesForms(expects)];
    case 'set':
      return [
        ...always,
        ...(expects.items.length > 0
          ? [[...expects.items].reverse().join('; '), expects.items.join(' and ')]
          : ['none', 'none of them', 'no']),
      ];
    case 'numbers':
      return [...always, plain.replaceAll(', ', '; '), plain.replaceAll(', ', ' and ')];
    case 'word':
      return [
        ...always,
        `the ${plain}`,
        ...(/^not possible$/.test(plain)
          ? ['no', 'impossible', "can't be done"]
          : plain === 'possible'
            ? ['yes']
            : []),
      ];
    case 'choice':
      return [...always, plain.toLowerCase(), `(${plain})`, `${plain})`];
    case 'order':
      return [...always, plain.replaceAll(', ', ''), plain.replaceAll(', ', ' < ')];
  }
}

function numberForms(plain: string, expects: Extract<Part['expects'], { kind: 'number' }>): string[] {
  const { value, unit, angle } = expects;
  if (angle)
    return [
      plain.replace(/°|′|″/g, (mark) => ({ '°': 'd', '′': 'm', '″': 's' })[mark] ?? ''),
      plain.replace('′', "'").replace('″', '"'),
      plain.replace(/[°′″]/g, ''),
      `${value.toFixed(6)}°`,
    ];
  const bare = plain
    .replace(unit, '')
    .replace(/^line /, '')
    .trim();
  const forms = [
    bare,
    `= ${bare}`,
    `x = ${bare} ${unit}`,
    `about ${bare}${unit}`,
    bare.replace('.', ','),
    `+${bare}`,
  ];
  if (unit === 'mm') forms.push(`${value / MM} in`, `${value / 10} cm`, `${(value / MM).toFixed(4)}"`);
  if (unit === 'in') forms.push(`${value * MM} mm`, `${(value * MM).toFixed(2)}mm`, `${bare}"`);
  // In another unit, and as it was rounded there.
  if (unit === 'mm' && value > 1) forms.push(`${(value / MM).toFixed(3)} in`);
  return value < 0 ? forms.filter((form) => !form.startsWith('+')) : forms;
}

function movesForms({ turns, moves }: Extract<Part['expects'], { kind: 'moves' }>): string[] {
  if (moves.length === 0) return ['not possible', 'no', 'impossible', 'cannot be done'];
  if (moves.every(({ holes }) => holes === 0)) return [`${turns}`, `${turns} turns`];
  return moves.flatMap(({ holes, circle }) => {
    const all = turns * circle + holes;
    const before = turns === 0 ? '' : `${turns} turns and `;
    return [
      `${before}${holes} on ${circle}`,
      `${before}${holes} holes on the ${circle} circle`,
      `${before}${holes} spaces in the ${circle}-hole circle`,
      `${before}${holes}/${circle}`,
      `${turns === 0 ? '' : `${turns} `}${holes}/${circle}`,
      `${all}/${circle}`,
      `${all} on ${circle}`,
      `${all * 3}/${circle * 3} of a turn`,
      `on the ${circle} circle ${holes} spaces`.replace(/^/, turns === 0 ? '' : `${turns} turns `),
    ];
  });
}

/** What is wrong with how answers to a part are judged; a class set has many, so nothing is said of those that are well. */
function wrong(part: Part, count: { forms: number; slips: number }): string | undefined {
  const kindOf = (typed: string): string => judge(typed, part).kind;
  const printed = judge(part.answer, part);
  if (printed.kind !== 'right' || printed.read !== undefined)
    return `the answer is ${JSON.stringify(printed)}`;
  for (const form of equivalents(part)) {
    if (kindOf(form) !== 'right') return `${form} is ${JSON.stringify(judge(form, part))}`;
    count.forms++;
  }
  for (const { gives, says } of part.slips) {
    const verdict = judge(gives, part);
    if (verdict.kind !== 'slip' || verdict.says !== says || verdict.gives !== gives)
      return `the slip ${gives} is ${JSON.stringify(verdict)}`;
    const forms = [gives.toUpperCase(), gives.replace(/[^\d./−-]+$/, ''), `about ${gives}.`];
    const taken = forms.find((form) => kindOf(form) === 'right');
    if (taken !== undefined) return `the slip ${taken} is right`;
    count.slips++;
  }
  const { expects } = part;
  if (expects.kind !== 'number') return undefined;
  const beyond = [-1, 1]
    .map((side) => expects.value + side * (expects.within + Math.max(expects.step, 1e-3)))
    .find((number) => !takesNumber(expects, number) && kindOf(number.toFixed(9)) === 'right');
  return beyond === undefined ? undefined : `${beyond} is right`;
}

describe.each([
  '06-blank-and-pinion-sizes',
  '07-depth-and-cutter-choice',
  '12-over-travel-and-stacks',
  '16-simple-indexing',
])('%s', (name) => {
  const file = `lessons/${name}/lesson.md`;
  const source = readLesson(readFileSync(file, 'utf8'), file);

  it.each(kits)(
    '$kit: each printed answer is right in every form, and each slip is that slip',
    (kit) => {
      const setting = { kit, units: kit.units };
      const prepared = prepareLesson(source, setting);
      const count = { forms: 0, slips: 0 };
      for (let variant = 0; variant < VARIANTS; variant++)
        for (const problem of problemsOf(prepared, `${kit.kit}/${variant}`, setting))
          for (const part of problem.parts) {
            const fault = wrong(part, count);
            if (fault)
              expect.fail(`${problem.name}, variant ${variant}: ${fault}: ${JSON.stringify(part, null, 1)}`);
          }
      expect(count.slips).toBeGreaterThan(VARIANTS);
      expect(count.forms).toBeGreaterThan(10 * VARIANTS);
    },
    300_000,
  );
});
