import { kits } from '../lesson/lessons.js';
import { variantsOf } from '../lesson/variants/suite.js';
import { VARIANTS } from './variants.js';

variantsOf(kits[0], Math.ceil(VARIANTS / kits.length));
