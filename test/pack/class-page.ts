/** A table of a page as it is read: what heads each column, and the cells of each row under it. */
export interface ReadTable {
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

const ENTITIES: Readonly<Record<string, string>> = {
  '&amp;': '&',
  '&lt;': '<',
  '&gt;': '>',
  '&quot;': '"',
  '&#x27;': "'",
  '&#x3D;': '=',
  '&#x60;': '`',
};

/** The text of some HTML. */
export function textOf(html: string): string {
  const text = html.replace(/<[^>]*>/g, '').replace(/&[#\w]+;/g, (entity) => ENTITIES[entity] ?? entity);
  return text.replace(/\s+/g, ' ').trim();
}

/** The tables of a class, by lesson: its first column heads are No., Seat and so on. */
export function tablesOf(html: string): { readonly lesson: string; readonly tables: readonly ReadTable[] }[] {
  return [
    ...html.matchAll(/<section class="lesson ([^"]+)">([^]*?)(?=<section class="lesson |<\/body>)/g),
  ].map(([, lesson = '', body = '']) => ({
    lesson,
    tables: [...body.matchAll(/<table[^]*?<\/table>/g)].map(([one]) => tableOf(one)),
  }));
}

function tableOf(html: string): ReadTable {
  const [head = '', body = ''] = html.split('</thead>');
  return {
    heads: [...head.matchAll(/<th\b[^>]*>([^]*?)<\/th>/g)].map(([, cell = '']) => cell),
    rows: [...body.matchAll(/<tr>([^]*?)<\/tr>/g)].map(([, row = '']) =>
      [...row.matchAll(/<t[dh]\b[^>]*>([^]*?)<\/t[dh]>/g)].map(([, cell = '']) => textOf(cell)),
    ),
  };
}
