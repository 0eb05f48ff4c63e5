import { InputError } from '../../diagnostics/errors.js';
import { moduleOf, nearestIn, type ToothSize } from '../../geometry/wheels/pitch.js';
import { derived } from '../../handbook/record.js';
import { moduleByWheel, nearestModule, standardModules } from '../../handbook/wheels/modules.js';
import { calculation } from '../calculation.js';
import { length, number, optional } from '../quantity.js';

/** @throws {InputError} unless exactly one is given */
function sizeGiven(
  g: Readonly<Partial<Record<'module' | 'diametralPitch' | 'circularPitch', number | undefined>>>,
): ToothSize {
  const sizes: ToothSize[] = [];
  if (g.module !== undefined) sizes.push({ module: g.module });
  if (g.diametralPitch !== undefined) sizes.push({ diametralPitch: g.diametralPitch });
  if (g.circularPitch !== undefined) sizes.push({ circularPitch: g.circularPitch });
  const [only, second] = sizes;
  if (only && !second) return only;
  throw new InputError('module', g.module, 'exactly one of module, diametralPitch, circularPitch');
}

export const convert = calculation({
  name: 'module.convert',
  title: 'Module, diametral pitch and circular pitch',
  given: {
    module: optional(length('m', 'module', 0.02, 50)),
    diametralPitch: optional(number('P', 'diametral pitch', 'teeth per inch', 0.5, 1000)),
    circularPitch: optional(length('p', 'circular pitch', 0.05, 160)),
  },
  found: {
    module: { symbol: 'm', unit: 'mm', name: 'module' },
    diametralPitch: { symbol: 'P', unit: 'teeth per inch', name: 'diametral pitch' },
    circularPitch: { symbol: 'p', unit: 'mm', name: 'circular pitch' },
    nearestStandardModule: { unit: 'mm', name: 'nearest standard module' },
    differencePercent: { unit: '%', name: 'difference from the nearest standard module' },
  },
  refuse: (g) => void sizeGiven(g),
  work: (g) => {
    const module = moduleOf(sizeGiven(g));
    const nearest = nearestIn(standardModules, module);
    return {
      module,
      diametralPitch: g.diametralPitch ?? 25.4 / module,
      circularPitch: g.circularPitch ?? Math.PI * module,
      nearestStandardModule: nearest,
      differencePercent: (100 * (module - nearest)) / nearest,
    };
  },
  proofs: [
    {
      of: 'module',
      source: derived('a wheel of 120 teeth: circumference over π, shared between the teeth'),
      within: (g) => 1e-12 * moduleByWheel(g),
      value: moduleByWheel,
    },
    { of: 'diametralPitch', formula: 'diametral-pitch' },
    { of: 'circularPitch', formula: 'circular-pitch' },
    {
      of: 'nearestStandardModule',
      source: { work: 'iso54', at: 'series I and II and the fine modules, from memory' },
      value: (g) => nearestModule(moduleByWheel(g)),
    },
    {
      of: 'differencePercent',
      source: derived('ratio to the nearest standard module, less one'),
      within: 1e-9,
      value: (g) => {
        const module = moduleByWheel(g);
        return (module / nearestModule(module) - 1) * 100;
      },
    },
  ],
  working: ['P = 25.4/m', 'p = pi*m'],
});
