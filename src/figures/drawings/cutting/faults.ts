import type { Given } from '../../../calculations/cutting/given.js';

/** What can be shown to be wrong with a wheel, by a word; how the wheel is cut then, and how that is captioned. */
export interface ShownFault {
  readonly caption: string;
  readonly of: (wheel: Size) => Partial<Given>;
}

interface Size {
  readonly teeth: number;
  readonly module: number;
}

const pitch = ({ teeth }: Size): number => 1_296_000 / teeth;

/** Sizes of the faults are larger than a careful shop would let pass, so that they can be seen. */
export const shownFaults = {
  clean: { caption: 'nothing wrong', of: () => ({}) },
  'short-step': {
    caption: 'every move short',
    of: (wheel) => ({ stepErrorArcSeconds: (-1.5 * pitch(wheel)) / wheel.teeth }),
  },
  'long-step': {
    caption: 'every move long',
    of: (wheel) => ({ stepErrorArcSeconds: (0.3 * pitch(wheel)) / wheel.teeth }),
  },
  'slip-kept': {
    caption: 'one slip, kept',
    of: (wheel) => ({ slipAt: quarter(wheel), slipArcSeconds: 0.25 * pitch(wheel) }),
  },
  'slip-put-back': {
    caption: 'one slip, put back',
    of: (wheel) => ({ slipAt: quarter(wheel), slipArcSeconds: 0.25 * pitch(wheel), slipPutBack: 'yes' }),
  },
  'off-centre': { caption: 'cutter off centre', of: ({ module }) => ({ offset: 0.4 * module }) },
  eccentric: { caption: 'blank out of true', of: ({ module }) => ({ eccentricity: 0.4 * module }) },
  deep: { caption: 'too deep', of: ({ module }) => ({ depthError: 0.3 * module }) },
  shallow: { caption: 'too shallow', of: ({ module }) => ({ depthError: -0.3 * module }) },
  'wide-cutter': { caption: 'cutter too large', of: ({ module }) => ({ cutterModule: 1.2 * module }) },
} as const satisfies Readonly<Record<string, ShownFault>>;

/** The move a quarter of the way round. */
const quarter = ({ teeth }: Size): number => Math.round(teeth / 4);

export type FaultWord = keyof typeof shownFaults;

export const faultWords = Object.keys(shownFaults) as [FaultWord, ...FaultWord[]];
