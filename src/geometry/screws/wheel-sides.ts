/** The wheels on one side of a train, all drivers or all driven; largest first. */
export interface Side {
  readonly wheels: readonly number[];
  readonly product: number;
  readonly teeth: number;
}

/** How many there are of each wheel. */
export function stockOf(wheels: readonly number[]): ReadonlyMap<number, number> {
  const stock = new Map<number, number>();
  for (const wheel of wheels) stock.set(wheel, (stock.get(wheel) ?? 0) + 1);
  return stock;
}

/** Every side of one wheel, and every side of two, each list by rising product. */
export function sidesOf(stock: ReadonlyMap<number, number>): readonly (readonly Side[])[] {
  const sizes = [...stock.keys()].sort((a, b) => b - a);
  const singles = sizes.map((wheel) => side([wheel]));
  const pairs = sizes.flatMap((first, place) =>
    sizes
      .slice(place)
      .filter((second) => second !== first || (stock.get(first) ?? 0) > 1)
      .map((second) => side([first, second])),
  );
  return [singles, pairs].map((sides) => sides.sort((a, b) => a.product - b.product));
}

const side = (wheels: readonly number[]): Side => ({
  wheels,
  product: wheels.reduce((so, wheel) => so * wheel, 1),
  teeth: wheels.reduce((so, wheel) => so + wheel, 0),
});
