// Measures the core, in one process: dividing for every count, trains, the cut simulation, outlines.

import { compoundSettings } from '../../dist/geometry/dividing/compound.js';
import { differentialSettings } from '../../dist/geometry/dividing/differential.js';
import { prepareGears } from '../../dist/geometry/dividing/gears.js';
import { simpleIndexing } from '../../dist/geometry/dividing/indexing.js';
import { nearestSettings } from '../../dist/geometry/dividing/nearest.js';
import { fraction } from '../../dist/geometry/fractions.js';
import { involuteOutline } from '../../dist/geometry/involute/outline.js';
import { theoreticalAddendum } from '../../dist/geometry/wheels/epicycloid.js';
import { wheelOutline } from '../../dist/geometry/wheels/wheel-outline.js';
import { work } from '../../dist/index.js';
import { openKits } from '../../dist/kit/open.js';

const KITS = ['lessons/kits/harrow-lane.yaml', 'lessons/kits/mill-yard.yaml'];
const GEARS = [24, 24, 28, 32, 40, 44, 48, 56, 64, 72, 86, 100];

/** Milliseconds that something takes. */
function took(task) {
  const start = performance.now();
  task();
  return performance.now() - start;
}

/** The middle of several runs, after one that is not counted. */
function usual(task, runs = 9) {
  task();
  const times = Array.from({ length: runs }, () => took(task)).sort((a, b) => a - b);
  return times[runs >> 1];
}

/** Every way of dividing, for every count from 2 to 1,000, on a head. */
function sweep({ ratio, plates, gears = GEARS }) {
  const set = prepareGears(gears);
  const circles = [...new Set(plates.flat())];
  for (let count = 2; count <= 1000; count++) {
    simpleIndexing(count, ratio, circles);
    compoundSettings(fraction(ratio, count), plates, 100);
    differentialSettings(count, ratio, circles, set, 100);
    nearestSettings(count, ratio, circles, 50);
  }
}

/** The same through the door, with the second route and the working. */
function sweepWithProofs({ ratio, plates, gears = GEARS }) {
  const circles = [...new Set(plates.flat())];
  for (let divisions = 2; divisions <= 1000; divisions++) {
    work('dividing.simple', { divisions, ratio, circles });
    work('dividing.compound', { divisions, ratio, plates });
    work('dividing.differential', { divisions, ratio, circles, gears });
    work('dividing.nearest', { divisions, ratio, circles, diameter: 50 });
  }
}

/** A wheel's outline, cut off at the practical addendum. */
function cycloidalWheel() {
  const addendum = 0.95 * theoreticalAddendum(120, 8);
  wheelOutline({ teeth: 120, leaves: 8, module: 0.8, addendum, dedendum: 1.57 });
}

/** What the core takes, as lines to print. */
export function core() {
  const kits = openKits(KITS);
  const heads = kits.flatMap(({ heads }) => heads);
  const lines = [];
  const line = (what, ms) => lines.push(`  ${what.padEnd(58)} ${ms.toFixed(ms < 10 ? 1 : 0)} ms`);
  for (const head of heads) {
    const every = usual(() => sweep(head), 3);
    line(`dividing, 2 to 1000, every way, ${head.name}`, every);
    const proven = usual(() => sweepWithProofs(head), 3);
    line('  the same with proofs and working', proven);
  }
  const trains = usual(() => work('train.find', { ratio: 720, stages: 3 }));
  line('train.find, three stages, leaves 6 to 16, teeth 24 to 120', trains);
  const cut = usual(() => work('cut.simulate', { teeth: 120, leaves: 8, module: 0.8 }));
  line('cut.simulate, a wheel of 120 teeth, with proofs', cut);
  line('cycloidal outline, 120 teeth', usual(cycloidalWheel));
  const involute = usual(() => involuteOutline(120, 0.8, Math.PI / 9));
  line('involute outline, 120 teeth', involute);
  return lines.join('\n');
}
