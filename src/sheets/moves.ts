import { counted, listInWords } from './words.js';

/** What `dividing.simple` finds. */
export interface Moves {
  readonly possible: boolean;
  readonly turns: number;
  readonly settings: readonly { readonly holes: number; readonly circle: number }[];
  readonly reason?: string;
}

/** The crank's movement for one division: every circle that serves, or why none does. */
export function movesInWords({ possible, turns, settings, reason }: Moves): string {
  if (!possible) return `not possible: ${reason ?? 'no circle serves'}`;
  const whole = counted(turns, 'whole turn');
  if (settings.every(({ holes }) => holes === 0)) return `${whole} and no spaces, on any circle`;
  const [first, ...others] = settings.map(
    ({ holes, circle }, place) =>
      `${place === 0 ? counted(holes, 'space') : holes} on the ${circle}${place === 0 ? '-hole circle' : ''}`,
  );
  const spaces = listInWords([first ?? '', ...others]).replace(/ and (?=[^,]*$)/, ' or ');
  return turns === 0 ? spaces : `${whole} and ${spaces}`;
}
