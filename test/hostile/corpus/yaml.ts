import { kit, type Nasty, nasties, PROTOTYPE_NAMES } from '../nasty.js';

const HEAD = 'heads: [{ name: h, ratio: 40, plates: [[15, 16, 17, 18, 19, 20]] }]\n';

const laughs = (depth: number, width: number): string =>
  Array.from({ length: depth }, (_, at) => {
    const inside = at === 0 ? 'lol' : `*a${at - 1}`;
    return `a${at}: &a${at} [${Array(width).fill(inside).join(', ')}]`;
  }).join('\n');

/** What YAML itself can be made to do; it is one reader for all, so a kit stands for a lesson and a course. */
export const yamlNasties: Nasty[] = [
  ...nasties('kit', 'told', {
    'a bomb of aliases, nine deep': () => kit(`${laughs(9, 9)}\n`),
    'a bomb of aliases, wide': () => kit(`${laughs(2, 5000)}\n`),
    'a bomb of aliases in a list that is read': () =>
      kit(`drills: &d [1, 2, 3]\nspindleSpeeds: [${Array(2000).fill('*d').join(', ')}]\n`),
    'an alias of itself': () => kit('heads: &h [*h]\n'),
    'a merge key': () => kit('slide: &s { travel: 1, dialPerDivision: 1, dialReads: radius, <<: *s }\n'),
    'a thousand brackets': () => kit(`drills: ${'['.repeat(1000)}${']'.repeat(1000)}\n`),
    'a hundred thousand brackets': () => kit(`drills: ${'['.repeat(99_000)}${']'.repeat(99_000)}\n`),
    'a hundred thousand brackets that do not close': () => kit(`drills: ${'['.repeat(190_000)}`),
    'braces in braces': () => kit(`slide: ${'{a: '.repeat(40_000)}`),
    'lists in lists by dashes': () => kit(`drills:\n  ${'- '.repeat(90_000)}1\n`),
    'questions in questions': () => kit(`${'? '.repeat(90_000)}\n`),
    'steps to the right, a thousand': () =>
      kit(Array.from({ length: 600 }, (_, at) => `${' '.repeat(at)}a:`).join('\n')),
    'ten thousand names': () => kit(Array.from({ length: 10_000 }, (_, at) => `n${at}: 1`).join('\n')),
    'one name twice': () => kit('drills: [1]\ndrills: [2]\n'),
    'a name of a hundred thousand letters': () => kit(`${'k'.repeat(100_000)}: 1\n`),
    'a value of a hundred thousand letters': () => kit('', 'k'.repeat(100_000)),
    'a line of fifty million letters': () => kit('', 'k'.repeat(50_000_000)),
    'fifty thousand faulty values': () => kit(`drills: [${Array(50_000).fill('no').join(',')}]\n`),
    'two documents': () => `${kit('')}---\n${kit('')}`,
    'a tag of JavaScript': () => kit('drills: !!js/function "function () { return 1 }"\n'),
    'a tag of binary': () => kit('drills: !!binary aGVsbG8=\n'),
    'a tag for the set of itself': () => kit('drills: !!set { ? 1 }\n'),
    'a directive': () => `%YAML 9.9\n%TAG ! tag:evil,2000:\n---\n${kit('drills: 1')}`,
    'a thousand directives': () => `${'%TAG !a! b\n'.repeat(1000)}---\n${kit('drills: 1')}`,
    'nothing at all': '',
    'spaces only': () => ' '.repeat(190_000),
    'line ends only': () => '\n'.repeat(190_000),
    'remarks only': () => '#\n'.repeat(90_000),
    'quotation marks only': () => '"'.repeat(190_000),
    'a quotation mark that does not close': () => kit(`drills: "${'x\n  '.repeat(40_000)}`),
    'anchors only': () => kit(`drills: ${'&a '.repeat(60_000)}1\n`),
    'ten thousand anchors': () =>
      kit(`drills: [${Array.from({ length: 10_000 }, (_, at) => `&a${at} 1`).join(',')}]\n`),
    'colons only': () => ':'.repeat(190_000),
    'colons and spaces only': () => ': '.repeat(95_000),
    'a name that is a list': () => kit('? [a, b]\n: 1\n'),
    'a name that is a list of itself': () => kit('? &a [*a]\n: 1\n'),
    'a number of a hundred thousand figures': () => kit(`drills: [${'9'.repeat(100_000)}]\n`),
    'a number past all numbers': () => kit('drills: [1e999, .inf, .nan, -.inf]\n'),
    NULs: () => kit('', 'a\0b'),
    'escaped NULs': () => kit('', '"a\\0b"'),
    'no text at all': () => new Uint8Array(2000).map((_, at) => (at * 7919) % 256),
    'UTF-16': () => new Uint8Array(Buffer.from(`\uFEFF${kit('')}`, 'utf16le')),
    'a half of a character': () => new Uint8Array([...Buffer.from(kit('')), 0xed, 0xa0, 0x80]),
    'a billion teeth in a head': () => kit('heads: [{ name: h, ratio: 1000000000, plates: [[15]] }]\n'),
    'a list of plates without end': () =>
      kit(`heads: [{ name: h, ratio: 40, plates: [[${Array.from({ length: 900 }, (_, at) => at + 2)}]] }]\n`),
    'a length that takes a regular expression long': () => kit(`drills: ["${'1'.repeat(150_000)}x"]\n`),
    'a length of signs and spaces': () => kit(`drills: ["${'1 - '.repeat(40_000)}"]\n`),
    'a length of dots': () => kit(`drills: ["${'1.'.repeat(80_000)}"]\n`),
    ...Object.fromEntries(
      PROTOTYPE_NAMES.flatMap((name) => [
        [`the name ${name} at the top`, () => kit(`${name}: { polluted: true }\n`)],
        [`the name ${name} inside`, () => kit(`slide: { travel: 1, ${name}: { polluted: true } }\n`)],
        [
          `the value ${name} for a word`,
          () => kit(`cutters: [{ cuts: ${name}, module: 1, diameter: 24 }]\n`),
        ],
      ]),
    ),
  }),
  ...nasties('kit', 'either', {
    'a mark of byte order': () => `\uFEFF${kit(HEAD)}`,
    'the most that a kit may hold': () => {
      const plate = `[${Array.from({ length: 60 }, (_, at) => at + 15)}]`;
      const head = `{ name: h, ratio: 40, plates: [${Array(12).fill(plate)}], gears: [${Array.from({ length: 60 }, (_, at) => at + 20)}] }`;
      return kit(
        `heads: [${Array(20).fill(head)}]\nspindleSpeeds: [${Array.from({ length: 60 }, (_, at) => at + 100)}]\n`,
      );
    },
  }),
];
