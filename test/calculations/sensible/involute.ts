import type { Sensible } from './sensible.js';

export const involute: Sensible = {
  'involute.cutterNumber': { teeth: 30 },
};
