import { cutting } from './cutting.js';
import { dividing } from './dividing.js';
import { finishing } from './finishing.js';
import { involute } from './involute.js';
import { screws } from './screws.js';
import { settingUp } from './setting-up.js';
import { trains } from './trains.js';
import { trigonometry } from './trigonometry.js';
import type { FigureValues } from './values.js';
import { wheels } from './wheels.js';

export const areas: FigureValues = {
  ...wheels,
  ...involute,
  ...dividing,
  ...settingUp,
  ...cutting,
  ...trains,
  ...finishing,
  ...screws,
  ...trigonometry,
};
