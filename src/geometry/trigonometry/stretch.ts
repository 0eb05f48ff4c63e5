/** How much longer a length gets, in its own unit, when each unit of it grows by a share; shorter below 0. */
export function growth(length: number, share: number): number {
  return length * (1 + share) - length;
}
