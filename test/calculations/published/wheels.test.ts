import { describe, expect, it } from 'vitest';
import { leafFor } from '../../../src/calculations/wheels/pair.js';
import { leafSide } from '../../../src/geometry/wheels/leaf.js';
import { work } from '../../../src/index.js';
import { near } from './near.js';

describe("a cutter maker's dimension table (BS 978 Part 2, NHS 56702-4), read", () => {
  // The second wheel form's root is (N - 4) M, the short form's (N - 2.14) M, the round-bottom form's blank (N + 2.50) M.
  const wheel = { teeth: 60, module: 0.8, convention: '2.76' };
  near('wheel.blank', wheel, 'outsideDiameter', 0.8 * 62.76, 1e-9);
  near('wheel.blank', { ...wheel, depthForm: '3.38' }, 'rootDiameter', 0.8 * 56, 1e-9);
  near('wheel.blank', { ...wheel, depthForm: '2.45' }, 'depthOfCut', 1.96, 1e-9);
  near('wheel.blank', { ...wheel, depthForm: 3 }, 'outsideDiameter', 50, 1e-9);
  near('pinion.blank', { leaves: 8, module: 0.8 }, 'outsideDiameter', 7.768, 1e-9);
  near('pinion.blank', { leaves: 10, module: 1 }, 'depthOfCut', 2.855, 1e-9);
});

describe('BS 978-2 practical addendum factors, as commonly reported (from memory; figures already times 0.95)', () => {
  for (const [leaves, ratio, factor] of [
    [6, 6, 1.303],
    [7, 8, 1.399],
    [8, 7.5, 1.471],
    [10, 8, 1.607],
    [12, 10, 1.734],
    [16, 12, 1.94],
  ] as const)
    near('wheel.addendumFactor', { teeth: leaves * ratio, leaves }, 'practicalFactor', factor, 6e-4);

  // Ward L. Goodrich, The Modern Clock (1905): seven-twentieths of the pinion's pitch radius for eight leaves,
  // an older rule about 4 % below the standard. Both stand; the standard is followed.
  it('eight leaves stand 3 to 6 % above the old seven-twentieths rule', () => {
    const found = work('wheel.addendumFactor', { teeth: 56, leaves: 8 }).found.practicalFactor as number;
    expect(found / (0.35 * 4)).toBeGreaterThan(1.03);
    expect(found / (0.35 * 4)).toBeLessThan(1.06);
  });
});

describe('module and pitch', () => {
  near('module.convert', { circularPitch: '0.1245in' }, 'module', 1.00659, 1e-4); // common practice: near module 1
  near('module.convert', { diametralPitch: 16 }, 'circularPitch', 4.98728, 1e-4); // 25.4 pi / 16
  near('mesh.centreDistance', { teeth: 50, leaves: 10, module: 0.4 }, 'centreDistance', 12, 1e-12); // a published lesson on module, read
});

describe('allowances for the blank, a cutter maker’s chart to BS 978 Part 2, and a forum thread that repeats it, read', () => {
  // 2.76 modules over the teeth, one figure for every wheel; two 0.95 of the theoretical factor make it for 7 leaves.
  near('wheel.blank', { teeth: 60, module: 1, convention: '2.76' }, 'outsideDiameter', 62.76, 1e-9);
  for (const [teeth, low, high] of [
    [35, 2.747, 2.749],
    [42, 2.769, 2.771],
  ] as const)
    it(`7 leaves, ${teeth} teeth by leaf count: within ${low} to ${high} modules`, () => {
      const factor = work('wheel.addendumFactor', { teeth, leaves: 7 }).found.practicalFactor as number;
      expect(2 * factor).toBeGreaterThan(low);
      expect(2 * factor).toBeLessThan(high);
    });
  // For 8 leaves at 7:1 the standard asks 2.935: the chart's figure is a compromise, and both stand as named conventions.
  near('wheel.blank', { teeth: 56, leaves: 8, module: 1 }, 'outsideDiameter', 56 + 2.935, 1e-3);
  for (const leaves of [6, 7, 8])
    near('pinion.blank', { leaves, module: 1 }, 'outsideDiameter', leaves + 1.71, 1e-9);
  for (const leaves of [10, 12, 16])
    near('pinion.blank', { leaves, module: 1 }, 'outsideDiameter', leaves + 1.61, 1e-9);
});

