import { z } from 'zod';
import { pairOf, refuseFarCentres } from '../../../calculations/wheels/pair.js';
import { InputError } from '../../../diagnostics/errors.js';
import { turned } from '../../../geometry/curves/point.js';
import { meshAction } from '../../../geometry/wheels/action.js';
import { type Rolling, rolling } from '../../../geometry/wheels/rolling.js';
import { type Point, point } from '../../drafting/point.js';
import { firstThatFits, scaleName } from '../../drafting/scale.js';
import { plain } from '../../drafting/wording.js';
import { defineFigure } from '../../figure.js';
import { count, length, toothModule, word } from '../../given.js';
import { Pen } from '../../pen.js';
import { drawMesh, meshReach } from './mesh-view.js';
import { SCALES } from './teeth.js';

/** A module is drawn no larger than this, mm. */
const LARGEST = 6;

/** An angle of the wheel either side of the line of centres, in words. */
function fromLine(radians: number): string {
  const degrees = Number(Math.abs((radians * 180) / Math.PI).toFixed(1));
  return `${plain(degrees)}° ${radians < 0 ? 'before' : 'after'}`;
}

/** A wheel and pinion where a tooth first touches its leaf, on the line of centres, and where it last does. */
export const meshPositions = defineFigure({
  name: 'mesh-positions',
  title: 'A tooth entering, on the line of centres, and leaving',
  given: z
    .strictObject({
      teeth: count(20, 160),
      leaves: count(6, 24),
      module: toothModule(),
      centreDistance: length(0.5, 500).optional(),
      addendum: word('practical', 'theoretical').default('practical'),
    })
    .refine((g) => g.leaves <= g.teeth, {
      path: ['leaves'],
      message: 'at most as many as the wheel has teeth',
    }),
  draw(given, style) {
    const { teeth, leaves, module } = given;
    refuseFarCentres('centreDistance', given, given.centreDistance);
    const pair = pairOf(given, given.centreDistance ?? (module * (teeth + leaves)) / 2);
    const system = rolling(pair);
    const action = meshAction(system, 1);
    if (!action)
      throw new InputError('centreDistance', given.centreDistance, 'centres at which the teeth reach');
    const inside = 0.01 * system.wheelPitch;
    const positions = [
      { wheel: action.first + inside, words: ['entering', fromLine(action.first)] },
      { wheel: 0, words: ['on the line', 'of centres'] },
      { wheel: action.last - inside, words: ['leaving', fromLine(action.last)] },
    ];
    const label =
      `A wheel of ${teeth} teeth driving a pinion of ${leaves} leaves, module ${plain(module)}: a tooth where it first touches ` +
      `its leaf, ${fromLine(action.first)} the line of centres, on that line, and where it lets go, ` +
      `${fromLine(action.last)} it, angles of the wheel; a dot marks where they touch.`;
    const scales = SCALES.filter((scale) => scale <= 0.1 || module * scale <= LARGEST);
    return firstThatFits(scales, style, (scale) => {
      const size = module * scale;
      if (size < 1.4) return undefined;
      const pen = new Pen(style);
      const reach = meshReach(pair, size);
      const widest = Math.max(...positions.map(({ words }) => pen.textSize(words).width));
      const apart = Math.max(2 * reach.side + 4, widest + 4);
      positions.forEach(({ wheel, words }, i) => {
        const at = point(i * apart, 0);
        const stands = system.drive(wheel)?.pinion ?? 0;
        drawMesh(pen, { pair, wheel, pinion: stands }, at, size);
        pen.line('centre', point(at.x, reach.down + 1), point(at.x, -reach.up - 3));
        markTouch(pen, system, wheel, at, size);
        pen.text(words, point(at.x, reach.down + 1 + 0.6 * style.labelSize), { sit: 'below' });
      });
      return pen.finish(label, scaleName(scale));
    });
  },
});

/** A ringed dot where the tooth touches its leaf. */
function markTouch(pen: Pen, { touch, pair }: Rolling, wheel: number, at: Point, size: number): void {
  const found = touch(wheel);
  if (!found) return;
  const { x, y } = turned(found.onTooth, wheel);
  const place = point(at.x + y * size, at.y + (pair.teeth / 2 - x) * size);
  pen.circle('dimension', place, 0.65, 'ink');
  pen.circle('dimension', place, 1.5);
}
