/** A plate on the spindle that serves, and how many of its notches one division is. */
export interface DirectSetting {
  /** Notches or holes in the plate. */
  readonly plate: number;
  readonly step: number;
}

/** Plates, each by its count of notches, that a count of divisions goes into; in the order given. */
export function directSettings(divisions: number, notches: readonly number[]): DirectSetting[] {
  return notches
    .filter((plate) => plate % divisions === 0)
    .map((plate) => ({ plate, step: plate / divisions }));
}

/** The notch for each division, the first in notch 0. */
export function notchSequence(divisions: number, step: number): number[] {
  return Array.from({ length: divisions }, (_, division) => division * step);
}
