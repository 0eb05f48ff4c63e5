/** A decimal in figures, `-0.50`, written otherwise: comma, noughts put on or left off, sign, and as a fraction. */
export function decimalWays(figures: string): string[] {
  const point = figures.includes('.') ? figures : `${figures}.`;
  const ways = [
    figures,
    figures.replace('.', ','),
    `${point}0`,
    `${point}0`.replace('.', ','),
    figures.includes('.') ? figures.replace(/\.?0+$/, '') : figures,
    figures.replace(/^(-?)0\./, '$1.'),
    figures.replace('.', '·'),
    figures.replace('-', '−'),
  ];
  if (!figures.startsWith('-')) ways.push(`+${figures}`, ...inTenths(figures), ...grouped(figures));
  return [...new Set(ways)];
}

/** `50.21` is 50 21/100. */
function inTenths(figures: string): string[] {
  const [whole = '', places = ''] = figures.split('.');
  if (Number(places) === 0) return [];
  const part = `${Number(places)}/1${'0'.repeat(places.length)}`;
  return Number(whole) === 0 ? [part] : [`${whole} ${part}`, `${whole}-${part}`];
}

/** `1680` is 1,680 and 1 680. */
const grouped = (figures: string): string[] =>
  /^\d{4,6}$/.test(figures) ? [',', ' ', '\u202F'].map((mark) => figures.replace(/(?=\d{3}$)/, mark)) : [];

/** A size in inches that is a whole number of sixty-fourths: `1.8125` is 1 13/16. */
export function ruleWays(figures: string): string[] {
  let [top, bottom] = [Number(figures) * 64, 64];
  if (!Number.isInteger(top) || top <= 0 || top % 64 === 0) return [];
  while (top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  const whole = Math.floor(top / bottom);
  const part = `${top % bottom}/${bottom}`;
  return whole === 0
    ? [part]
    : [`${whole} ${part}`, `${whole}-${part}`, `${whole} and ${part}`, `${top}/${bottom}`];
}

const SMALL =
  'nought one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );
const TENS = 'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');

/** A whole number under a hundred in words. */
export function spelt(figures: string): string[] {
  const count = Number(figures);
  if (!/^\d{1,2}$/.test(figures)) return [];
  const small = SMALL[count];
  if (small !== undefined) return [small];
  const ten = TENS[Math.floor(count / 10) - 2] ?? '';
  return count % 10 === 0 ? [ten] : [`${ten}-${SMALL[count % 10]}`, `${ten} ${SMALL[count % 10]}`];
}
