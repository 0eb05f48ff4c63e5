import { greatestCommonDivisor } from '../../geometry/fractions.js';
import { counted } from '../../units/words.js';

/** `Turns for one division: 40 ÷ 56 = 5/7 in lowest terms.`, `… 40/7, already in lowest terms: 5 whole turns and 5/7 of a turn.` */
export function turnsForOne(count: number, head: number): string {
  const common = greatestCommonDivisor(count, head);
  const [top, bottom] = [head / common, count / common];
  const whole = Math.floor(top / bottom);
  const start = 'Turns for one division:';
  if (bottom === 1) return `${start} ${head} ÷ ${count} = ${whole} exactly.`;
  const lowest =
    common === 1
      ? `${head}/${count}, already in lowest terms`
      : `${head} ÷ ${count} = ${top}/${bottom} in lowest terms`;
  return whole === 0
    ? `${start} ${lowest}.`
    : `${start} ${lowest}: ${counted(whole, 'whole turn')} and ${top - whole * bottom}/${bottom} of a turn.`;
}
