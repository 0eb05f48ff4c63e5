import { InputError } from '../../diagnostics/errors.js';
import { lengthOf, type Path } from '../../geometry/curves/path.js';
import { type Closed, type Crossing, removed, windowsOf } from '../../geometry/finishing/crossing.js';
import { markingOut } from '../../geometry/finishing/layout.js';
import { windowsByRings } from '../../handbook/finishing/rings.js';
import { type CrossedWheel, lengthRound, windowByRolling } from '../../handbook/finishing/window.js';
import { derived } from '../../handbook/record.js';
import { calculation } from '../calculation.js';
import { mm } from '../found.js';
import { length, optional, whole } from '../quantity.js';
import { armWidthAtHub, armWidthAtRim } from './arms.js';
import { crossingSlips } from './crossing-slips.js';

interface LayoutGiven extends CrossedWheel {
  readonly outsideDiameter?: number | undefined;
}

/** What is found; areas and shares of nothing where there are no windows. */
interface Found {
  readonly possible: boolean;
  readonly windows: readonly Path[];
  readonly chord: number;
  readonly halfAngleAtRim: number;
  readonly halfAngleAtHub: number;
  readonly openingAtHub: number;
  readonly areaRemoved: number | null;
  readonly massRemovedPercent: number | null;
  readonly inertiaRemovedPercent: number | null;
  readonly reason?: string;
}

/** The same in radii, as the geometry has it. */
const crossingOf = (g: LayoutGiven): Crossing => ({
  arms: g.arms,
  rimRadius: g.rimInsideDiameter / 2,
  hubRadius: g.hubDiameter / 2,
  widthAtRim: g.armWidthAtRim,
  widthAtHub: g.armWidthAtHub,
  filletRadius: g.filletRadius,
});

/** What the metal removed is a share of: the whole disc where it is given, else the disc within the rim. */
const discDiameter = (g: LayoutGiven): number => g.outsideDiameter ?? g.rimInsideDiameter;
const discArea = (g: LayoutGiven): number => (Math.PI * discDiameter(g) ** 2) / 4;
const discMoment = (g: LayoutGiven): number => (Math.PI * discDiameter(g) ** 4) / 32;

const WHY: Readonly<Record<Closed, string>> = {
  hub: 'the arms meet at the hub: take a larger hub, narrower arms or fewer',
  rim: 'the arms meet at the rim: take narrower arms or fewer',
  side: 'the arms widen so fast to the rim that their sides would cut into the hub',
  fillets: 'the fillets do not fit into the window: take smaller ones, narrower arms or a larger hub',
};

const rings = derived('the windows cut into thin rings about the axis and added up');
const rolling = derived('a disc of the fillet’s radius rolled round hub and rim until it touches the arm');

function refuse(g: LayoutGiven): void {
  const { rimInsideDiameter: rim, hubDiameter: hub } = g;
  if (hub >= rim) throw new InputError('hubDiameter', hub, `less than the rim’s inside diameter, ${rim} mm`);
  if (g.armWidthAtHub >= hub)
    throw new InputError('armWidthAtHub', g.armWidthAtHub, `less than the hub’s diameter, ${hub} mm`);
  if (g.armWidthAtRim >= rim)
    throw new InputError('armWidthAtRim', g.armWidthAtRim, `less than the rim’s inside diameter, ${rim} mm`);
  if (g.outsideDiameter !== undefined && g.outsideDiameter < rim)
    throw new InputError(
      'outsideDiameter',
      g.outsideDiameter,
      `at least the rim’s inside diameter, ${rim} mm`,
    );
}

