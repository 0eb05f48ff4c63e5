const NUMBER = /-?(?:\d+\.?\d*|\.\d+)/g;

/** Area enclosed by SVG path data of straight steps, each outline closed, mm²; holes taken off. */
export function areaDrawn(path: string): number {
  let twice = 0;
  for (const outline of path.split('M').slice(1)) {
    const numbers = outline.match(NUMBER)?.map(Number) ?? [];
    let [x, y] = [numbers[0] ?? 0, numbers[1] ?? 0];
    const [startX, startY] = [x, y];
    for (let at = 2; at + 1 < numbers.length; at += 2) {
      const [nextX, nextY] = [x + (numbers[at] ?? 0), y + (numbers[at + 1] ?? 0)];
      twice += nextX * y - x * nextY;
      [x, y] = [nextX, nextY];
    }
    twice += startX * y - x * startY;
  }
  return twice / 2;
}
