import fc from 'fast-check';

/** What a stranger may put between two letters. */
const PIECES = [
  ...[
    '\0',
    '\u0007',
    '\u202e',
    '\u2066',
    '\ufeff',
    '\u2028',
    '\r',
    '\r\n',
    '\t',
    '\n',
    '  ',
    '\u00a0',
    '\ud800',
    '😀',
  ],
  ...[
    '{{',
    '}}',
    '{{#each kit}}',
    '{{/each}}',
    '{{#if teeth}}',
    '{{else}}',
    '{{/if}}',
    '{{> x}}',
    '{{{',
    '{{mm ',
    '{{problems}}',
  ],
  ...[
    '{{this.constructor}}',
    '{{figure "wheel-blank"}}',
    '{{worked "wheel.blank"}}',
    '{{ref "x"}}',
    '{{lookup kit "x"}}',
  ],
  ...[
    '$',
    '$$',
    '\\frac{',
    '}',
    '{',
    '\\def\\a{\\a\\a}',
    '\\href{javascript:a}{b}',
    '^',
    '_',
    '\\begin{array}{c}',
    '&',
    '\\\\',
  ],
  ...[
    '<script>alert(1)</script>',
    '<img src=x onerror=alert(1)>',
    '</style>',
    '<!--',
    '-->',
    '&lt;',
    '&#0;',
    '<base href=//x>',
  ],
  ...[
    '](javascript:alert(1))',
    '](file:///etc/passwd)',
    '![x](http://127.0.0.1/)',
    '[x]: http://127.0.0.1/ "y"',
    '<http://127.0.0.1>',
  ],
  ...[
    '&a ',
    '*a',
    '<<: *a',
    '!!js/function ',
    '!x ',
    '? ',
    ': ',
    '- ',
    '#',
    '[',
    ']',
    ',',
    '"',
    "'",
    '|\n',
    '>-\n',
    '%YAML 9.9\n',
    '---\n',
  ],
  ...[
    '__proto__',
    'constructor',
    'toString',
    '__proto__: ',
    'constructor: {prototype: {polluted: 1}}',
    'length',
    'then',
  ],
  ...[
    '1e999',
    '-1',
    '0',
    '-0',
    '.nan',
    '.inf',
    '9007199254740993',
    '1/0',
    '0x7fffffff',
    '1..1000000000',
    '0..1 by 1e-12',
    'by 0',
  ],
  ...[
    '../../../etc/passwd',
    '/dev/zero',
    '/proc/self/environ',
    'C:\\x',
    'file:///etc/passwd',
    '~',
    '=1+1',
    '@',
    '`',
    '***',
    '|---|',
  ],
  ...[
    'find: ',
    'ask: ',
    'vary: ',
    'works: ',
    'keep: ',
    'slips: ',
    'among: ',
    'each: ',
    'cases: ',
    'times: 9',
    'fade: true',
    'mix: ',
  ],
];

const piece = fc.oneof(
  { weight: 6, arbitrary: fc.constantFrom(...PIECES) },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 12 }) },
  {
    weight: 1,
    arbitrary: fc
      .tuple(fc.constantFrom('[', '{', '- ', '(', '> ', '{{#if kit}}', '\\sqrt{', '*', 'a'), fc.nat(400))
      .map(([one, many]) => one.repeat(many)),
  },
);

type Edit = (text: string) => string;
const place = fc.double({ min: 0, max: 1, noNaN: true });
const at = (where: number, length: number): number => Math.floor(where * length);
const lines = (text: string): string[] => text.split('\n');

const edit: fc.Arbitrary<Edit> = fc.oneof(
  fc.tuple(place, piece).map(
    ([where, more]): Edit =>
      (text) => {
        const cut = at(where, text.length);
        return text.slice(0, cut) + more + text.slice(cut);
      },
  ),
  fc.tuple(place, fc.nat(60)).map(
    ([where, count]): Edit =>
      (text) => {
        const cut = at(where, text.length);
        return text.slice(0, cut) + text.slice(cut + count);
      },
  ),
  fc.tuple(place, piece).map(
    ([where, more]): Edit =>
      (text) => {
        // A value of the same name, but another.
        const all = lines(text);
        const line = at(where, all.length);
        all[line] = (all[line] ?? '').replace(/(:\s+|- ).*$/, (_, lead) => `${lead}${more}`);
        return all.join('\n');
      },
  ),
  fc.tuple(place, place).map(
    ([one, other]): Edit =>
      (text) => {
        const all = lines(text);
        const [a, b] = [at(one, all.length), at(other, all.length)];
        [all[a], all[b]] = [all[b] ?? '', all[a] ?? ''];
        return all.join('\n');
      },
  ),
  fc.tuple(place, fc.integer({ min: 0, max: 30 })).map(
    ([where, times]): Edit =>
      (text) =>
        lines(text)
          .flatMap((line, n, all) =>
            n === at(where, all.length) ? Array.from({ length: times }, () => line) : [line],
          )
          .join('\n'),
  ),
  fc.tuple(place, fc.constantFrom('1e9', '-3', '0', '0.1', '1e-9', '7/3', 'x', '999999999999')).map(
    ([where, number]): Edit =>
      (text) => {
        const all = [...text.matchAll(/\d+(?:\.\d+)?/g)];
        const one = all[at(where, all.length)];
        return one ? text.slice(0, one.index) + number + text.slice(one.index + one[0].length) : text;
      },
  ),
);

/** A good text with a few things done to it; now and then a text of nothing but pieces. */
export const edited = (good: readonly string[]): fc.Arbitrary<string> =>
  fc.oneof(
    {
      weight: 12,
      arbitrary: fc
        .tuple(fc.constantFrom(...good), fc.array(edit, { minLength: 1, maxLength: 4 }))
        .map(([text, edits]) => edits.reduce((now, change) => change(now), text)),
    },
    { weight: 1, arbitrary: fc.array(piece, { maxLength: 40 }).map((all) => all.join('')) },
  );
