import type { Sensible } from './sensible.js';

export const wheels: Sensible = {
  'module.convert': { module: 0.8 },
  'wheel.addendumFactor': { teeth: 60, leaves: 8 },
  'wheel.blank': { teeth: 60, leaves: 8, module: 0.8 },
  'pinion.blank': { leaves: 8, module: 0.8 },
  'mesh.centreDistance': { teeth: 60, leaves: 8, module: 0.8 },
  'mesh.depth': { teeth: 60, leaves: 8, module: 0.8, measuredCentres: 27.34 },
  'mesh.action': { teeth: 60, leaves: 8, module: 0.8 },
};
