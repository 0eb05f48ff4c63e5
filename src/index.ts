export type { CalculationEntry } from './calculations/catalogue.js';
export { listCalculations } from './calculations/catalogue.js';
export type { Check, Worked } from './calculations/work.js';
export { work } from './calculations/work.js';
export { CommandError, DisagreementError, InputError } from './diagnostics/errors.js';
