import type { Desk } from '../desk.js';
import { type Column, figures, type Row } from '../sheet.js';
import { type Card, type CardKind, type CutJob, steps, told, words } from './card.js';

/** Steps that are seen between the two nicks, mm and thousandths of an inch. */
const STEPS = { mm: [0.02, 0.04, 0.06, 0.1, 0.16, 0.2, 0.3], inch: [1, 2, 3, 4, 6, 8, 12] } as const;
const MM_PER_THOU = 0.0254;
/** A step of a greater share of the pitch diameter is no fine setting. */
const MOST = 0.25;
/** The bar and the step in the drawing, mm; any will do. */
const DRAWN = { diameter: 12, halfTurnStep: 0.16, legend: 'no' } as const;

export const centringTest: CardKind = {
  name: 'centring-test',
  title: 'Centring test',
  line: 'the half-turn test, and for each job from the step between the nicks to the error and the lean',
  conventions: [
    'The step is twice the error. The lean is the angle between the middle of a space and the radius, at the pitch circle: its sine is the error over the pitch radius.',
    'The drawing of the test is not to scale. Any bar serves.',
  ],
  make: (desk, _, jobs) => [THE_TEST, ...jobs.map((job) => leanCard(job, desk))],
};

const THE_TEST: Card = {
  title: 'Centring: the half-turn test',
  picture: { figure: 'half-turn-test', given: DRAWN },
  passages: [
    steps(
      told`Turn a scrap bar true.`,
      told`Nick its side (1).`,
      told`Turn it half round, by the plate. Leave the height.`,
      told`Nick the other side (2). Look at the end.`,
      told`Step s? Then the error e is half of s.`,
      told`2 is where the cutter stands. Move it back by e, and test again.`,
    ),
  ],
  caution: 'isolate-first',
};

function leanCard({ name, teeth, leaves, module }: CutJob, desk: Desk): Card {
  const places = desk.units === 'mm' ? 2 : 3;
  const all = STEPS[desk.units].map((step) => (desk.units === 'mm' ? step : step * MM_PER_THOU));
  const least = module * Math.min(teeth, leaves ?? teeth);
  const rows = all
    .filter((step) => step <= MOST * least)
    .map((halfTurnStep): Row => {
      const lean = (count: number) =>
        desk.work('setup.centreError', { diameter: count * module, halfTurnStep });
      const wheel = lean(teeth);
      return {
        cells: [
          wheel.length('halfTurnStep', places),
          wheel.length('offset', places),
          wheel.number('leanAngle', 2),
          ...(leaves === undefined ? [] : [lean(leaves).number('leanAngle', 1)]),
        ],
      };
    });
  const columns: Column[] = [
    figures('Step', desk.lengths),
    figures('Off by', desk.lengths),
    figures('Wheel leans', '°'),
    ...(leaves === undefined ? [] : [figures('Pinion leans', '°')]),
  ];
  const pair = `${teeth} teeth${leaves === undefined ? '' : `, ${leaves} leaves`}, module ${Number(module.toFixed(4))} mm`;
  return {
    title: 'Centring: from step to lean',
    about: `${name}: ${pair}`,
    table: { columns, rows },
    passages: [words('Rule', told`Off by half the step. The smaller the work, the more its teeth lean.`)],
  };
}
