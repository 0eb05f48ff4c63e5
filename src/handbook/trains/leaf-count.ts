/**
 * Passes the teeth of a great wheel one by one and counts the turns of the pinion they drive, an hour each, and the
 * days as a dial of twenty-four hours goes round.
 *
 * @param turns of the great wheel; a part of a tooth at the end is a part of a leaf
 */
export function hoursByLeaves(wheel: number, pinion: number, turns: number) {
  let [leaf, hour, day] = [0, 0, 0];
  const passLeaf = (): void => {
    leaf++;
    if (leaf < pinion) return;
    leaf = 0;
    hour++;
    if (hour < 24) return;
    hour = 0;
    day++;
  };
  const wholeTurns = Math.trunc(turns);
  for (let turn = 0; turn < wholeTurns; turn++) for (let tooth = 0; tooth < wheel; tooth++) passLeaf();
  let left = (turns - wholeTurns) * wheel;
  for (; left >= 1; left--) passLeaf();
  const ofTheHour = (leaf + left) / pinion;
  return { hours: 24 * day + hour + ofTheHour, days: day + (hour + ofTheHour) / 24 };
}
