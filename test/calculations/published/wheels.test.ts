import { describe, expect, it } from 'vitest';
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
