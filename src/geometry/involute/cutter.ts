/** Fewest teeth that each cutter of the set of eight serves, from the rack down. */
const FEWEST = [135, 55, 35, 26, 21, 17, 14, 12];

/**
 * The cutter of a standard set of eight for a count of teeth, 12 or more. In the diametral-pitch series number 1
 * cuts towards the rack; in the module series number 1 cuts the fewest.
 */
export function involuteCutter(teeth: number, series: 'diametralPitch' | 'module') {
  const place = FEWEST.findIndex((fewest) => teeth >= fewest);
  const more = FEWEST[place - 1];
  return {
    number: series === 'diametralPitch' ? place + 1 : FEWEST.length - place,
    from: FEWEST[place] ?? 12,
    to: more === undefined ? null : more - 1,
  };
}
