import { InputError } from '../diagnostics/errors.js';
import { drawFigure } from '../figures/index.js';
import type { Fail } from './fill.js';
import type { SheetStyle } from './model.js';
import type { Numbered } from './numbering.js';
import { settingOf } from './setting.js';
import { render } from './templates.js';

/**
 * A figure with its caption and the scale it is drawn to.
 *
 * @param numbered its number, and where what refers to it leads; none for a figure that nothing refers to
 * @param given as the text has it, with its `caption`
 * @param inset how far it stands in from the left of the text, in ems of the text
 */
export function figureBlock(
  name: string,
  { caption = '', ...given }: Record<string, unknown>,
  {
    numbered,
    style,
    fail,
    inset = 0,
  }: {
    readonly numbered?: Numbered;
    readonly style: SheetStyle;
    readonly fail: Fail;
    readonly inset?: number;
  },
): string {
  const setting = settingOf(style);
  const maxWidth = setting.maxWidth - inset * setting.textSize;
  try {
    const { svg, height, scale } = drawFigure(name, given, { ...setting, maxWidth });
    if (height > setting.maxHeight)
      return fail(
        `this figure is ${Math.ceil(height)} mm high, and the page has room for ${setting.maxHeight} mm`,
        'Draw something smaller, or a part of it.',
        'figure',
      );
    return render('figure', {
      svg,
      number: numbered?.number ?? '',
      anchor: numbered?.anchor ?? '',
      caption: stopped(String(caption)),
      scale: scale === 'true scale' ? 'True scale' : sentence(scale),
    });
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return fail(error.message, 'Change the values given to the figure.', 'figure');
  }
}

/** A scale as a sentence says it; `20 : 1` never breaks over two lines. */
const sentence = (scale: string): string => {
  const whole = scale.replaceAll(/ (?=: )|(?<= :) /g, '\u00A0');
  return /^\d/.test(whole) ? `Scale ${whole}` : whole.replace(/^./, (c) => c.toUpperCase());
};

/** A caption with its full stop, since the scale follows. */
const stopped = (caption: string): string =>
  caption === '' || /[.!?]$/.test(caption) ? caption : `${caption}.`;
