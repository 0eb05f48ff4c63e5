/** A printed text as a keyboard has it: plain spaces, and a hyphen for a minus. */
export const plain = (printed: string): string =>
  printed.replace(/[\u202F\u00A0]/g, ' ').replaceAll('−', '-');

/** Ways to write that are the same for an answer of any kind. */
export const anyhow = (printed: string): string[] => {
  const text = plain(printed);
  return [printed, text, `  ${text} . `, text.toUpperCase(), text.replaceAll(' ', '\u2009'), `= ${text}`];
};
