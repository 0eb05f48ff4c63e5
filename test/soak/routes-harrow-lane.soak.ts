import { kits } from '../lesson/lessons.js';
import { routesFor } from './routes.js';

routesFor(kits[0]);
