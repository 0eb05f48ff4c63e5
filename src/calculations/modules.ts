import { InputError } from '../diagnostics/errors.js';
import { involuteCutter } from '../geometry/involute-cutter.js';
import { cutterRow } from '../handbook/cutter-numbers.js';
import { nearestModule, standardModules } from '../handbook/modules.js';
import { calculation } from './calculation.js';
import { choice, length, number, optional, orElse, whole } from './quantity.js';

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
  refuse: (g) => {
    if ([g.module, g.diametralPitch, g.circularPitch].filter((value) => value !== undefined).length !== 1)
      throw new InputError('module', g.module, 'exactly one of module, diametralPitch, circularPitch');
  },
  work: (g) => {
    const module =
      g.module ??
      (g.diametralPitch === undefined ? (g.circularPitch ?? 0) / Math.PI : 25.4 / g.diametralPitch);
    const nearest = standardModules.reduce((best, one) =>
      Math.abs(one - module) < Math.abs(best - module) ? one : best,
    );
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
      source: { work: 'derived', at: 'circular pitch over π; inches of circumference over teeth' },
      within: 1e-9,
      value: (g) =>
        g.module !== undefined
          ? g.module
          : g.circularPitch !== undefined
            ? g.circularPitch / Math.PI
            : (1 / (g.diametralPitch ?? 1)) * 25.4,
    },
    {
      of: 'circularPitch',
      source: { work: 'derived', at: 'π inches of circumference hold P teeth' },
      within: 1e-9,
      value: (g) =>
        g.diametralPitch === undefined
          ? Math.PI * (g.module ?? (g.circularPitch ?? 0) / Math.PI)
          : (Math.PI / g.diametralPitch) * 25.4,
    },
    {
      of: 'diametralPitch',
      source: { work: 'derived', at: 'teeth on a wheel of one inch pitch diameter' },
      within: 1e-9,
      value: (g) => g.diametralPitch ?? 25.4 / (g.module ?? (g.circularPitch ?? 0) / Math.PI),
    },
    {
      of: 'nearestStandardModule',
      source: { work: 'iso54', at: 'series I and II and the fine modules, from memory' },
      value: (g) =>
        nearestModule(
          g.module ??
            (g.diametralPitch === undefined ? (g.circularPitch ?? 0) / Math.PI : 25.4 / g.diametralPitch),
        ),
    },
    {
      of: 'differencePercent',
      source: { work: 'derived', at: 'ratio to the nearest standard module, less one' },
      within: 1e-9,
      value: (g) => {
        const module =
          g.module ??
          (g.diametralPitch === undefined ? (g.circularPitch ?? 0) / Math.PI : 25.4 / g.diametralPitch);
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
