/** A document without what has tests of its own, or is KaTeX's: drawings by their label, formulas by their text. */
export function normalised(html: string): string {
  let rest = html
    .replace(/<svg[^]*?aria-label="([^"]*)"[^]*?<\/svg>/g, '[figure: $1]')
    .replace(/url\("data:image\/svg\+xml,[^"]*"\)/g, '[the variant as a QR code]');
  let done = '';
  for (;;) {
    const at = rest.search(/<span class="katex(?:-display)?"/);
    if (at < 0) return done + rest;
    const end = endOfSpan(rest, at);
    const text = rest
      .slice(at, end)
      .replace(/<[^>]*>/g, '')
      .replaceAll('\u200b', '');
    done += `${rest.slice(0, at)}[${text}]`;
    rest = rest.slice(end);
  }
}

/** Where the element ends that begins here. */
function endOfSpan(html: string, from: number): number {
  let depth = 0;
  for (const tag of html.slice(from).matchAll(/<(\/?)span\b[^>]*>/g)) {
    depth += tag[1] ? -1 : 1;
    if (depth === 0) return from + tag.index + tag[0].length;
  }
  return html.length;
}
