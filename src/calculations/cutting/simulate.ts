import { throughPoints } from '../../geometry/curves/path.js';
import { svgPath } from '../../geometry/curves/svg-path.js';
import { fewerPoints } from '../../geometry/cutting/simulate.js';
import { metalLeft } from '../../handbook/cutting/metal.js';
import { derived } from '../../handbook/record.js';
import { calculation } from '../calculation.js';
import { mm } from '../found.js';
import { remembered } from '../remembered.js';
import { type Given, given } from './given.js';
import { cut, jobFor } from './job.js';
import { areaDrawn } from './outline-area.js';
import { expectedFor, faultsFor, refuse, settingFor } from './setting.js';
import { faultsNamed, verdictOf } from './verdict.js';

/** Two chords' straying of the metal that is measured, and the grid; found to hold over the whole range. */
const tight = (g: Given): number => 1.5e-3 * g.module;

/** A land ends where a wall meets the rim aslant: a chord's straying moves that end further. */
const aslant = (g: Given): number => 8e-3 * g.module;

/** What is left, by the handbook's rings; the outline and the area are both held against it. */
const ringByRing = remembered((g: Given): number => metalLeft(settingFor(g)));

/** Of the ring between rim and root, what its area may be out by. */
const ring = (g: Given): number => {
  const { blankRadius, tipAt } = jobFor(g);
  return 0.006 * Math.PI * (blankRadius ** 2 - tipAt ** 2);
};

const onThePitchCircle = derived('cuts laid off round the pitch circle, each as wide as the space there');
const onTheRim = derived('where the walls of the cuts meet the blank’s edge, by halving');

/** The outline is given with no more points than keep this near the metal, in modules. */
const SHOWN = 0.005;

