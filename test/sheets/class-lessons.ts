import { workInFull } from '../../src/calculations/work.js';
import { decimals, showStep, unitsOf } from '../../src/calculations/working.js';
import type { Lesson, WorkedExample } from '../../src/lesson/lesson.js';
import type { ProblemKind } from '../../src/problems/kind.js';
import type { CheckLine, Part, Problem } from '../../src/problems/problem.js';
import { formatLength, type UnitSystem } from '../../src/units/format.js';

const WHEEL = { teeth: 60, module: 0.8, convention: '2.76' };
const SMALL = { teeth: 48, module: 0.8, convention: '2.76' };
const CIRCLES = [15, 16, 17, 18, 19, 20, 21, 23, 27, 29, 31, 33, 37, 39, 41, 43, 47, 49];

/** A calculation of the catalogue, really worked, as a handout sets it out. */
export function worked(
  name: string,
  given: Readonly<Record<string, unknown>>,
  units: UnitSystem = 'mm',
): WorkedExample {
  const { calculation, values, found, checks, steps, symbols } = workInFull(name, given);
  const say = (value: unknown, unit: string): string => {
    if (typeof value !== 'number') return Array.isArray(value) ? value.join(', ') : String(value);
    if (unit === 'mm') return formatLength(value, units);
    return unit === '°' || unit === '' ? decimals(value, 4) + unit : `${decimals(value, 4)}\u202F${unit}`;
  };
  const told = Object.entries(calculation.found).filter(([key]) => typeof found[key] === 'number');
  return {
    title: calculation.title,
    given: Object.entries(calculation.given)
      .filter(([key]) => values[key] !== undefined)
      .map(([key, { name: words, symbol = '', unit }]) => ({
        name: words,
        symbol,
        value: say(values[key], unit),
      })),
    steps: steps.map((step) => showStep(step, { values: symbols, units: unitsOf(calculation) }, units)),
    found: told.map(([key, { name: words, symbol = '', unit }]) => ({
      name: words,
      symbol,
      value: say(found[key], unit),
    })),
    checks: checks
      .filter(({ value }) => typeof value === 'number')
      .map(
        ({ of, source, value }): CheckLine => ({
          source,
          value: say(value, calculation.found[of]?.unit ?? ''),
          agreement: 'exactly',
        }),
      ),
  };
}

const wheel = workInFull('wheel.blank', WHEEL).found;
const travel = workInFull('setup.overTravel', { cutterDiameter: 24, depth: 2.36, thickness: 9.5 }).found;
const indexing = workInFull('dividing.simple', { divisions: 60, ratio: 40, circles: CIRCLES }).found;

/** What the sheets read of a kind of problem: how many there are, and their marks. */
export function kinds(count: number): ProblemKind[] {
  return Array.from({ length: count }, (_, place) => ({
    name: `kind${place}`,
    declared: { marks: { method: 1, accuracy: 1, independent: 0 } } as ProblemKind['declared'],
  }));
}

export function lesson(changes: Partial<Lesson> = {}): Lesson {
  return {
    file: 'lessons/06-blank-and-pinion-sizes/lesson.md',
    name: '06-blank-and-pinion-sizes',
    number: 6,
    title: 'Blank and pinion sizes',
    part: 'From train to blank',
    level: 2,
    needs: ['what module means', 'the pitch diameter of a wheel'],
    goals: [
      'find the size of the blank before you turn it',
      'find the root diameter, and so check the depth with a micrometer',
      'say why a clock wheel stands prouder than an involute gear',
    ],
    cautions: [
      'Brass snatches: use tools with no top rake. Chips fly as needles: keep the shield down.',
      'Free-cutting brass holds lead: no food at the bench, and wash your hands after.',
    ],
    values: { ...WHEEL, wheel, travel, indexing, circles: CIRCLES },
    workings: new Map([
      ['wheel', worked('wheel.blank', WHEEL)],
      ['travel', worked('setup.overTravel', { cutterDiameter: 24, depth: 2.36, thickness: 9.5 })],
    ]),
    problems: kinds(4),
    body: BODY,
    bodyLine: 40,
    sources: [
      'A cutter maker’s wheel and pinion dimension table, “to BS 978 Part 2, NHS 56702 and 56703” (web page, read 2026)',
      'Elementary geometry',
    ],
    ...changes,
  };
}

