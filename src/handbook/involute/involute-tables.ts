/**
 * The involute function as the area under tan² from 0 to the angle, by Simpson's rule in 4,000 strips.
 * A different road from tan a − a, which it must come to because tan² is the slope of that.
 *
 * @param degrees 0 to 80
 * @returns radians, good to 1e-9
 */
export function involuteByArea(degrees: number): number {
  const strips = 4000;
  const width = (degrees * Math.PI) / 180 / strips;
  let sum = 0;
  for (let i = 0; i <= strips; i++) {
    const weight = i === 0 || i === strips ? 1 : i % 2 === 1 ? 4 : 2;
    sum += weight * Math.tan(i * width) ** 2;
  }
  return (sum * width) / 3;
}

/**
 * The angle whose involute is given, degrees; Newton's rule from above, where it closes in from one side.
 *
 * @param involute radians, above 0
 */
export function angleOfInvolute(involute: number): number {
  let angle = Math.min(Math.cbrt(3 * involute), Math.atan(involute + Math.PI / 2));
  for (let step = 0; step < 60; step++) angle -= (Math.tan(angle) - angle - involute) / Math.tan(angle) ** 2;
  return (angle * 180) / Math.PI;
}
