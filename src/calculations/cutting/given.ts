import { choice, length, number, optional, orElse, whole } from '../quantity.js';
import { leaves, module } from '../wheels/gearing.js';
import { depthForm } from './space.js';

const arcSeconds = (symbol: string, name: string) => number(symbol, name, '″', -200_000, 200_000);

/** What a wheel that is to be cut is given. */
export const given = {
  teeth: whole('z', 'teeth in the wheel', 6, 400),
  leaves,
  module,
  steps: optional(whole('N', 'cuts made', 4, 500)),
  stepErrorArcSeconds: orElse(arcSeconds('E', 'error of every move, too long above 0'), 0),
  slipAt: optional(whole('k', 'move that slipped, counted from 1', 1, 499)),
  slipArcSeconds: optional(arcSeconds('S', 'error of that move besides, too long above 0')),
  slipPutBack: orElse(choice('whether the next move put the slip back', ['no', 'yes']), 'no'),
  offset: orElse(length('e', 'cutter to the right of centre, seen with the cut at the top', -20, 20), 0),
  depthError: orElse(length('u', 'depth beyond the right root circle, short below 0', -10, 10), 0),
  eccentricity: orElse(length('c', 'middle of the blank from the axis, towards the first cut', 0, 20), 0),
  depthForm,
  cutterModule: optional(length('m_c', 'module of the cutter, where it is another', 0.04, 24)),
  blankDiameter: optional(length('D', 'diameter of the blank, where it is not the right one', 0.1, 9000)),
};

/** The same, read. */
export interface Given {
  readonly teeth: number;
  readonly leaves: number;
  readonly module: number;
  readonly steps?: number | undefined;
  readonly stepErrorArcSeconds: number;
  readonly slipAt?: number | undefined;
  readonly slipArcSeconds?: number | undefined;
  readonly slipPutBack: 'no' | 'yes';
  readonly offset: number;
  readonly depthError: number;
  readonly eccentricity: number;
  readonly depthForm: '2.95' | '3.38' | '2.45';
  readonly cutterModule?: number | undefined;
  readonly blankDiameter?: number | undefined;
}

/** A wheel with something wrong, as `cut.simulate` is given it. */
export type WrongCut = Pick<Given, 'teeth' | 'leaves' | 'module'> & Partial<Given>;