export const crossingLayout = calculation({
  name: 'crossing.layout',
  title: 'Crossing out a wheel',
  given: {
    arms: whole('N', 'arms', 3, 12),
    rimInsideDiameter: length('D', 'inside diameter of the rim', 2, 2000),
    hubDiameter: length('d', 'diameter of the hub', 0.5, 1000),
    armWidthAtRim,
    armWidthAtHub,
    filletRadius: length('r', 'radius in the corners', 0, 100),
    outsideDiameter: optional(length('D_o', 'diameter of the plain disc to compare with', 2, 2500)),
  },
  found: {
    possible: { unit: '', name: 'possible' },
    windows: {
      unit: 'mm',
      name: 'outline of each window, lines and arcs, anticlockwise; first arm along x, turns in radians',
    },
    chord: mm('c', 'chord between the middles of neighbouring arms, on the rim’s inside'),
    halfAngleAtRim: { symbol: 'A', unit: '°', name: 'half-angle of an arm at the rim' },
    halfAngleAtHub: { symbol: 'B', unit: '°', name: 'half-angle of an arm at the hub' },
    openingAtHub: mm('g', 'opening between the arms at the hub before the fillets; under 0 they overlap'),
    areaRemoved: { symbol: 'S', unit: 'mm²', name: 'area of all windows' },
    massRemovedPercent: {
      symbol: 'M',
      unit: '%',
      name: 'mass removed, of the plain disc (of the disc within the rim when none is given)',
    },
    inertiaRemovedPercent: { symbol: 'J', unit: '%', name: 'moment of inertia removed, of the same disc' },
    reason: { unit: '', name: 'why it is not possible' },
  },
  refuse,
  work: (g): Found => {
    const crossing = crossingOf(g);
    const marks = markingOut(g.arms, crossing);
    const result = windowsOf(crossing);
    if ('closed' in result)
      return {
        possible: false,
        windows: [],
        ...marks,
        areaRemoved: null,
        massRemovedPercent: null,
        inertiaRemovedPercent: null,
        reason: WHY[result.closed],
      };
    const { area, moment } = removed(result.windows);
    return {
      possible: true,
      windows: result.windows,
      ...marks,
      areaRemoved: area,
      massRemovedPercent: (100 * area) / discArea(g),
      inertiaRemovedPercent: (100 * moment) / discMoment(g),
    };
  },
  proofs: [
    { of: 'possible', source: rolling, value: (g) => windowByRolling(g) !== undefined },
    {
      of: 'windows',
      source: rolling,
      within: (g) => 1e-8 * g.rimInsideDiameter,
      measure: { name: 'length round each window, mm', of: (windows) => windows.map(lengthOf) },
      value: (g) => {
        const window = windowByRolling(g);
        return window ? Array(g.arms).fill(lengthRound(window, g.filletRadius)) : [];
      },
    },
    { of: 'chord', formula: 'arm-chord' },
    { of: 'halfAngleAtRim', formula: 'arm-at-rim' },
    { of: 'halfAngleAtHub', formula: 'arm-at-hub' },
    { of: 'openingAtHub', formula: 'opening-at-hub' },
    {
      of: 'areaRemoved',
      source: rings,
      within: (g) => 1e-8 * g.rimInsideDiameter ** 2,
      value: (g) => windowsByRings(g)?.area ?? null,
    },
    {
      of: 'massRemovedPercent',
      source: rings,
      within: 1e-6,
      value: (g) => percent(windowsByRings(g)?.area, discArea(g)),
    },
    {
      of: 'inertiaRemovedPercent',
      source: rings,
      within: 1e-6,
      value: (g) => percent(windowsByRings(g)?.moment, discMoment(g)),
    },
  ],
  working: (g, found) => [
    'c = D*sind(180/N)',
    'A = asind(w_r/D)',
    'B = asind(w_h/d)',
    'g = d*sind(180/N - B)',
    ...(found.possible
      ? [
          { say: 'The area is that within the windows’ own lines and arcs.' },
          g.outsideDiameter === undefined ? 'M = 400*S/(pi*D^2)' : 'M = 400*S/(pi*D_o^2)',
          { say: 'For the inertia each piece of area counts by the square of its distance from the axis.' },
        ]
      : [{ say: `Not possible: ${found.reason}.` }]),
  ],
  slips: (g, found) => crossingSlips(g, found),
});

const percent = (part: number | undefined, whole: number): number | null =>
  part === undefined ? null : (100 * part) / whole;