const BODY = `
## The job

Tonight we turn the blank for the Larkfield timepiece’s {{teeth}}-tooth wheel, module {{mm module}}.
Everything that follows depends on it: a blank that is too small can never be put right.
The *blank* is the disc before a tooth is cut. Its edge becomes the tips of the teeth.

## From module to blank

The module $m$ tells how large a tooth is. Times the number of teeth $z$ it gives the **pitch diameter**,
and the teeth stand above that by the **addendum**. The trade’s rule of thumb takes both at once:

$$d_a = m(z + 2.76)$$

So our blank is {{length wheel.outsideDiameter}} before the teeth are cut, and $\\VAL{module} \\times \\VAL{teeth} = 48$ at the pitch circle.

{{worked "wheel"}}

{{figure "wheel-blank" teeth=teeth module=module outsideDiameter=wheel.outsideDiameter pitchDiameter=wheel.pitchDiameter rootDiameter=wheel.rootDiameter caption="The blank, and the three circles of the wheel to come."}}

## What goes wrong, and how it shows

| What was done | What it gives | How it shows |
|---|---:|---|
| Added 2, as for an involute gear | 49.60 mm | flat, stubby teeth |
| Took the pitch diameter | {{length wheel.pitchDiameter}} | no tips at all |
| Radius for diameter | 25.10 mm | half a wheel |

1. Measure the bar.
1. Turn to {{length wheel.outsideDiameter}}, and stop when the micrometer says so.
1. Move the crank {{moves indexing}}.

{{figure "tooth-form" teeth=teeth leaves=8 module=module addendum=wheel.addendum dedendum=wheel.dedendum flankRadius=wheel.flankRadius caption="One tooth, much enlarged"}}

{{problems}}
`;

function part(changes: Partial<Part>): Part {
  return {
    ask: '',
    unit: 'mm',
    room: 3,
    answer: '50.21\u202Fmm',
    accepted: '50.20 to 50.22\u202Fmm',
    expects: { kind: 'number', value: 50.21, unit: 'mm', step: 0.01, within: 0.01 },
    method: worked('wheel.blank', WHEEL).steps.slice(3, 4),
    marks: [
      { code: 'M1', for: 'the rule with numbers in' },
      { code: 'A1', for: '50.21' },
    ],
    slips: [
      { gives: '49.60\u202Fmm', says: 'You added 2: that is the involute rule. Clock wheels stand prouder.' },
      { gives: '25.10\u202Fmm', says: 'That is the radius; the micrometer measures diameter.' },
    ],
    checks: worked('wheel.blank', WHEEL).checks.slice(1, 2),
    ...changes,
  };
}

export function problem(changes: Partial<Problem> = {}): Problem {
  return {
    name: 'blank',
    level: 'a',
    ask: 'A wheel has {{teeth}} teeth of module {{mm module}}. To what diameter do you turn the blank?',
    values: { ...WHEEL, wheel },
    drawn: { ...WHEEL, wheel },
    parts: [part({})],
    ...changes,
  };
}

/** Four problems of one lesson: direct, rearranged, in parts, and one to choose. */
export const problems: readonly Problem[] = [
  problem(),
  problem({
    name: 'teeth',
    level: 'b',
    ask: 'A blank measures {{length small.outsideDiameter}}, and the cutter is stamped module {{mm module}}. How many teeth was it turned for?',
    values: { ...SMALL, small: workInFull('wheel.blank', SMALL).found },
    parts: [
      part({
        unit: 'teeth',
        answer: '48 teeth',
        accepted: '',
        room: 4,
        slips: [{ gives: '51', says: 'You took nothing off. The blank is larger than the pitch circle.' }],
        checks: worked('wheel.blank', SMALL).checks.slice(0, 1),
      }),
    ],
  }),
  problem({
    name: 'travel',
    level: 'c',
    ask: 'A stack 9.50 mm thick is cut {{length wheel.depthOfCut}} deep with a cutter of 24 mm diameter.',
    parts: [
      part({
        ask: 'Find the approach.',
        answer: '7.15\u202Fmm',
        accepted: '7.14 to 7.16\u202Fmm',
        method: worked('setup.overTravel', { cutterDiameter: 24, depth: 2.36, thickness: 9.5 }).steps.slice(
          0,
          1,
        ),
        checks: worked('setup.overTravel', { cutterDiameter: 24, depth: 2.36, thickness: 9.5 }).checks.slice(
          0,
          1,
        ),
      }),
      part({
        ask: 'Find the travel, with 1 mm clear at each end.',
        answer: '25.79\u202Fmm',
        accepted: '25.77 to 25.81\u202Fmm',
        method: worked('setup.overTravel', { cutterDiameter: 24, depth: 2.36, thickness: 9.5 }).steps,
        checks: worked('setup.overTravel', { cutterDiameter: 24, depth: 2.36, thickness: 9.5 }).checks.slice(
          1,
          2,
        ),
      }),
    ],
  }),
  problem({
    name: 'plates',
    level: 'd',
    ask: 'Can a wheel of {{teeth}} teeth be divided on a 40 to 1 head whose circles are 15, 18 and 20? Show the sum, and say which circle.',
    parts: [
      part({
        unit: '',
        room: 5,
        answer: 'possible: 10 spaces on the 15-hole circle, or 12 on the 18',
        accepted: 'any one of these',
        method: [{ say: 'Turns for one division: 40 ÷ 60, which is 2/3 of a turn.' }],
        slips: [],
      }),
    ],
  }),
];

export const head = {
  course: 'The Larkfield timepiece',
  club: 'Harrow Lane Model Engineers',
  kit: 'Harrow Lane class workshop',
};