describe('pinion leaves, BS 978-2 as commonly reported (from memory)', () => {
  for (const leaves of [6, 7, 8]) near('pinion.blank', { leaves, module: 1 }, 'leafThickness', 1.05, 1e-9);
  for (const leaves of [12, 16]) near('pinion.blank', { leaves, module: 1 }, 'leafThickness', 1.25, 1e-9);
  // The standard as reported gives 10 leaves the thin leaf, 1.05; the chart, which is followed, the thick one
  // (tooth to space 2:3). Unresolved without the standard itself.
  near('pinion.blank', { leaves: 10, module: 1 }, 'leafThickness', 1.25, 1e-9);

  // 8 leaves: trade usage of the standard says profile B, the chart full ogive, which is followed.
  for (const [leaves, form] of [
    [6, 'full ogive'],
    [7, 'full ogive'],
    [8, 'full ogive'],
    [10, 'one-third ogive'],
    [16, 'one-third ogive'],
  ] as const)
    it(`${leaves} leaves: ${form}`, () =>
      expect(work('pinion.blank', { leaves, module: 1 }).found.form).toBe(form));

  // Each tip's arcs, centred on the pitch circle, meet close to the addendum that is tabled: one constant for a group.
  it.each([
    ['A, 8 leaves', 8, 1.05, 0.525, 0.525, 0.525],
    ['A, 12 leaves', 12, 1.25, 0.625, 0.625, 0.625],
    ['B, 8 leaves', 8, 1.05, 0.7, 0.674, 0.67],
    ['B, 12 leaves', 12, 1.25, 0.83, 0.801, 0.805],
    ['C, 6 leaves', 6, 1.05, 1.05, 0.861, 0.855],
    ['C, 8 leaves', 8, 1.05, 1.05, 0.874, 0.855],
    ['C, 12 leaves', 12, 1.25, 1.25, 1.049, 1.05],
  ])('profile %s', (_, leaves, leafThickness, tipRadius, apex, tabled) => {
    const { arcCentre } = leafSide(leaves, { addendum: apex, leafThickness, tipRadius });
    expect(Math.abs(Math.hypot(arcCentre.x, arcCentre.y) - leaves / 2)).toBeLessThan(0.03);
    expect(Math.abs(apex - tabled)).toBeLessThan(0.02);
  });

  it('root clearance 0.4 module below the wheel’s practical addendum, for counts that the chart does not hold', () => {
    for (const leaves of [5, 9, 14, 20]) {
      const factor = work('wheel.addendumFactor', { teeth: 120, leaves }).found.practicalFactor as number;
      expect(leafFor(leaves, factor).dedendum).toBeGreaterThanOrEqual(factor + 0.4 - 1e-12);
    }
    // The chart's own roots leave less: 8 leaves 1.90 against 1.87, but 6 leaves 1.58 against 1.70. It is followed.
    expect(leafFor(8, 1.471).dedendum).toBe(1.9);
    expect(leafFor(6, 1.303).dedendum).toBe(1.58);
  });
});

it('BS 978-2 covers modules 0.070 to 1.000 (its catalogue entry, read): all are accepted', () => {
  for (const module of [0.07, 0.3, 1])
    expect(work('wheel.blank', { teeth: 60, leaves: 8, module }).found.pitchDiameter).toBe(60 * module);
});

describe('Ward L. Goodrich, The Modern Clock, 1905, read', () => {
  // Nine leaves: three-sevenths of the pinion's total radius. Out of line with his own rule for eight, and not followed.
  it('nine leaves: his three-sevenths stand far above the standard’s third', () => {
    const factor = work('wheel.addendumFactor', { teeth: 63, leaves: 9 }).found.practicalFactor as number;
    expect(factor / 4.5).toBeCloseTo(0.341, 3);
    expect(3 / 7 / (factor / 4.5)).toBeGreaterThan(1.2);
  });

  // Ten leaves: leaf 11°, space 25°. The standard's leaf takes 12.03° (1.05) or 14.32° (1.25, followed).
  it('ten leaves: his leaf is thinner than either in use', () => {
    const thickness = work('pinion.blank', { leaves: 10, module: 1 }).found.leafThickness as number;
    const angle = (thickness / 5) * (180 / Math.PI);
    expect(angle).toBeCloseTo(14.32, 2);
    expect((1.05 / 5) * (180 / Math.PI)).toBeCloseTo(12.03, 2);
    expect(angle).toBeGreaterThan(11);
  });
});

