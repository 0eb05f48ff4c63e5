import type { Card, CutJob, Told } from '../../src/reference/cards/card.js';
import { shopCards } from '../../src/reference/cards/index.js';
import { Desk } from '../../src/reference/desk.js';
import type { Figure } from '../../src/reference/sheet.js';
import { kits } from '../lesson/lessons.js';

const job = (name: string, teeth: number, module: number, more: Partial<CutJob> = {}): CutJob => ({
  name,
  teeth,
  module,
  convention: '2.76',
  depthForm: '2.95',
  cuttingSpeed: 60,
  ...more,
});

export const CLASS_WHEEL = job('Class wheel', 60, 0.8, { leaves: 8 });

/** The class wheel; and wheels of every size and form that a class may cut, one with a name as long as it may be. */
export const jobs: Readonly<Record<string, readonly CutJob[]>> = {
  'the class wheel': [CLASS_WHEEL],
  'no job': [],
  'odd wheels': [
    job(
      'A wheel whose name goes on until it is as long as the name of a wheel may be, 80'.slice(0, 80),
      77,
      0.5,
      {
        leaves: 10,
      },
    ),
    job('Great wheel', 96, 0.8, { leaves: 8, convention: 'leaves' }),
    job('Without a pinion', 365, 1, { depthForm: '3.38' }),
    job('Round-bottomed', 120, 0.3, { leaves: 12, depthForm: '3.00' }),
    job('Too large to be drawn', 1000, 1.9),
  ],
  'a watch wheel': [job('Watch wheel', 60, 0.1, { leaves: 6 })],
  'a coarse wheel with sixteen leaves': [job('Coarse', 20, 4, { leaves: 16, depthForm: '2.45' })],
};

/** Every family for both workshops: the class wheel in both units, the other jobs in the workshop’s own; worked once. */
export const families = shopCards.flatMap((kind) =>
  kits
    .filter((kit) => kind.needs?.in(kit) ?? true)
    .flatMap((kit) =>
      Object.entries(jobs).flatMap(([who, some]) =>
        (who === 'the class wheel' ? (['mm', 'inch'] as const) : [kit.units]).map((units) => {
          const desk = new Desk(units);
          return { kind, kit, units, who, cards: kind.make(desk, kit, some), sources: desk.sources };
        }),
      ),
    ),
);

export type WorkedFamily = (typeof families)[number];

/** All the sentences of a card, and its cells. */
export const saidOn = ({ numbers = [], passages = [], table }: Card): Told[] => [
  ...numbers.flatMap(({ value, note = [] }) => [value, note]),
  ...passages.flatMap(({ lines }) => lines),
  ...(table?.rows.flatMap(({ cells }) => cells.map((cell) => [cell])) ?? []),
];

/** The figures of a card that are worked by two routes. */
export const figuresOn = (card: Card): Figure[] =>
  saidOn(card)
    .flat()
    .filter((piece): piece is Figure => typeof piece !== 'string');
