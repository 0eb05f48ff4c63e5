import type { FigureValues } from './values.js';

export const cutting: FigureValues = {
  'cutter-form': {
    typical: { teeth: 60, leaves: 8, module: 0.8 },
    sweep: [0.3, 0.5, 0.8, 1, 3].flatMap((module) =>
      [
        { teeth: 12, leaves: 12 },
        { teeth: 24, leaves: 5 },
        { teeth: 60, leaves: 8, tipRadius: 0 },
        { teeth: 60, leaves: 8, tipRadius: 0.7 * module },
        { teeth: 120, leaves: 16, depthForm: 3.38 },
        { teeth: 400, leaves: 6, depthForm: '2.45' },
      ].map((one) => ({ ...one, module })),
    ),
  },
  'simulated-wheels': {
    typical: {
      teeth: 16,
      leaves: 8,
      module: 1.2,
      faults: 'clean, short-step, slip-kept, slip-put-back, off-centre, eccentric',
    },
    sweep: [
      { teeth: 60, leaves: 8, module: 0.8, faults: 'clean, long-step, off-centre' },
      { teeth: 16, leaves: 8, module: 1, faults: 'deep, shallow, wide-cutter, eccentric' },
      { teeth: 8, leaves: 8, module: 5, faults: ['slip-kept'] },
      { teeth: 12, leaves: 6, module: 0.3, faults: 'short-step, long-step, slip-put-back, deep, shallow' },
    ],
  },
  'simulated-sector': {
    typical: { teeth: 60, leaves: 8, module: 0.8, stepErrorArcSeconds: 30 },
    sweep: [
      { teeth: 60, leaves: 8, module: 0.8, stepErrorArcSeconds: -1800 },
      { teeth: 60, leaves: 8, module: 0.8, stepErrorArcSeconds: 1800, steps: 56 },
      { teeth: 60, leaves: 8, module: 0.8, slipAt: 58, slipArcSeconds: 1800, slipPutBack: 'yes' },
      { teeth: 96, leaves: 8, module: 0.5, offset: 0.2, steps: 94, stepErrorArcSeconds: 287 },
      { teeth: 12, leaves: 8, module: 1, stepErrorArcSeconds: -3000 },
      { teeth: 120, leaves: 12, module: 0.3, eccentricity: 0.1 },
      { teeth: 30, leaves: 6, module: 3, depthError: 0.5, cutterModule: 3.2 },
      { teeth: 24, leaves: 8, module: 1, steps: 5 },
    ],
  },
  'cut-beside-right': {
    typical: { teeth: 60, leaves: 8, module: 0.8, slipAt: 15, slipArcSeconds: 5400, show: 'slip, closing' },
    sweep: [
      { teeth: 60, leaves: 8, module: 0.8, stepErrorArcSeconds: -540, show: 'closing' },
      { teeth: 60, leaves: 8, module: 0.8, stepErrorArcSeconds: 108, show: ['closing'] },
      {
        teeth: 60,
        leaves: 8,
        module: 0.8,
        slipAt: 15,
        slipArcSeconds: 5400,
        slipPutBack: 'yes',
        show: 'slip',
      },
      { teeth: 96, leaves: 8, module: 0.5, offset: 0.2, show: 'radius' },
      { teeth: 20, leaves: 10, module: 2, offset: -0.7, show: 'radius' },
      { teeth: 12, leaves: 6, module: 0.3, eccentricity: 0.1, show: 'first, opposite' },
      { teeth: 400, leaves: 12, module: 0.1, cutterModule: 0.11, show: 'any' },
      {
        teeth: 30,
        leaves: 6,
        module: 5,
        depthError: -1.5,
        blankDiameter: 165,
        rightDiameter: 164,
        show: 'any',
      },
      {
        teeth: 56,
        leaves: 8,
        module: 0.8,
        steps: 60,
        stepErrorArcSeconds: -1542.857,
        show: 'first, quarter',
      },
      ...[
        { uneven: 'ripple', ratio: 40 },
        { uneven: 'every-few', every: 2 },
        { uneven: 'every-few', every: 3 },
      ].flatMap((how) =>
        [
          { teeth: 60, leaves: 8, module: 0.8 },
          { teeth: 12, leaves: 6, module: 0.3 },
          { teeth: 365, leaves: 8, module: 1 },
        ].map((wheel) => ({ ...wheel, ...how, unevenArcSeconds: -200_000 / wheel.teeth, show: 'within' })),
      ),
    ],
  },
};
