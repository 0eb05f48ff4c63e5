import { type LeafCount, pinionForms, wheelForms } from '../../src/calculations/wheels/tooth-forms.js';
import { areas } from './areas/index.js';

/** Values to draw every figure from: the ranges that lessons vary over, ends and odd ones included. */
const MODULES = [0.3, 0.4, 0.5, 0.6, 0.8, 1];
const TEETH = [30, 31, 48, 60, 77, 96, 120];
const LEAVES: readonly LeafCount[] = [6, 7, 8, 10, 12, 16];

type Given = Record<string, unknown>;

const cross = <A, B>(as: readonly A[], bs: readonly B[]): [A, B][] =>
  as.flatMap((a) => bs.map((b): [A, B] => [a, b]));

const pinion = (leaves: LeafCount, module: number): Given => {
  const form = pinionForms[leaves];
  return {
    leaves,
    module,
    pitchDiameter: leaves * module,
    outsideDiameter: (leaves + 2 * form.addendum) * module,
    rootDiameter: (leaves - 2 * form.dedendum) * module,
    leafThickness: form.leafThickness * module,
    tipRadius: form.tipRadius * module,
  };
};

export const sweeps: Readonly<Record<string, readonly Given[]>> = {
  ...Object.fromEntries(Object.entries(areas).map(([name, { sweep }]) => [name, sweep])),
  'wheel-blank': cross(TEETH, MODULES).map(([teeth, module]) => ({
    teeth,
    module,
    outsideDiameter: module * (teeth + 2.76),
    pitchDiameter: module * teeth,
    rootDiameter: module * (teeth - 3.14),
    bore: Math.min(6, (module * teeth) / 5),
  })),
  'tooth-form': cross(cross(TEETH, Object.values(wheelForms)), MODULES).flatMap(([[teeth, form], module]) => {
    const sizes = {
      teeth,
      leaves: 8,
      module,
      addendum: form.addendum * module,
      dedendum: form.dedendum * module,
      flankRadius: form.flankRadius * module,
    };
    return [sizes, { ...sizes, toothThickness: 1.41 * module }];
  }),
  'pinion-section': cross(LEAVES, MODULES).map(([leaves, module]) => pinion(leaves, module)),
  'depth-forms': MODULES.map((module) => ({ module })),
  'cutting-passes': [
    ...[[2.36], [1.2, 1.16], [0.9, 0.9, 0.56], [0.5, 0.5, 0.5, 0.5, 0.36], [2.2, 0.1, 0.06]],
    ...[[0.3, 0.3, 0.285], [0.885], [1.5, 1.25, 0.2], Array.from({ length: 12 }, () => 0.2), [0.02, 2, 0.02]],
  ].map((passes) => ({ passes, depth: passes.reduce((a, b) => a + b, 0) })),
  'over-travel': cross(cross([12, 20, 24, 32, 63], [0.885, 2.36, 3.38]), [
    { thickness: 1.5, clearance: 0 },
    { thickness: 2 },
    { thickness: 9.5, clearance: 0.5 },
    { thickness: 25, clearance: 2 },
  ]).map(([[cutterDiameter, depth], rest]) => ({ cutterDiameter, depth, ...rest })),
  hump: cross([16, 20, 24, 32], [0.5, 1, 2, 3, 4, 5]).flatMap(([cutterDiameter, short]) => {
    const hump = cutterDiameter / 2 - Math.sqrt((cutterDiameter / 2) ** 2 - short ** 2);
    return [
      { cutterDiameter, short, hump },
      { cutterDiameter, short, hump, thickness: 2 },
    ];
  }),
  stack: cross([0.5, 1, 1.5, 2, 3], [1, 2, 4, 9]).flatMap(([blankThickness, blanks]) => [
    { blankThickness, blanks, backing: 1.5, approach: 7.15, slideTravel: 60 },
    { blankThickness, blanks, backing: 0, approach: 3.2, clearance: 0.5, slideTravel: 25 },
    { blankThickness, blanks, backing: 6, approach: 9, clearance: 0, slideTravel: 140 },
  ]),
  'index-plate': [15, 16, 18, 20, 21, 27, 30, 31, 33, 39, 49, 57, 62, 66].flatMap((circle) =>
    [
      ...[0, 1, 2, Math.floor(circle / 4), Math.floor(circle / 2), Math.floor((2 * circle) / 3)],
      ...[circle - 2, circle - 1, circle, circle + 1, 3 * circle + 4],
    ].flatMap((spaces) => [
      { circle, spaces },
      { circle, spaces, others: [15, 18, 24, 33, 49, 66] },
    ]),
  ),
  'spaces-not-holes': [1, 2, 3, 5, 7, 10, 12, 15, 16, 21, 29, 40].map((spaces) => ({ spaces })),
  'quarter-marks': [...TEETH, 3, 6, 7, 8, 37, 150].map((teeth) => ({ teeth })),
  'check-bar': [{ length: 50 }, { length: 100 }, { length: 76.2, units: 'inch' }, {}, { length: 63.5 }],
  'cutter-stamp': cross(MODULES, ['2.95', '3.38', '2.45', 3]).flatMap(([module, form]) => [
    { module, form },
    { module, form, teethFrom: 30 },
  ]),
  'pitch-circles': cross(cross(TEETH, LEAVES), MODULES).map(([[teeth, leaves], module]) => ({
    teeth,
    leaves,
    module,
  })),
};
