import type { Calculation } from '../calculation.js';
import { changeWheels } from './change-wheels.js';
import { threadForm } from './form.js';
import { tappingDrill } from './tapping.js';
import { threadOverWires } from './wires.js';

/** Screws, in the order of the trade. */
export const screws: readonly Calculation[] = [threadForm, tappingDrill, threadOverWires, changeWheels];
