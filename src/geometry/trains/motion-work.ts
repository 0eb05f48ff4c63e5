/** Wheels and pinions under the dial: the cannon pinion drives the minute wheel, its pinion the hour wheel. */
export interface MotionWork {
  readonly cannonPinion: number;
  readonly minuteWheel: number;
  readonly minutePinion: number;
  readonly hourWheel: number;
}

/** What a motion work must keep to. */
export interface MotionWorkBounds {
  /** Turns of the minute hand for one of the hour hand. */
  readonly ratio: number;
  readonly minLeaves: number;
  readonly maxLeaves: number;
  readonly maxTeeth: number;
  /** Both pairs of one module, so that their counts must have the same sum. */
  readonly equalCentres: boolean;
}

/**
 * Every exact motion work in which neither pair gears up, fewest teeth first, then the smaller cannon pinion, minute
 * wheel and minute pinion.
 */
export function motionWorks(bounds: MotionWorkBounds): MotionWork[] {
  const { ratio, minLeaves, maxLeaves, maxTeeth, equalCentres } = bounds;
  const sets: MotionWork[] = [];
  for (let cannonPinion = minLeaves; cannonPinion <= maxLeaves; cannonPinion++)
    for (let minuteWheel = cannonPinion; minuteWheel <= maxTeeth; minuteWheel++)
      for (let minutePinion = minLeaves; minutePinion <= maxLeaves; minutePinion++) {
        const product = ratio * cannonPinion * minutePinion;
        const hourWheel = product / minuteWheel;
        if (product % minuteWheel !== 0 || hourWheel < minutePinion || hourWheel > maxTeeth) continue;
        if (equalCentres && cannonPinion + minuteWheel !== minutePinion + hourWheel) continue;
        sets.push({ cannonPinion, minuteWheel, minutePinion, hourWheel });
      }
  return sets.sort(
    (a, b) =>
      teethIn(a) - teethIn(b) ||
      a.cannonPinion - b.cannonPinion ||
      a.minuteWheel - b.minuteWheel ||
      a.minutePinion - b.minutePinion,
  );
}

const teethIn = (set: MotionWork): number =>
  set.cannonPinion + set.minuteWheel + set.minutePinion + set.hourWheel;
