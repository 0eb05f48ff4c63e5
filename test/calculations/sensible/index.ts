import { cutting } from './cutting.js';
import { dividing } from './dividing.js';
import { finishing } from './finishing.js';
import { involute } from './involute.js';
import { screws } from './screws.js';
import type { Sensible } from './sensible.js';
import { settingUp } from './setting-up.js';
import { trains } from './trains.js';
import { trigonometry } from './trigonometry.js';
import { wheels } from './wheels.js';

export const sensible: Sensible = {
  ...trains,
  ...wheels,
  ...involute,
  ...dividing,
  ...settingUp,
  ...cutting,
  ...finishing,
  ...screws,
  ...trigonometry,
};
