import { cuttingFormulas } from './formulas/cutting.js';
import { dividingFormulas } from './formulas/dividing.js';
import { finishingFormulas } from './formulas/finishing.js';
import { involuteFormulas } from './formulas/involute.js';
import { screwsFormulas } from './formulas/screws.js';
import { settingUpFormulas } from './formulas/setting-up.js';
import { trainsFormulas } from './formulas/trains.js';
import { trigonometryFormulas } from './formulas/trigonometry.js';
import { wheelsFormulas } from './formulas/wheels.js';

/** Every published formula, by id. Each symbol is the field's own. */
export const formulas = {
  ...trainsFormulas,
  ...wheelsFormulas,
  ...involuteFormulas,
  ...dividingFormulas,
  ...settingUpFormulas,
  ...cuttingFormulas,
  ...finishingFormulas,
  ...screwsFormulas,
  ...trigonometryFormulas,
} as const;

/** The name of a published formula. */
export type FormulaId = keyof typeof formulas;
