import type { FigureValues } from './values.js';

export const safety: FigureValues = {
  'bench-sign': {
    typical: { sign: 'emery' },
    sweep: ['emery', 'chuck-key', 'guard', 'eyes'].map((sign) => ({ sign })),
  },
};
