import type { Kit } from '../../kit/schema.js';
import { formatNumber } from '../../units/format.js';
import type { Need } from '../sheet.js';

/** A dividing head, or a rotary table with plates. */
export type Indexer = Pick<Kit['heads'][number], 'name' | 'ratio' | 'plates' | 'gears'>;

/** Whatever divides by a crank on a plate of holes. */
export const indexersOf = ({ heads, rotaryTables }: Pick<Kit, 'heads' | 'rotaryTables'>): Indexer[] => [
  ...heads,
  ...rotaryTables.flatMap(({ plates, ...table }) => (plates ? [{ ...table, plates }] : [])),
];

/** Every circle of holes there is, once. */
export const circlesOf = ({ plates }: Indexer): number[] => [...new Set(plates.flat())];

/** Such as `large dividing head, 40 : 1`, and what one turn of its crank moves. */
export const named = ({ name, ratio }: Pick<Indexer, 'name' | 'ratio'>): string =>
  `${capital(name)}, ${ratio} : 1. One turn of the crank is ${formatNumber(360 / ratio, 360 % ratio === 0 ? 0 : 3)}°.`;

const capital = (text: string): string => `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`;

export const aHead: Need = {
  words: 'a dividing head with its plates',
  in: (kit) => indexersOf(kit).length > 0,
};

export const aGearedHead: Need = {
  words: 'a dividing head with gears for differential indexing',
  in: ({ heads }) => heads.some(({ gears }) => gears !== undefined),
};
