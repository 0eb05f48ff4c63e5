import { describe } from 'vitest';
import { near } from './near.js';

describe('the cutter for a count', () => {
  // J. Rose (1887), standard set of eight (read).
  near('involute.cutterNumber', { teeth: 68 }, 'number', 2, 0);
  near('involute.cutterNumber', { teeth: 22 }, 'number', 5, 0);
  near('involute.cutterNumber', { teeth: 13 }, 'number', 8, 0);
  near('involute.cutterNumber', { teeth: 13, series: 'module' }, 'number', 1, 0); // common practice, no source
});
