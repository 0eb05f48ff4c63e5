import { z } from 'zod';
import type { Given } from '../../../calculations/cutting/given.js';
import { type CutWheel, cut } from '../../../calculations/cutting/job.js';
import { InputError } from '../../../diagnostics/errors.js';
import { fewerPoints } from '../../../geometry/cutting/simulate.js';
import { counted, listInWords } from '../../../units/words.js';
import { arrowhead, arrowLength } from '../../drafting/arrow.js';
import { point } from '../../drafting/point.js';
import { firstThatFits, scaleName } from '../../drafting/scale.js';
import { length, plain } from '../../drafting/wording.js';
import { wrapped } from '../../drafting/wrap.js';
import { defineFigure } from '../../figure.js';
import { count, toothModule } from '../../given.js';
import { Pen } from '../../pen.js';
import { type FaultWord, faultWords, shownFaults } from './faults.js';
import { traceWheel } from './wheel-trace.js';

/** Wider than this one wheel says no more, mm. */
const WIDEST = 62;

/** On paper an outline may stand off its points so far, mm. */
const FINE = 0.02;

const words = (value: unknown): unknown =>
  typeof value === 'string' ? value.split(',').map((one) => one.trim()) : value;

/** Small wheels cut wrong in several ways, side by side, each captioned with what was measured on it. */
export const simulatedWheels = defineFigure({
  name: 'simulated-wheels',
  title: 'Wheels cut wrong, and how they show it',
  given: z.strictObject({
    teeth: count(8, 60),
    leaves: count(5, 60),
    module: toothModule(),
    faults: z
      .preprocess(words, z.array(z.enum(faultWords)).min(1).max(8))
      .describe(`a list of at most 8 of ${faultWords.join(', ')}`),
  }),
  draw(given, style) {
    if (given.leaves > given.teeth)
      throw new InputError('leaves', given.leaves, `at most as many as the wheel has teeth, ${given.teeth}`);
    const wheels = given.faults.map((fault) => cutWrong(given, fault));
    const captions = wheels.map(({ caption }) => caption);
    const label = `Wheels of ${given.teeth} teeth, module ${plain(given.module)}, as they come out: ${listInWords(captions)}.`;
    const largest = Math.max(...wheels.map(({ reach }) => 2 * reach));
    return firstThatFits(arrangements(wheels.length, largest), style, ({ scale, across }) => {
      const pen = new Pen(style);
      for (let row = 0; row < wheels.length; row += across)
        if (!drawRow(pen, wheels.slice(row, row + across), scale, largest * scale)) return undefined;
      const note =
        'The arrow marks the first cut. The cuts go round to the left, so the closing tooth stands to the right of it.';
      const { left, right, bottom } = pen.extent;
      pen.text(wrapped(pen, note, Math.max(right - left, 60)), point(left, bottom + 0.7 * style.labelSize), {
        anchor: 'start',
        sit: 'below',
      });
      return pen.finish(label, scaleName(scale));
    });
  },
});

interface WrongWheel extends CutWheel {
  readonly caption: string;
  /** Furthest place from the axis, mm. */
  readonly reach: number;
}

function cutWrong(size: { teeth: number; leaves: number; module: number }, fault: FaultWord): WrongWheel {
  const shown = shownFaults[fault];
  const right: Given = {
    ...size,
    stepErrorArcSeconds: 0,
    slipPutBack: 'no',
    offset: 0,
    depthError: 0,
    eccentricity: 0,
    depthForm: '2.95',
  };
  const wheel = cut({ ...right, ...shown.of(size) });
  const reach = Math.max(...wheel.outlines.flat().map(({ x, y }) => Math.hypot(x, y)));
  return { ...wheel, caption: shown.caption, reach };
}

/** As many in a row and as large as may be: three, two, then one. */
function arrangements(wheels: number, largest: number): { scale: number; across: number }[] {
  const scales = [20, 10, 5, 2, 1, 0.5, 0.2, 0.1].filter((scale) => largest * scale <= WIDEST);
  return scales.flatMap((scale) =>
    [4, 3, 2, 1].filter((across) => across <= Math.max(1, wheels)).map((across) => ({ scale, across })),
  );
}

/** A row of wheels, each as wide as the widest and its caption within that; nothing where a caption has no room. */
function drawRow(pen: Pen, wheels: readonly WrongWheel[], scale: number, width: number): boolean {
  const size = pen.style.labelSize;
  const drawn = pen.marks.ink.length > 0;
  const arrow = arrowLength(pen);
  const column = Math.max(width, 11 * size);
  const top = drawn ? pen.extent.bottom + 1.2 * size : 0;
  const middle = top + arrow + 1 + width / 2;
  for (const [i, wheel] of wheels.entries()) {
    const about = point(i * (column + 1.2 * size) + column / 2, middle);
    pen.stroke('fine', (trace) => traceWheel(trace, fewerPoints(wheel.outlines, FINE / scale), about, scale));
    pen.line('centre', point(about.x - 2.5, about.y), point(about.x + 2.5, about.y));
    pen.line('centre', point(about.x, about.y - 2.5), point(about.x, about.y + 2.5));
    const first = point(about.x, middle - wheel.reach * scale - 0.6);
    arrowhead(pen, first, point(first.x, first.y - arrow));
    const name = pen.text(wheel.caption, point(about.x, middle + width / 2 + 0.5 * size), {
      sit: 'below',
      weight: 600,
    });
    const told = measured(wheel, pen).flatMap((line) => wrapped(pen, line, column));
    const { right, left } = pen.text(told, point(about.x, name.bottom + 0.1 * size), { sit: 'below' });
    if (Math.max(right - left, name.right - name.left) > column + size) return false;
  }
  return true;
}

/** What the teeth of a wheel are like, in a line or two. */
function measured({ measured: wheel }: CutWheel, pen: Pen): string[] {
  const mm = (value: number): string => length(value, pen.style);
  const teeth = wheel.toothThicknesses;
  const sorted = [...teeth].sort((a, b) => a - b);
  const most = sorted[Math.floor(sorted.length / 2)] ?? 0;
  const odd = teeth.filter((tooth) => mm(tooth) !== mm(most));
  const rest = `${odd.length === 0 ? 'all' : 'most'} teeth ${mm(most)}`;
  const unlike = [...new Set(odd.map(mm))];
  const named = odd.length === 1 ? 'one' : odd.length <= 3 ? 'others' : counted(odd.length, 'tooth', 'teeth');
  const others = odd.length === 0 ? [] : [`${named} ${unlike.slice(0, 3).join(', ')}`];
  const lean = Math.abs(wheel.lean) >= 0.1 ? [`lean ${wheel.lean.toFixed(1)}°`] : [];
  const [least, greatest] = [Math.min(...wheel.lands), Math.max(...wheel.lands)];
  const tips = wheel.runOut > 0.02 ? [`tips ${mm(least)} to ${mm(greatest)}`] : [];
  return [rest, ...others, ...lean, ...tips];
}
