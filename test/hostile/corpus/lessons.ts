import { lesson, type Nasty, nasties, PROTOTYPE_NAMES, SMUGGLED } from '../nasty.js';

const said = (body: string): string => lesson({ body: `${body}\n\n{{problems}}\n` });
const maths = (tex: string): string => said(`So $${tex}$ holds.`);
const example = (more: string): string => lesson({ head: `example: { ${more} }\n` });
const works = (more: string): string => lesson({ head: `works:\n${more}` });
const varied = (range: string): string =>
  lesson({
    problems: `problems:\n  one:\n    vary: { teeth: ${range} }\n    works: { half: { formula: teeth / 2, check: half * 2 = teeth } }\n    find: half\n    ask: What is half of {{teeth}}?\n`,
  });
const many = (count: number, one: (at: number) => string): string =>
  Array.from({ length: count }, (_, at) => one(at)).join('');

/** What the words of a lesson may try: braces, formulas, Markdown. */
const words: Nasty[] = [
  ...nasties('lesson', 'either', {
    'a power past all numbers': () => works('  a: { formula: "9^9^9^9", check: a = 1 }\n'),
  }),
  ...nasties('lesson', 'told', {
    'a formula before the equals sign of a formula': () =>
      lesson({
        head: 'example: { teeth: 60 }\nworks: { a: { formula: "teeth^teeth^teeth = teeth/3", check: a = 20 } }\n',
        body: '{{worked "a"}}\n\n{{problems}}\n',
      }),
    'each within each': () => said('{{#each a}}'.repeat(500) + '{{/each}}'.repeat(500)),
    'each over a range of a billion': () => said('{{#each (range 1000000000)}}x{{/each}}'),
    'if within if, ten thousand deep': () => said('{{#if kit}}'.repeat(5000) + '{{/if}}'.repeat(5000)),
    'braces that open only': () => said('{'.repeat(90_000)),
    'double braces that open only': () => said('{{ '.repeat(30_000)),
    'double braces that close only': () => said('}} '.repeat(30_000)).replace('}} ', '{{kit.name}} {{'),
    'brackets within brackets in braces': () => said(`{{mm ${'('.repeat(20_000)}1${')'.repeat(20_000)}}}`),
    'a name of a hundred thousand parts': () => said(`{{kit${'.a'.repeat(45_000)}}}`),
    'a hundred thousand options': () => said(`{{mm kit ${many(8000, (at) => `a${at}=1 `)}}}`),
    'fifty thousand unknown names': () => said('{{a}}'.repeat(18_000)),
    'a reach for a constructor': () => said('{{constructor.constructor "return process"}}'),
    'a reach through this': () => said('{{this.constructor}} {{../x}} {{@root.constructor}} {{./kit}}'),
    'a reach in brackets': () => said('{{[__proto__]}} {{kit.[constructor]}} {{kit.[__proto__].x}}'),
    'a lookup': () => said('{{lookup kit "constructor"}}'),
    'a with': () => said('{{#with kit}}{{constructor}}{{/with}}'),
    'a log': () => said('{{log kit}}'),
    'a part of another file': () => said('{{> (lookup . "x")}}'),
    'a part in line': () => said('{{#*inline "x"}}y{{/inline}}{{> x}}'),
    'a decorator': () => said('{{* x}}'),
    'a helper that is missing': () =>
      said('{{helperMissing}} {{#blockHelperMissing kit}}x{{/blockHelperMissing}}'),
    'a raw block': () => said('{{{{raw}}}} {{x}} {{{{/raw}}}}'),
    'an ampersand': () => said('{{& kit}}'),
    'a definition without end': () => maths('\\def\\a{\\a\\a}\\a'),
    'a command that makes itself': () => maths('\\newcommand{\\a}{\\a\\a}\\a'),
    'an edef': () => maths('\\edef\\a{x\\a}\\a'),
    'a let of itself': () => maths('\\let\\a=\\b \\futurelet\\c\\a\\b'),
    'a definition that doubles': () =>
      maths(
        `\\def\\a{xx}${many(20, (at) => `\\def\\${String.fromCharCode(98 + at)}{\\${String.fromCharCode(97 + at)}\\${String.fromCharCode(97 + at)}}`)}\\u`,
      ),
    'a definition with long words in it': () => maths(`\\gdef\\a{${'x'.repeat(500)}}${'\\a'.repeat(200)}`),
    'a link in a formula': () => maths('\\href{javascript:alert(1)}{x}'),
    'an address in a formula': () => maths('\\url{file:///etc/passwd}'),
    'a picture in a formula': () => maths('\\includegraphics{/etc/passwd}'),
    'markup in a formula': () => maths('\\htmlClass{x}{y} \\htmlStyle{color:red}{z} \\htmlData{a=b}{c}'),
    'braces in a formula, five thousand deep': () => maths('{'.repeat(5000) + 'x' + '}'.repeat(5000)),
    'fractions in fractions': () => maths('\\frac{1}{'.repeat(5000) + 'x' + '}'.repeat(5000)),
    'powers of powers': () => maths('x^{'.repeat(5000) + 'x' + '}'.repeat(5000)),
    'roots of roots': () => maths('\\sqrt'.repeat(9000) + 'x'),
    'choices of choices': () =>
      maths(
        '\\mathchoice{x}{x}{x}{x}'
          .repeat(10)
          .replaceAll('x', '\\mathchoice{x}{x}{x}{x}'.replaceAll('x', '\\mathchoice{y}{y}{y}{y}')),
      ),
    'left brackets without right': () => maths('\\left('.repeat(5000)),
    'a formula of ninety thousand letters': () => maths('x'.repeat(90_000)),
    'a formula that does not end': () => said(`$$\n${'x\n'.repeat(40_000)}`),
    'ten thousand formulas that do not end': () => said('$$a\n'.repeat(20_000)),
    'dollars only': () => said('$'.repeat(90_001)),
    'dollars and spaces': () => said('$ '.repeat(45_000)),
    'dollars and words': () => said('$a b '.repeat(18_001)),
    'a dollar and braces': () => said(`$${'{{'.repeat(45_000)}`),
    'VAL without end': () => maths('\\VAL{'.repeat(18_000)),
    'a label without end': () => said(`$$\\label${' '.repeat(80_000)}$$`),
    'a table of formulas, ten thousand columns': () =>
      maths(`\\begin{matrix}${'&'.repeat(10_000)}\\end{matrix}`),
    'VAL of a prototype': () => maths('\\VAL{constructor} \\VAL{__proto__.x} \\VAL{kit.constructor.name}'),
    'a hundred thousand characters without a space': () => said('x'.repeat(150_000)),
    'letters that no typeface has': () => said('漢'.repeat(5000)),
    'letters turned round': () => said('a \u202Egnp.exe \u2066b'),
    'a private letter that marks a place': () => said('\uE0000\uE001 \uE000ref0\uE001'),
    'a NUL': () => said('a\0b'),
    'escapes of a terminal': () => said('\u001B[2J'),
    'a figure of a prototype': () => said('{{figure "__proto__"}}\n\n{{figure "constructor" toString=1}}'),
    'a figure given a prototype': () => said('{{figure "wheel-blank" teeth=60 __proto__=1 constructor=2}}'),
    'a figure of a billion teeth': () =>
      said('{{figure "wheel-blank" teeth=1000000000 leaves=8 module=0.8}}'),
    'a working of a prototype': () => said('{{worked "constructor"}}\n\n{{worked "__proto__"}}'),
  }),
  ...nasties('lesson', 'either', {
    'rules of a kilometre': () => maths('\\rule{1000000em}{1000000em}'),
    'a rule of kilometres under the line': () => maths('\\rule[-99999999mm]{99999999mm}{99999999mm}'),
    'kerns of a kilometre': () => maths('a\\kern-99999em b\\hspace{99999em}\\raisebox{-9999em}{c}'),
    'a colour with an address in it': () => maths('\\textcolor{red;background:url(http://127.0.0.1/x)}{x}'),
    'a colour that ends the style': () => maths('\\color{#fff"onload="x}y'),
    'markup as words in a formula': () => maths('\\text{</span><script>alert(1)</script>}'),
    'a mathematical character by its code': () => maths('\\char`< \\char"3C script'),
    'braces by their code': () => maths('\\char"7B \\char"110000'),
    'quotes in quotes': () => said(`${'>'.repeat(50_000)} a`),
    'lists in lists': () => said(`${'- '.repeat(40_000)}a`),
    'numbered lists in lists': () => said(`${'1. '.repeat(25_000)}a`),
    'stars only': () => said('*'.repeat(90_000)),
    'stars and letters': () => said('*a_'.repeat(30_000)),
    'stars that open and never close': () => said('*a **a '.repeat(12_000)),
    'backticks of all lengths': () => said(many(400, (at) => `${'`'.repeat(at + 1)}a`)),
    'brackets only': () => said('['.repeat(90_000)),
    'pictures in pictures': () => said('!['.repeat(40_000)),
    'a table of ten thousand columns': () =>
      said(`${'|a'.repeat(9000)}|\n${'|-'.repeat(9000)}|\n${'|b'.repeat(9000)}|`),
    'a table of ten thousand rows': () => said(`|a|b|\n|-|-|\n${'|c|d|\n'.repeat(12_000)}`),
    'a table that fills itself up': () =>
      said(`${'|a'.repeat(500)}|\n${'|-'.repeat(500)}|\n${'|b\n'.repeat(20_000)}`),
    'entities only': () => said('&amp'.repeat(20_000)),
    'backslashes only': () => said('\\'.repeat(90_000)),
    'hashes only': () => said(many(10_000, () => '# a\n')),
    'references only': () => said(many(10_000, (at) => `[a${at}]: http://127.0.0.1/${at}\n`)),
    'spaces only': () => said(' '.repeat(90_000)),
    'line ends only': () => said('\n'.repeat(90_000)),
    'accents without end': () => said(`a${'\u0301'.repeat(50_000)}`),
  }),
  ...nasties('lesson', 'safe', {
    'links of all kinds': () =>
      said(
        '[a](javascript:alert(1)) [b](file:///etc/passwd) [c](http://127.0.0.1/) [d](data:text/html,x) <http://127.0.0.1/> http://127.0.0.1/ [e]\n\n[e]: javascript:x',
      ),
    'pictures of all kinds': () =>
      said(
        '![a](javascript:x) ![b](file:///etc/passwd) ![c](http://127.0.0.1/x.png) ![d](data:image/svg+xml,<svg>) <img src=x>',
      ),
    ...Object.fromEntries(
      SMUGGLED.map((text) => [
        `${text} in the body`,
        () =>
          said(
            `${text}\n\n> ${text}\n\n| ${text} | b |\n|-|-|\n| c | ${text} |\n\n    ${text}\n\n\`${text}\``,
          ),
      ]),
    ),
  }),
  ...nasties('lesson', 'either', {
    ...Object.fromEntries(
      SMUGGLED.map((text) => {
        const quoted = JSON.stringify(text);
        return [
          `${text} in every word of the front matter`,
          () =>
            lesson({
              title: `title: ${quoted}\n`,
              head: `part: ${quoted}\nneeds: [${quoted}]\ngoals: [${quoted}]\nsymbols: { D_1: ${quoted} }\nexample: { teeth: 60 }\n`,
              problem: `    slips: { one: { formula: teeth * 2, says: ${quoted} } }\n`,
              body: `{{figure "pitch-circles" teeth=60 leaves=8 module=0.8 caption=${JSON.stringify(text.replaceAll('"', "'"))}}}\n\n{{problems}}\n`,
            }),
        ];
      }),
    ),
  }),
];

/** What the front matter may ask to be worked. */
const numbers: Nasty[] = [
  ...nasties('lesson', 'told', {
    'a range of a billion billion': () => varied('1..1e12 by 1e-9'),
    'a range of a billion': () => varied('1..1000000000 by 1'),
    'a range of steps too small to see': () => varied('1..2 by 0.000000001'),
    'a range without a step': () => varied('1..2 by 0'),
    'a range that runs back': () => varied('9..1'),
    'a range of dots': () => varied(`"${'.'.repeat(150_000)} "`),
    'a range of spaces': () => varied(`"1${' '.repeat(150_000)}x"`),
    'a range of ors': () => varied(`"${'1 or '.repeat(30_000)}"`),
    'a list of fifty thousand': () => varied(`[${many(30_000, (at) => `${at},`)}1]`),
    'a list of brackets with a unit': () => varied(`${'['.repeat(50_000)} mm`),
    'a hundred thousand figures': () => varied(`"${'9'.repeat(100_000)}"`),
    'a thousand drawn values': () => varied(`1..9, ${many(1000, (at) => `a${at}: 1..9, `)}`),
    'a billion teeth in an example': () =>
      lesson({
        head: 'example: { teeth: 1000000000 }\nworks: { blank: { calculation: wheel.blank, teeth: teeth, module: 1 } }\n',
      }),
    'a billion divisions': () => works('  a: { calculation: dividing.simple, divisions: 1000000000 }\n'),
    'a formula of brackets': () =>
      works(`  a: { formula: "${'('.repeat(199)}1${')'.repeat(199)}", check: "a = 2" }\n`),
    'a formula that is long': () => works(`  a: { formula: "${'1+'.repeat(90_000)}1", check: a = 1 }\n`),
    'a formula that calls what it should not': () => works('  a: { formula: "import(1)", check: a = 1 }\n'),
    'a formula that makes a function': () => works('  a: { formula: "f(x) = x", check: a = 1 }\n'),
    'a formula that reaches for a constructor': () =>
      works('  a: { formula: "cos.constructor(1)", check: a = 1 }\n'),
    'a formula of a matrix': () => works('  a: { formula: "[1,2;3,4]", check: a = 1 }\n'),
    'a formula of a range': () => works('  a: { formula: "1:1000000000", check: a = 1 }\n'),
    'a rank of prototypes': () => works('  a: { rank: { __proto__: x, constructor: y, toString: z } }\n'),
    'ten thousand workings': () => works(many(4000, (at) => `  w${at}: { formula: 1, check: w${at} = 1 }\n`)),
    'a table of a billion rows': () =>
      works('  a: { each: { n: 1..1000000000 }, formula: n, check: a = n }\n'),
    'a thousand problems': () =>
      lesson({
        problems: `problems:\n${many(1000, (at) => `  p${at}: { vary: { a: 1..9 }, works: { b: { formula: a, check: b = a } }, find: b, ask: What? }\n`)}`,
      }),
    'a problem that never comes out': () => lesson({ problem: '    keep: half = 1\n' }),
    'a caution that is a prototype': () => lesson({ head: 'cautions: [constructor, __proto__]\n' }),
    'an alias of the whole': () => lesson({ head: 'example: &a { b: *a }\n' }),
    'a title of a hundred thousand letters': () => lesson({ title: `title: ${'x'.repeat(100_000)}\n` }),
    'front matter that does not end': () => `---\n${'a: b\n'.repeat(20_000)}`,
    'a megabyte of front matter': () => `---\n${'#\n'.repeat(400_000)}---\n`,
    'fences only': () => '---\n'.repeat(200_000),
    ...Object.fromEntries(
      PROTOTYPE_NAMES.flatMap((name) => [
        [`${name} at the top`, () => lesson({ head: `${name}: { polluted: true }\n` })],
        [`${name} as a calculation`, () => works(`  a: { calculation: ${name} }\n`)],
        [`${name} in the braces`, () => said(`{{${name}}} {{mm ${name}}} {{${name} 1}}`)],
        [`${name} in a formula`, () => works(`  a: { formula: "${name} + 1", check: a = 1 }\n`)],
        [`${name} as a function`, () => works(`  a: { formula: "${name}(1)", check: a = 1 }\n`)],
        [`${name} as what is found`, () => lesson().replace('find: half', `find: ${name}`)],
      ]),
    ),
  }),
  ...nasties('lesson', 'either', {
    'the most problems, hard to draw': () =>
      lesson({
        problems: `problems:\n${many(40, (at) => `  p${at}: { vary: { a: 1..2000, b: 1..2000 }, keep: ["c = 7", "a + b = 900"], works: { c: { formula: a - floor(a/997)*997, check: c = c } }, find: c, ask: What? }\n`)}`,
      }),
    'one problem, six times, slow to work': () =>
      lesson({
        problems: `problems:\n  one:\n    times: 6\n    vary: { teeth: 1..2000 }\n    works: { i: { calculation: dividing.compound, divisions: teeth }, half: { formula: teeth/2, check: half*2 = teeth } }\n    keep: teeth > 1990\n    find: half\n    ask: Half of {{teeth}}?\n`,
      }),
    ...Object.fromEntries(
      PROTOTYPE_NAMES.flatMap((name) => [
        [`${name} as a problem`, () => lesson().replace('  one:', `  ${name}:`)],
        [`${name} as a working`, () => works(`  ${name}: { formula: 1 + 1, check: ${name} = 2 }\n`)],
        [`${name} as a drawn value`, () => lesson().replaceAll('teeth', name)],
        [`${name} as an example`, () => example(`${name}: 3`)],
        [
          `${name} as a slip`,
          () => lesson({ problem: `    slips: { ${name}: { formula: teeth*2, says: No. } }\n` }),
        ],
        [`${name} told`, () => lesson({ problem: `    tell: { ${name}: 1 }\n` })],
      ]),
    ),
  }),
];

export const lessonNasties: Nasty[] = [...words, ...numbers];
