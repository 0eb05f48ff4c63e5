/** A ratio that gears of a set make, in lowest terms, and the fewest wheels that it takes. */
export interface GearRatio {
  readonly top: number;
  readonly bottom: number;
  readonly wheels: number;
}

let known: { readonly set: string; readonly ratios: readonly GearRatio[] } = { set: '', ratios: [] };

/** Every ratio of a set of gears, by trying every train; the set last asked for is not tried again. */
export function gearRatios(gears: readonly number[]): readonly GearRatio[] {
  const set = gears.join();
  if (set !== known.set) known = { set, ratios: [...distinct(gears)] };
  return known.ratios;
}

/** The same ratio by other wheels adds nothing; trains of two wheels come first. */
function* distinct(gears: readonly number[]): Generator<GearRatio> {
  const seen = new Set<string>();
  for (const { top, bottom, wheels } of trains(gears)) {
    const ratio = lowest(top, bottom);
    const name = `${ratio.top}/${ratio.bottom}`;
    if (seen.has(name)) continue;
    seen.add(name);
    yield { ...ratio, wheels };
  }
}

/** Every train of two wheels, then every train of four; no wheel oftener than it is owned. */
function* trains(gears: readonly number[]) {
  for (const [i, top] of gears.entries())
    for (const [j, bottom] of gears.entries()) if (i !== j) yield { top, bottom, wheels: 2 };
  const pairs = new Map<string, readonly [number, number]>();
  gears.forEach((one, i) => {
    for (const other of gears.slice(i + 1))
      pairs.set(`${Math.min(one, other)} ${Math.max(one, other)}`, [one, other]);
  });
  const owned = (teeth: number) => gears.filter((one) => one === teeth).length;
  const spare = new Map([...new Set(gears)].map((teeth) => [teeth, owned(teeth)]));
  const two = [...pairs.values()];
  for (const drivers of two)
    for (const driven of two) {
      const shared = drivers.filter((one) => driven.includes(one));
      const enough = shared.every(
        (one) => [...drivers, ...driven].filter((other) => other === one).length <= (spare.get(one) ?? 0),
      );
      if (enough) yield { top: drivers[0] * drivers[1], bottom: driven[0] * driven[1], wheels: 4 };
    }
}

/** A ratio in lowest terms. */
export function lowest(top: number, bottom: number) {
  let [a, b] = [top, bottom];
  while (b > 0) [a, b] = [b, a % b];
  return { top: top / a, bottom: bottom / a };
}
