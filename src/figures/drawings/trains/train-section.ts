import { notesAt } from '../../drafting/leader.js';
import { point } from '../../drafting/point.js';
import { firstThatFits, scaleName } from '../../drafting/scale.js';
import { plain } from '../../drafting/wording.js';
import { defineFigure } from '../../figure.js';
import { Pen } from '../../pen.js';
import { arborsInARow, reachOf, trainGiven, trainInWords } from './arbors.js';
import { drawBox, drawClimb, drawPlates, HEIGHT } from './side-view.js';

const SCALES = [5, 2, 1, 0.5, 0.2, 0.1] as const;
const WIDEST = 110;

/** A train from the side between its plates: arbors upright, each pair on its own level, and the way the drive goes. */
export const trainSection = defineFigure({
  name: 'train-section',
  title: 'A train from the side',
  given: trainGiven,
  draw(given, style) {
    const label = `A train from the side, module ${plain(given.module)}, between its plates: ${trainInWords(given)}.`;
    const [least, most] = reachOf(arborsInARow(given, 1));
    const scales = SCALES.filter((scale) => scale <= 0.1 || (most - least) * scale <= WIDEST);
    return firstThatFits(scales, style, (scale) => {
      const pen = new Pen(style);
      const arbors = arborsInARow(given, scale);
      const [left, right] = reachOf(arbors);
      const step = Math.max(HEIGHT.step, 2.4 * style.labelSize);
      // The first pair lowest, as the drive climbs; y runs down.
      const levelOf = (stage: number): number => -HEIGHT.room - HEIGHT.pinion / 2 - stage * step;
      const top = levelOf(arbors.length - 1) - HEIGHT.room + (arbors.at(-1)?.wheel ? 0 : step / 2);
      drawPlates(pen, left - 4, right + 4, top);
      for (const [i, arbor] of arbors.entries()) {
        pen.line('outline', point(arbor.x, 0), point(arbor.x, top));
        if (arbor.pinion) drawBox(pen, arbor.x, levelOf(i - 1), arbor.pinion, HEIGHT.pinion);
        if (arbor.wheel) drawBox(pen, arbor.x, levelOf(i), arbor.wheel, HEIGHT.wheel);
        if (arbor.pinion && arbor.wheel) drawClimb(pen, arbor, levelOf(i - 1), levelOf(i));
      }
      const notes = arbors.flatMap(({ x, pinion }, i) => {
        const wheel = arbors[i - 1]?.wheel;
        if (!pinion || !wheel) return [];
        return [
          { text: `${wheel.name} drives ${pinion.name}`, tip: point(x + pinion.radius, levelOf(i - 1)) },
        ];
      });
      const last = arbors.at(-1);
      if (last?.wheel)
        notes.push({
          text: last.wheel.name,
          tip: point(last.x + last.wheel.radius, levelOf(arbors.length - 1)),
        });
      notesAt(pen, right + 4 + Math.max(5, 2 * style.labelSize), notes.reverse());
      return pen.finish(label, `${scaleName(scale)} across the arbors`);
    });
  },
});
