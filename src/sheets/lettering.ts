/** A number to be read from afar: only its digits are large. The unit goes beside the label, and words are small. */
export interface Lettering {
  readonly unit: string;
  readonly pieces: readonly ({ readonly word: string } | { readonly digits: string })[];
}

export function lettering(value: string): Lettering {
  const [, digits = value, unit = ''] = /^(.*\d)[\s\u202F]*(mm|in)$/.exec(value) ?? [];
  const hasDigits = /\d/.test(digits);
  const pieces = digits
    .split(/(\s*[A-Za-z]+\s*)/)
    .filter((piece) => piece !== '')
    .map((piece) => (hasDigits && /[A-Za-z]/.test(piece) ? { word: piece } : { digits: piece }));
  return { unit, pieces };
}
