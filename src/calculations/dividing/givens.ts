import type { Citation } from '../../handbook/record.js';
import type { FoundQuantity } from '../calculation.js';
import { listOf, type Quantity, whole, wholes } from '../quantity.js';

export const divisions = whole('N', 'divisions', 2, 10_000);
export const ratio = whole('R', 'turns of the crank for one turn of the work', 1, 1000);
export const circles = wholes('circles of holes', 2, 1000);

export const possible: FoundQuantity = { unit: '', name: 'possible' };
export const reason: FoundQuantity = { unit: '', name: 'why it is not possible' };
export const turns: FoundQuantity = { symbol: 'w', unit: 'turns', name: 'whole turns' };
export const holes: FoundQuantity = { symbol: 'k', unit: 'spaces', name: 'spaces' };
export const circle: FoundQuantity = { symbol: 'H', unit: 'holes', name: 'circle used' };

/** Longest list of settings; the count beside it is of them all. */
export const MOST_SETTINGS = 100;

export const byCounting: Citation = {
  work: 'derived',
  at: 'whole turns and then spaces counted one by one until the next would pass',
};

const MOST_PLATES = 12;
const MOST_CIRCLES = 100;
const MOST_ON_PLATE = 40;
const onPlate = wholes('circles of one plate', 2, 1000);
const circlesOfPlate: typeof onPlate = {
  ...onPlate,
  read: (raw) => {
    const circles = onPlate.read(raw);
    return circles && circles.length <= MOST_ON_PLATE ? circles : undefined;
  },
};

/** Plates, each a list of its circles: `15,16,17;18,19,20`, or a list of lists; one list alone is one plate. */
export const plates: Quantity<readonly (readonly number[])[]> = {
  name: 'plates, each with its circles of holes',
  unit: '',
  accepts: `1 to ${MOST_PLATES} plates, each of 1 to ${MOST_ON_PLATE} circles from 2 to 1000 holes, ${MOST_CIRCLES} circles in all, such as 15,16,17;18,19,20`,
  read: (raw) => {
    const list = typeof raw === 'string' ? (raw.length > 12 * MOST_CIRCLES ? [] : raw.split(';')) : raw;
    if (!Array.isArray(list)) return undefined;
    const nested = typeof list[0] === 'number' ? [list] : list;
    if (nested.some((plate) => typeof plate === 'number')) return undefined;
    const read = listOf(circlesOfPlate, nested, MOST_PLATES);
    return read && read.flat().length <= MOST_CIRCLES ? read : undefined;
  },
};
