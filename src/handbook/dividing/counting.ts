/** Circles and holes found by trying every hole: divisions x movement must be exactly the head's ratio in turns. */
export function settingsByTrial(divisions: number, ratio: number, circles: readonly number[]) {
  const settings: { holes: number; circle: number }[] = [];
  let turns = 0;
  while ((turns + 1) * divisions <= ratio) turns++;
  for (const circle of circles)
    for (let holes = 0; holes < circle; holes++)
      if (divisions * (turns * circle + holes) === ratio * circle) settings.push({ holes, circle });
  return { turns, settings };
}

/** The crank moved division by division, counting spaces and carrying a turn whenever the circle is full. */
export function crankByStepping(divisions: number, turns: number, holes: number, circle: number) {
  const places: { turns: number; holes: number }[] = [{ turns: 0, holes: 0 }];
  let place = { turns: 0, holes: 0 };
  for (let cut = 1; cut <= divisions; cut++) {
    const spaces = place.holes + holes;
    const carry = spaces >= circle ? 1 : 0;
    place = { turns: place.turns + turns + carry, holes: spaces - carry * circle };
    places.push(place);
  }
  return places;
}

/** How many holes the pin has been in when it has been moved so many spaces, the one it began in among them. */
export function holesVisited(spaces: number): number {
  const visited = new Set<number>();
  let hole = 0;
  visited.add(hole);
  for (let moved = 0; moved < spaces; moved++) {
    hole++;
    visited.add(hole);
  }
  return visited.size;
}
