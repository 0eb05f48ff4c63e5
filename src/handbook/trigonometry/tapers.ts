/** A taper by its name, and what it grows by in a foot of length, on the diameter, in inches. */
export interface ListedTaper {
  readonly name: string;
  readonly perFoot: number;
}

/** Where they were read. */
export const taperSources: readonly string[] = [
  'Morse tapers by the foot: a table of dimensions (web page, read 2026)',
  'Chuck tapers 1, 2, 6 and 33 by the foot: a table of standard tapers (two web pages, read 2026), their fifth figure from memory',
  'Jarno tapers and inch taper pins: two US service training manuals (web pages, read 2026)',
  'Metric taper pins, pipe threads and the steep 7 : 24: from memory',
];

/** Jarno: large end n/8, small end n/10, length n/2 inches, so 0.6 for every size. */
export const tapersInUse: readonly ListedTaper[] = [
  { name: 'Morse 0', perFoot: 0.6246 },
  { name: 'Morse 1', perFoot: 0.59858 },
  { name: 'Morse 2', perFoot: 0.59941 },
  { name: 'Morse 3', perFoot: 0.60235 },
  { name: 'Morse 4', perFoot: 0.62326 },
  { name: 'Morse 5', perFoot: 0.63151 },
  { name: 'Jarno, every size', perFoot: 0.6 },
  { name: 'Chuck taper 1', perFoot: 0.92508 },
  { name: 'Chuck taper 2', perFoot: 0.97861 },
  { name: 'Chuck taper 6', perFoot: 0.62292 },
  { name: 'Chuck taper 33', perFoot: 0.76194 },
  { name: 'Taper pin, metric, 1 : 50', perFoot: 12 / 50 },
  { name: 'Taper pin, inch', perFoot: 0.25 },
  { name: 'Pipe thread, 1 : 16', perFoot: 12 / 16 },
  { name: 'Steep taper, 7 : 24', perFoot: (12 * 7) / 24 },
];
