import { kits } from '../lessons.js';
import { FEW, variantsOf } from './suite.js';

variantsOf(kits[1], FEW);
