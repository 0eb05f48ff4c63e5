import { cutting } from './cutting.js';
import { dividing } from './dividing.js';
import { finishing } from './finishing.js';
import { involute } from './involute.js';
import { safety } from './safety.js';
import { screws } from './screws.js';
import { settingUp } from './setting-up.js';
import { templates } from './templates.js';
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
  ...safety,
  ...trains,
  ...finishing,
  ...screws,
  ...trigonometry,
  ...templates,
};
