import type { Sensible } from './sensible.js';

export const finishing: Sensible = {
  'crossing.layout': {
    arms: 5,
    rimInsideDiameter: 40.8,
    hubDiameter: 12,
    armWidthAtRim: 3,
    armWidthAtHub: 4.5,
    filletRadius: 0.8,
  },
  'crossing.pegs': {
    armWidthAtRim: 3,
    armWidthAtHub: 4.5,
    rimRadius: 20.4,
    hubRadius: 6,
    pegRadii: [8, 30],
  },
  'crossing.proportions': { rootDiameter: 45.488, depthOfCut: 2.36 },
  'print.scale': { length: 50.208, measured: 96.5 },
  'disc.mass': { diameter: 48, thickness: 2 },
  'facing.flatness': { bands: 3 },
};
