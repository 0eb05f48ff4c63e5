type Range = readonly [least: number, most: number];

/** Ranges of cutting speeds, m/min, for a high-speed steel tool; none where the tables read have none. */
export interface SpeedRange {
  readonly material: string;
  readonly turning: Range;
  readonly milling?: Range;
  readonly drilling?: Range;
}

/** Tables are in feet a minute; a range of two tables is from the lower to the higher. */
const FOOT = 0.3048;
const feet = (least: number, most: number): Range => [FOOT * least, FOOT * most];

/** Ranges as printed, not check values: tables differ by up to two to one. */
export const speedRanges: readonly SpeedRange[] = [
  { material: 'Aluminium', turning: [60, 150], milling: [60, 150], drilling: feet(250, 300) },
  { material: 'Brass', turning: [45, 120], milling: [60, 150], drilling: feet(200, 200) },
  { material: 'Brass, free-cutting', turning: [90, 105] },
  { material: 'Brass, other', turning: [60, 75] },
  { material: 'Copper', turning: feet(100, 250), milling: feet(100, 200), drilling: feet(70, 70) },
  { material: 'Cast iron', turning: [22, 30], milling: [15, 30], drilling: feet(50, 120) },
  { material: 'Mild steel', turning: [25, 45], milling: [25, 35], drilling: feet(70, 110) },
  { material: 'Tool steel', turning: feet(50, 150), milling: feet(40, 70), drilling: feet(30, 60) },
  { material: 'Stainless steel', turning: [9, 18], drilling: feet(30, 30) },
];

/** Where they were read. */
export const speedSources: readonly string[] = [
  'Design tables of speeds for turning and milling, a trade table for brass by kind, and two tables of machine speeds for drilling, copper and tool steel (web pages, read 2026)',
];
