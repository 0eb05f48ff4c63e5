/** Ways to write an angle that is printed in degrees and minutes, or seconds too: with other marks, none, or decimals. */
export function angleWays(text: string, to: 'minute' | 'second'): string[] {
  const {
    sign = '',
    degrees = '',
    minutes = '',
    seconds,
  } = /^(?<sign>-?)(?<degrees>\d+)° (?<minutes>\d+)′(?: (?<seconds>\d+)″)?$/.exec(text)?.groups ?? {};
  if (degrees === '') throw new Error(`${text} is no angle`);
  const parts = [degrees, minutes, ...(seconds === undefined ? [] : [seconds])];
  const marked = (marks: readonly string[], between = ''): string =>
    sign + parts.map((part, at) => part + (marks[at] ?? '')).join(between);
  const value = Number(degrees) + Number(minutes) / 60 + Number(seconds ?? 0) / 3600;
  const decimal = sign + value.toFixed(6);
  const ways = [
    marked(['°', '′', '″']),
    marked(['°', "'", '"']),
    marked(['°', '’', '”'], ' '),
    marked(['º', "'", "''"]),
    marked(['d', 'm', 's']),
    marked([' deg', ' min', ' sec'], ' '),
    marked([' degrees', ' minutes', ' seconds'], ', '),
    marked([], ' '),
    marked([], ':'),
    marked([], '-'),
    `A = ${marked(['°', '′', '″'], ' ')}`,
    `${decimal}°`,
    `${decimal} degrees`,
    decimal.replace('.', ','),
    `${decimal.replace('.', ',')}°`,
  ];
  if (to === 'minute') ways.push(`${sign}${Number(degrees) * 60 + Number(minutes)}′`);
  return ways;
}

/** Degrees in decimals told in degrees and minutes, where that comes out even. */
export function inMinutes(degrees: number): string[] {
  const minutes = Number((degrees * 60).toFixed(6));
  if (!Number.isInteger(minutes) || minutes < 0) return [];
  const [whole, rest] = [Math.floor(minutes / 60), minutes % 60];
  return [
    `${whole}° ${rest}′`,
    `${whole}°${rest}'`,
    `${whole}d${rest}m`,
    `${whole} deg ${rest} min`,
    `${minutes}′`,
  ];
}
