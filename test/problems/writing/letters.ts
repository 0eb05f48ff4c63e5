/** Ways to write one letter. */
export const letterWays = (letter: string): string[] => [
  letter,
  letter.toLowerCase(),
  `(${letter.toLowerCase()})`,
  `${letter})`,
  `${letter}.`,
  `[${letter}]`,
  `option ${letter}`,
  `Answer: ${letter.toLowerCase()}`,
  `it is ${letter}`,
];

/** Ways to write letters in an order. */
export function orderWays(letters: readonly string[]): string[] {
  const small = letters.map((letter) => letter.toLowerCase());
  return [
    letters.join(', '),
    letters.join(''),
    small.join(''),
    small.join(' '),
    small.map((letter) => `(${letter})`).join(' '),
    letters.join(' < '),
    letters.join(' → '),
    letters.join('-'),
    letters.join(', then '),
    `first ${letters.join('; ')}`,
  ];
}

/** Some things in every order. */
export function everyOrder<T>(things: readonly T[]): T[][] {
  if (things.length === 0) return [[]];
  return things.flatMap((first, at) =>
    everyOrder([...things.slice(0, at), ...things.slice(at + 1)]).map((rest) => [first, ...rest]),
  );
}
