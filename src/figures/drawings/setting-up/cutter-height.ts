import { z } from 'zod';
import { heightAtTouch } from '../../../geometry/setting-up/centring.js';
import { breakLine } from '../../drafting/break-line.js';
import { isClear } from '../../drafting/clear.js';
import { heightDimension } from '../../drafting/dimension.js';
import { hatch } from '../../drafting/hatch.js';
import { legend } from '../../drafting/legend.js';
import { point } from '../../drafting/point.js';
import { ENLARGEMENTS, firstThatFits, REDUCTIONS } from '../../drafting/scale.js';
import { length as inWords } from '../../drafting/wording.js';
import { defineFigure } from '../../figure.js';
import { length } from '../../given.js';
import { Pen } from '../../pen.js';

/** Least and most that a cutter is thick on the paper, mm, at the smallest lettering. */
const THICK = { least: 7, most: 24 } as const;

/** A round cutter brought under a gauge that stands at its upper face's height. */
export const cutterHeight = defineFigure({
  name: 'cutter-height',
  title: 'Setting the cutter by a gauge',
  given: z.strictObject({
    centreHeight: length(1, 1000),
    cutterThickness: length(0.15, 100),
    feeler: length(0, 2).default(0),
  }),
  draw({ centreHeight, cutterThickness, feeler }, style) {
    const { gauge } = heightAtTouch(centreHeight, cutterThickness, feeler);
    const mm = (value: number): string => inWords(value, style, 3);
    const nipped = feeler > 0 ? `, a feeler of ${mm(feeler)} nipped between them` : '';
    const label =
      `A cutter ${mm(cutterThickness)} thick under a gauge that stands ${mm(gauge)} above the table: ` +
      `the height of the centres, ${mm(centreHeight)}, and half the cutter${nipped}.`;
    const scales = [...ENLARGEMENTS, ...REDUCTIONS.slice(1)].toReversed().filter((scale) => {
      const drawn = cutterThickness * scale;
      return drawn >= Math.max(THICK.least, 2.2 * style.labelSize) && drawn <= 2 * THICK.most;
    });
    return firstThatFits(scales, style, (scale) => {
      const pen = new Pen(style);
      drawSetting(pen, cutterThickness * scale, Math.max(feeler * scale, feeler > 0 ? 0.8 : 0));
      if (!isClear(pen)) return undefined;
      legend(pen, point(pen.extent.left, pen.extent.bottom + style.labelSize), [
        { letter: 'H', meaning: 'height of the centres', value: mm(centreHeight) },
        { letter: 't', meaning: 'thickness of the cutter', value: mm(cutterThickness) },
        { letter: 'G', meaning: 'gauge, H + t/2', value: mm(gauge) },
        ...(feeler > 0 ? [{ letter: 'f', meaning: 'feeler, to be taken out', value: mm(feeler) }] : []),
      ]);
      const enlarged = scale >= 1 ? `${scale} : 1` : `1 : ${Math.round(1 / scale)}`;
      return pen.finish(label, `thickness ${enlarged}`);
    });
  },
});

/** The work's axis stands at the origin, seen on its end; the cutter to its right, seen on its edge. */
function drawSetting(pen: Pen, thickness: number, feeler: number): void {
  const size = pen.style.labelSize;
  const gauge = -thickness / 2;
  const work = Math.max(11, 2.4 * size);
  const [left, right] = [work + 1.5, work + 1.5 + 34];
  const [upper, lower] = [gauge + feeler, gauge + feeler + thickness];
  const table = Math.max(work + 8, lower + 12 + 2 * size);
  const letters = right + 3.5 * size + 6;
  const pillar = { left: letters, right: letters + 8 };

  pen.circle('outline', point(0, 0), work);
  pen.line('centre', point(-work - 3, 0), point(work + 1, 0));
  pen.line('centre', point(0, -work - 3), point(0, work + 3));
  pen.rectangle('outline', { left, right, top: upper, bottom: lower });
  // The spindle stands on the cutter and goes on beyond the drawing.
  const spindle = { left: left + 7, right: left + 16, top: upper - Math.max(12, 2.5 * size) };
  pen.line('outline', point(spindle.left, upper), point(spindle.left, spindle.top));
  pen.line('outline', point(spindle.right, upper), point(spindle.right, spindle.top));
  breakLine(pen, point(spindle.left, spindle.top), point(spindle.right, spindle.top));
  pen.line(
    'centre',
    point((left + spindle.right - 1) / 2 + 4, spindle.top - 3),
    point((left + spindle.right - 1) / 2 + 4, lower + 3),
  );

  // The gauge's jaw reaches over the cutter; its pillar stands on the table, broken short.
  const jaw = gauge - 4;
  const middle = (lower + table) / 2;
  pen.line(
    'outline',
    point(pillar.left, gauge),
    point(right - 9, gauge),
    point(right - 9, jaw),
    point(pillar.right, jaw),
  );
  for (const [from, to] of [
    [gauge, middle - 1.2],
    [middle + 1.2, table],
  ] as const) {
    pen.line('outline', point(pillar.left, from), point(pillar.left, to));
    pen.line('outline', point(pillar.right, from === gauge ? jaw : from), point(pillar.right, to));
  }
  for (const y of [middle - 1.2, middle + 1.2]) breakLine(pen, point(pillar.left, y), point(pillar.right, y));
  if (feeler > 0)
    pen.rectangle('fine', { left: right - 8, right: right + 2, top: gauge, bottom: upper }, 'ink');

  const ends = { left: -work - 3, right: pillar.right + 4 };
  hatch(
    pen,
    [
      [
        point(ends.left, table),
        point(ends.right, table),
        point(ends.right, table + 3),
        point(ends.left, table + 3),
      ],
    ],
    { spacing: 1.6 },
  );
  pen.line('outline', point(ends.left, table), point(ends.right, table));

  pen.text('work', point(-work - 1, -work), { anchor: 'end', sit: 'above' });
  pen.text('cutter', point(right, lower + 0.4 * size), { anchor: 'end', sit: 'below' });
  pen.text('gauge', point(pillar.right, jaw - 0.5 * size), { anchor: 'end', sit: 'above' });
  pen.text('table', point((ends.left + ends.right) / 2, table + 3 + 0.4 * size), { sit: 'below' });
  heightDimension(pen, {
    from: point(-work - 3, 0),
    to: point(-work - 3, table),
    x: -work - 3 - Math.max(4, size),
    label: 'H',
    side: 'left',
  });
  heightDimension(pen, {
    from: point(right, upper),
    to: point(right, lower),
    x: right + 3.5,
    label: 't',
    side: 'right',
  });
  heightDimension(pen, {
    from: point(pillar.right, gauge),
    to: point(ends.right, table),
    x: ends.right + Math.max(4, size),
    label: 'G',
    side: 'right',
  });
}
