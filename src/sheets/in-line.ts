/** A single paragraph of HTML as it stands in a line of other words. */
export const inLine = (html: string): string => html.trim().replace(/^<p>([^]*)<\/p>$/, '$1');
