/**
 * Cautions by operation, a sentence or two each, as a caution box prints them. Usual workshop practice; local rules
 * and a qualified instructor's word come before them.
 */
export const cautions = {
  'turning-brass': 'Brass snatches: use tools with no top rake. Chips fly as needles: keep the shield down.',
  parting: 'Part off with a sharp tool on centre, well held, and widen the groove. The new edge is sharp.',
  'lead-in-brass': 'Free-cutting brass holds lead: no food at the bench, and wash your hands after.',
  'wheel-cutting': 'Clamp the spindle before each cut. Hands stay clear of the cutter until it has stopped.',
  'cutter-guard':
    'Guard the cutter and stand out of its plane. Check its key, screw and nut before starting.',
  'fly-cutter': 'A loose fly cutter is thrown. Set its screw on the flat and start below speed.',
  'direct-dividing': 'Isolate the lathe: never start it with a detent engaged.',
  'drilling-plates': 'Thin brass grabs the drill. Clamp it on wood; never hold it in your fingers.',
  pivots: 'Pivots are sharp and brittle. Hold the arbor, not the pivot, and keep your eyes covered.',
  'set-up-clearance':
    'Wind the slide through by hand, cutter stopped: the cutter must clear the nut, the carrier and the tailstock.',
  indexing: 'Turn the crank only with the cutter clear of the work. Guard down before the next cut.',
  'isolate-first': 'Isolate the machine before you measure, change wheels or touch the cutter.',
  filing: 'Every file has its handle. Brush filings away; never blow or wipe them with the hand.',
  'emery-cloth': 'Never hold emery cloth by hand against turning work.',
  'crossing-out': 'A tensioned blade snaps: cover your eyes. Sawn edges cut.',
  soldering: 'Flux fumes and hot parts: ventilate, and let it cool before you touch it.',
  'hardening-cutters': 'Face shield and tongs; quench straight down, with the lid of the oil bath to hand.',
  screwcutting: 'Slow speed. Draw the tool back before you reverse; never reach over the work.',
  'weights-and-springs':
    'Let a mainspring down with its proper key before you touch the train. Keep clear below a hanging weight.',
} as const;

/** The name of a caution. */
export type CautionName = keyof typeof cautions;

/** All names, for the schema. */
export const cautionNames = Object.keys(cautions) as [CautionName, ...CautionName[]];