export const simulate = calculation({
  name: 'cut.simulate',
  title: 'A wheel cut tooth by tooth, and what its teeth show',
  given,
  found: {
    outline: { unit: 'mm', name: 'outline of the wheel, an SVG path, first cut at the top' },
    toothThicknesses: {
      unit: 'mm',
      name: 'thickness of each tooth along the pitch circle, anticlockwise; 0 where it is gone',
    },
    lastTooth: mm('s_l', 'thickness of the closing tooth'),
    spaceWidth: { unit: 'mm', name: 'width of a space along the pitch circle' },
    teethStanding: { unit: '', name: 'teeth that are left standing' },
    leastLand: { unit: 'mm', name: 'narrowest tip' },
    greatestLand: { unit: 'mm', name: 'broadest tip' },
    move: { symbol: 'A', unit: '°', name: 'angle of one move' },
    leftOver: { symbol: 'C', unit: '°', name: 'angle left over after as many moves as cuts' },
    lean: { unit: '°', name: 'lean of the teeth from the radius, anticlockwise above 0' },
    metal: { unit: 'mm²', name: 'area of metal left' },
    verdict: { unit: '', name: 'what the wheel shows' },
  },
  refuse,
  work: (g: Given) => {
    const { outlines, measured, diagnosis } = cut(g);
    const { toothThicknesses, lands, spaceWidths } = measured;
    const standing = toothThicknesses.filter((thickness) => thickness > tight(g));
    return {
      outline: fewerPoints(outlines, SHOWN * g.module)
        .map((outline) => svgPath(throughPoints([...outline, ...outline.slice(0, 1)])))
        .join(''),
      toothThicknesses,
      lastTooth: toothThicknesses.at(-1) ?? 0,
      spaceWidth: Math.min(...spaceWidths),
      teethStanding: standing.length,
      leastLand: Math.min(...lands),
      greatestLand: Math.max(...lands),
      move: 360 / g.teeth + g.stepErrorArcSeconds / 3600,
      leftOver: 360 - (g.steps ?? g.teeth) * (360 / g.teeth + g.stepErrorArcSeconds / 3600),
      lean: measured.lean,
      metal: measured.area,
      verdict: verdictOf(diagnosis.faults),
    };
  },
  proofs: [
    {
      of: 'outline',
      source: derived('metal left, ring by ring'),
      value: ringByRing,
      within: ring,
      measure: { name: 'area enclosed, mm²', of: (outline: string) => areaDrawn(outline) },
    },
    {
      of: 'toothThicknesses',
      source: onThePitchCircle,
      value: (g) => expectedFor(g).toothThicknesses,
      within: tight,
    },
    {
      of: 'lastTooth',
      source: onThePitchCircle,
      value: (g) => expectedFor(g).toothThicknesses.at(-1),
      within: tight,
    },
    { of: 'spaceWidth', source: onThePitchCircle, value: (g) => expectedFor(g).spaceWidth, within: tight },
    {
      of: 'teethStanding',
      source: derived('teeth thicker than nothing; any so thin that the metal cannot tell count half'),
      value: (g) => standing(expectedFor(g).toothThicknesses, tight(g)),
      within: (g) => open(expectedFor(g).toothThicknesses, tight(g)),
    },
    { of: 'leastLand', source: onTheRim, value: (g) => Math.min(...expectedFor(g).lands), within: aslant },
    { of: 'greatestLand', source: onTheRim, value: (g) => Math.max(...expectedFor(g).lands), within: aslant },
    {
      of: 'move',
      source: derived('in arc seconds, a turn shared between the teeth'),
      value: (g) => (1_296_000 / g.teeth + g.stepErrorArcSeconds) / 3600,
      within: 1e-9,
    },
    {
      of: 'leftOver',
      source: derived('moves taken one by one from the turn'),
      value: (g) => {
        let left = 1_296_000;
        for (let cut = 0; cut < (g.steps ?? g.teeth); cut++)
          left -= 1_296_000 / g.teeth + g.stepErrorArcSeconds;
        return left / 3600;
      },
      within: 1e-8,
    },
    {
      of: 'lean',
      source: derived('arc sine of the offset over the pitch radius'),
      value: (g) => (Math.asin(g.offset / ((g.module * g.teeth) / 2)) * 180) / Math.PI,
      within: 1e-3,
    },
    {
      of: 'metal',
      source: derived('metal left, ring by ring'),
      value: ringByRing,
      within: ring,
    },
    {
      of: 'verdict',
      source: derived('faults from the moves and settings themselves, against the same limits'),
      value: faultsFor,
      within: 0.5,
      measure: {
        name: 'faults named, 1 or 0; ½ where the limit or a lost tooth leaves it open',
        of: (verdict: string) => faultsNamed(verdict),
      },
    },
  ],
  working: (g) => [
    {
      say: 'The cutter’s form is taken from the blank at every place the head stops at, and what is left is measured round the pitch circle.',
    },
    'p = pi*m',
    'A = 360/z + E/3600',
    {
      say: 'That is the move. The dividing sets how far apart the teeth stand; the cutter sets how wide the spaces are.',
    },
    g.steps === undefined ? 'C = 360 - z*A' : 'C = 360 - N*A',
    {
      say: 'So many degrees are left over at the closing tooth; below 0 it is robbed of them. A slip that is kept is taken from it too.',
    },
    ...(g.offset === 0 ? [] : ['L = asind(2*e/(m*z))']),
  ],
  slips: (g) =>
    g.stepErrorArcSeconds === 0
      ? {}
      : {
          once: {
            of: 'lastTooth',
            formula: 'pi*m/2 - E/3600*pi*m*z/360',
            says: 'You counted the error once. It gathers: the closing tooth carries that of every move.',
          },
          none: {
            of: 'lastTooth',
            formula: 'pi*m/2',
            says: 'That is a tooth with nothing wrong. The error of every move ends up in the last one.',
          },
        },
});

const standing = (thicknesses: readonly number[], least: number): number =>
  thicknesses.reduce((sum, one) => sum + (one > 2 * least ? 1 : one > 0 ? 0.5 : 0), 0);

const open = (thicknesses: readonly number[], least: number): number =>
  thicknesses.filter((one) => one > 0 && one <= 2 * least).length / 2;
