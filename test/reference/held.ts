import { type Check, workInFull } from '../../src/calculations/work.js';
import type { Figure } from '../../src/reference/sheet.js';

/** A figure that the handbook prints to few figures lies where those allow. */
function lies(text: string, { value, within }: Check, write: (value: unknown) => string): boolean {
  if (typeof value !== 'number' || within < 1e-6) return false;
  // On a card the unit stands behind.
  const [low = 0, high = 0, own = 0] = [write(value - within), write(value + within), text].map(parseFloat);
  return own >= low && own <= high;
}

/** Whether a figure is printed as the handbook’s own value would be. */
export function isHeld({ calculation, given, find, write, text }: Figure): boolean {
  const proofs = workInFull(calculation, given).checks.filter(({ of }) => of === find);
  const own = proofs.filter(({ measured }) => measured === undefined);
  // What is measured in place of a list or a shape has agreed already, or it would not have been worked.
  if (own.length === 0) return proofs.length > 0;
  return own.every((proof) => write(proof.value) === text || lies(text, proof, write));
}
