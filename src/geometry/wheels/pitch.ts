/** The size of a tooth, in whichever of the three ways it is known; exactly one of them. */
export type ToothSize =
  | { readonly module: number }
  | { readonly diametralPitch: number }
  | { readonly circularPitch: number };

/** Module in mm, from mm or from teeth per inch of pitch diameter. */
export function moduleOf(size: ToothSize): number {
  if ('module' in size) return size.module;
  return 'diametralPitch' in size ? 25.4 / size.diametralPitch : size.circularPitch / Math.PI;
}

/** The member of a rising list that lies nearest to a value; the smaller at a tie. */
export function nearestIn(list: readonly number[], value: number): number {
  return list.reduce((best, one) => (Math.abs(one - value) < Math.abs(best - value) ? one : best));
}
