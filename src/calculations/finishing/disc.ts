import { InputError } from '../../diagnostics/errors.js';
import { discMass, riseOverBands } from '../../geometry/finishing/disc.js';
import { calculation, type Slip } from '../calculation.js';
import { length, number, orElse } from '../quantity.js';
import { toldApart } from '../slips.js';

/** A ring whose diameters differ by less is none, mm. */
const THINNEST = 0.01;

const massSlips: Readonly<Record<string, Slip>> = {
  radius: {
    of: 'mass',
    formula: 'pi*(D^2 - d^2)*t*q/1000',
    says: 'You used the diameter as the radius: four times too heavy.',
  },
  noHole: { of: 'mass', formula: 'pi/4*D^2*t*q/1000', says: 'You forgot the hole.' },
  straight: {
    of: 'mass',
    formula: 'pi/4*(D - d)^2*t*q/1000',
    says: 'You took the hole from the diameter first. Take the hole’s area from the disc’s.',
  },
  noPi: { of: 'mass', formula: '(D^2 - d^2)*t*q/1000', says: 'That is a square plate; a disc is π/4 of it.' },
  thousand: {
    of: 'mass',
    formula: 'pi/4*(D^2 - d^2)*t*q',
    says: 'Density is for a cubic centimetre, which has a thousand cubic millimetres.',
  },
};

export const mass = calculation({
  name: 'disc.mass',
  title: 'Mass of a disc',
  given: {
    diameter: length('D', 'diameter', 0.1, 5000),
    thickness: length('t', 'thickness', 0.001, 1000),
    hole: orElse(length('d', 'diameter of the hole', 0, 5000), 0),
    density: orElse(number('q', 'density', 'g/cm³', 0.05, 25), 8.47),
  },
  found: { mass: { symbol: 'M', unit: 'g', name: 'mass' } },
  refuse: (g) => {
    if (g.diameter - g.hole < THINNEST)
      throw new InputError('hole', g.hole, `at least ${THINNEST} mm less than the disc, ${g.diameter} mm`);
  },
  work: (g) => ({ mass: discMass(g.diameter, g.thickness, g.hole, g.density) }),
  proofs: [{ of: 'mass', formula: 'disc-mass' }],
  working: ['M = pi/4*(D^2 - d^2)*t*q/1000'],
  slips: (g, found) =>
    toldApart(massSlips, found, { D: g.diameter, d: g.hole, t: g.thickness, q: g.density }),
});

/** Yellow light of a sodium lamp, between its two lines, mm. */
const SODIUM = 0.000589;

export const flatness = calculation({
  name: 'facing.flatness',
  title: 'Flatness by interference bands',
  given: {
    bands: number('b', 'bands by which one curves, or that are counted', 'bands', 0, 1000),
    wavelength: orElse(length('L', 'wavelength of the light', 0.0002, 0.002), SODIUM),
  },
  found: {
    outOfFlat: { symbol: 'u', unit: 'mm', name: 'out of flat' },
    micrometres: { symbol: 'y', unit: 'µm', name: 'the same in thousandths of a millimetre' },
  },
  work: (g) => {
    const outOfFlat = riseOverBands(g.bands, g.wavelength);
    return { outOfFlat, micrometres: 1000 * outOfFlat };
  },
  proofs: [
    { of: 'outOfFlat', formula: 'out-of-flat' },
    { of: 'micrometres', formula: 'out-of-flat-micrometres' },
  ],
  working: (g) => [
    'u = b*L/2',
    {
      say: `In thousandths of a millimetre, with light of ${Number((1000 * g.wavelength).toPrecision(6))} µm:`,
    },
    'y = 500*b*L',
  ],
  slips: (g, found) => toldApart(flatnessSlips, found, { b: g.bands, L: g.wavelength }),
});

const flatnessSlips: Readonly<Record<string, Slip>> = {
  whole: {
    of: 'micrometres',
    formula: '1000*b*L',
    says: 'You took a whole wavelength. The light crosses the gap twice, so a band is half of one.',
  },
  quarter: {
    of: 'micrometres',
    formula: '250*b*L',
    says: 'You halved twice: from one dark band to the next is half a wavelength.',
  },
  oneMore: {
    of: 'micrometres',
    formula: '500*(b + 1)*L',
    says: 'You counted the band at the start. Count the steps from band to band.',
  },
};
