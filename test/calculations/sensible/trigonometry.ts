import type { Sensible } from './sensible.js';

export const trigonometry: Sensible = {
  'triangle.solve': { a: 30, b: 40, C: 70 },
  'circle.chord': { diameter: 50, divisions: 5 },
  'holes.circle': { holes: 5, diameter: 50 },
  'taper.angles': { largeDiameter: 6.5, smallDiameter: 3.5, length: 27 },
  'taper.setOver': { largeDiameter: 25, smallDiameter: 20, taperLength: 60, workLength: 90 },
  'sineBar.height': { angle: 27, centres: 127 },
  'dovetail.overRollers': { width: 40, angle: 55, rollerDiameter: 6, depth: 8, kind: 'male' },
  'polygon.flats': { diameter: 11.547, sides: 6 },
  'expansion.length': { length: 994, temperatureChange: 10, coefficient: 'steel' },
};
