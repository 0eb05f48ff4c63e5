import { InputError } from '../diagnostics/errors.js';
import { involuteCutter } from '../geometry/involute-cutter.js';
import { moduleOf, nearestIn, type ToothSize } from '../geometry/pitch.js';
import { cutterRow } from '../handbook/cutter-numbers.js';
import { nearestModule, standardModules } from '../handbook/modules.js';
import { calculation } from './calculation.js';
import { choice, length, number, optional, orElse, whole } from './quantity.js';

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
  // All the handbook's relations between the three must hold at once, whichever was given.
  proofs: [
    { of: 'module', formula: 'module-of-pitch' },
    { of: 'diametralPitch', formula: 'diametral-pitch' },
    { of: 'circularPitch', formula: 'circular-pitch' },
    {
      of: 'nearestStandardModule',
      source: { work: 'iso54', at: 'series I and II and the fine modules, from memory' },
      value: (g) => nearestModule(moduleOf(sizeGiven(g))),
    },
    {
      of: 'differencePercent',
      source: { work: 'derived', at: 'ratio to the nearest standard module, less one' },
      within: 1e-9,
      value: (g) => {
        const module = moduleOf(sizeGiven(g));
        return (module / nearestModule(module) - 1) * 100;
      },
    },
  ],
  working: ['P = 25.4/m', 'p = pi*m'],
});

export const cutterNumber = calculation({
  name: 'involute.cutterNumber',
  title: 'Number of the involute cutter',
  given: {
    teeth: whole('z', 'teeth', 12, 100_000),
    series: orElse(choice('series', ['diametralPitch', 'module']), 'diametralPitch'),
  },
  found: {
    number: { unit: '', name: 'cutter number' },
    from: { unit: 'teeth', name: 'fewest teeth it cuts' },
    to: { unit: 'teeth', name: 'most teeth it cuts; none given for the cutter that goes up to the rack' },
  },
  work: (g) => involuteCutter(g.teeth, g.series),
  proofs: [
    {
      of: 'number',
      source: {
        work: 'rose-1887',
        at: 'standard set of eight; the module series reversed is common practice, no source',
      },
      value: (g) => {
        const row = cutterRow(g.teeth)?.number;
        return row === undefined || g.series === 'diametralPitch' ? row : 9 - row;
      },
    },
    {
      of: 'from',
      source: { work: 'rose-1887', at: 'standard set of eight' },
      value: (g) => cutterRow(g.teeth)?.from,
    },
    {
      of: 'to',
      source: { work: 'rose-1887', at: 'standard set of eight' },
      value: (g) => cutterRow(g.teeth)?.to,
    },
  ],
  working: [
    {
      say: 'Look in the set for the range that holds the count. The two series number opposite ways: ask which is stamped.',
    },
  ],
});
