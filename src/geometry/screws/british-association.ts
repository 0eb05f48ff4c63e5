/**
 * Pitch and diameter of a BA screw by the rule of the series, mm: p = 0.9ⁿ and d = 6 p^1.2, each then rounded as the
 * standard prints it, p to hundredths and d to two figures. The diameter takes the pitch before rounding: with the
 * rounded one, 15 and 16 BA come out wrong.
 *
 * @param number 0 to 16
 */
export function associationScrew(number: number): { readonly diameter: number; readonly pitch: number } {
  const pitch = 0.9 ** number;
  return { diameter: Number((6 * pitch ** 1.2).toPrecision(2)), pitch: Math.round(100 * pitch) / 100 };
}