describe('addendum factors worked out again by an independent script: theoretical, practical, face radius, in modules', () => {
  const ratios = [3, 4, 5, 6, 7, 7.5, 8, 9, 10, 12];
  it.each([
    [
      6,
      [
        [1.3254, 1.259, 1.856],
        [1.3473, 1.28, 1.886],
        [1.3615, 1.293, 1.906],
        [1.3714, 1.303, 1.92],
        [1.3787, 1.31, 1.93],
        [1.3817, 1.313, 1.934],
        [1.3843, 1.315, 1.938],
        [1.3888, 1.319, 1.944],
        [1.3924, 1.323, 1.949],
        [1.398, 1.328, 1.957],
      ],
    ],
    [
      7,
      [
        [1.4053, 1.335, 1.967],
        [1.4304, 1.359, 2.003],
        [1.4466, 1.374, 2.025],
        [1.4579, 1.385, 2.041],
        [1.4663, 1.393, 2.053],
        [1.4697, 1.396, 2.058],
        [1.4727, 1.399, 2.062],
        [1.4779, 1.404, 2.069],
        [1.482, 1.408, 2.075],
        [1.4884, 1.414, 2.084],
      ],
    ],
    [
      8,
      [
        [1.4771, 1.403, 2.068],
        [1.505, 1.43, 2.107],
        [1.523, 1.447, 2.132],
        [1.5356, 1.459, 2.15],
        [1.545, 1.468, 2.163],
        [1.5488, 1.471, 2.168],
        [1.5522, 1.475, 2.173],
        [1.5579, 1.48, 2.181],
        [1.5625, 1.484, 2.188],
        [1.5696, 1.491, 2.197],
      ],
    ],
    [
      9,
      [
        [1.5426, 1.465, 2.16],
        [1.573, 1.494, 2.202],
        [1.5927, 1.513, 2.23],
        [1.6065, 1.526, 2.249],
        [1.6167, 1.536, 2.263],
        [1.6209, 1.54, 2.269],
        [1.6246, 1.543, 2.274],
        [1.6309, 1.549, 2.283],
        [1.6359, 1.554, 2.29],
        [1.6437, 1.561, 2.301],
      ],
    ],
    [
      10,
      [
        [1.603, 1.523, 2.244],
        [1.6357, 1.554, 2.29],
        [1.657, 1.574, 2.32],
        [1.6719, 1.588, 2.341],
        [1.6829, 1.599, 2.356],
        [1.6874, 1.603, 2.362],
        [1.6914, 1.607, 2.368],
        [1.6981, 1.613, 2.377],
        [1.7036, 1.618, 2.385],
        [1.712, 1.626, 2.397],
      ],
    ],
    [
      12,
      [
        [1.7118, 1.626, 2.396],
        [1.7487, 1.661, 2.448],
        [1.7727, 1.684, 2.482],
        [1.7896, 1.7, 2.505],
        [1.802, 1.712, 2.523],
        [1.8071, 1.717, 2.53],
        [1.8117, 1.721, 2.536],
        [1.8193, 1.728, 2.547],
        [1.8255, 1.734, 2.556],
        [1.835, 1.743, 2.569],
      ],
    ],
    [
      14,
      [
        [1.8084, 1.718, 2.532],
        [1.849, 1.757, 2.589],
        [1.8755, 1.782, 2.626],
        [1.894, 1.799, 2.652],
        [1.9077, 1.812, 2.671],
        [1.9134, 1.818, 2.679],
        [1.9183, 1.822, 2.686],
        [1.9267, 1.83, 2.697],
        [1.9336, 1.837, 2.707],
        [1.944, 1.847, 2.722],
      ],
    ],
    [
      15,
      [
        [1.853, 1.76, 2.594],
        [1.8954, 1.801, 2.654],
        [1.9229, 1.827, 2.692],
        [1.9423, 1.845, 2.719],
        [1.9566, 1.859, 2.739],
        [1.9625, 1.864, 2.747],
        [1.9676, 1.869, 2.755],
        [1.9764, 1.878, 2.767],
        [1.9835, 1.884, 2.777],
        [1.9944, 1.895, 2.792],
      ],
    ],
    [
      16,
      [
        [1.8957, 1.801, 2.654],
        [1.9397, 1.843, 2.716],
        [1.9683, 1.87, 2.756],
        [1.9883, 1.889, 2.784],
        [2.0032, 1.903, 2.804],
        [2.0093, 1.909, 2.813],
        [2.0147, 1.914, 2.821],
        [2.0238, 1.923, 2.833],
        [2.0312, 1.93, 2.844],
        [2.0425, 1.94, 2.86],
      ],
    ],
  ] as [number, [number, number, number][]][])('%s leaves', (leaves, row) => {
    row.forEach(([theoretical, practical, radius], i) => {
      const teeth = leaves * (ratios[i] ?? 0);
      if (!Number.isInteger(teeth)) return; // 7.5 to 1 needs an even pinion
      const { factor, practicalFactor } = work('wheel.addendumFactor', { teeth, leaves }).found;
      expect(Math.abs((factor as number) - theoretical)).toBeLessThan(6e-5);
      expect(Math.abs((practicalFactor as number) - practical)).toBeLessThan(6e-4);
      const { flankRadius } = work('wheel.blank', { teeth, leaves, module: 1 }).found;
      expect(Math.abs((flankRadius as number) - radius)).toBeLessThan(6e-4);
    });
  });
});

describe('depth of the class pair', () => {
  // Set with the depthing tool to ±0.02–0.05 mm, common practice.
  near('mesh.depth', { teeth: 60, leaves: 8, module: 0.8, measuredCentres: 27.34 }, 'gap', 0.14, 1e-9);
  // Pitch less tooth less leaf is 0.419 with the chart's leaf of a third of the pitch, 0.417 with the 1.05 of the standard.
  near('mesh.depth', { teeth: 60, leaves: 8, module: 0.8, measuredCentres: 27.2 }, 'shake', 0.419, 0.003);
  near(
    'mesh.depth',
    { teeth: 60, leaves: 10, module: 0.8, measuredCentres: 28 },
    'shakeAtRightCentres',
    0.251,
    0.006,
  );
});
