import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { qtiFiles } from '../../src/exchange/qti/package.js';
import { setEntry } from '../../src/exchange/qti/set-entry.js';
import { codeFor } from '../../src/problems/code.js';
import { KITS, sheetsFor, styleIn, UNITS } from './sheets.js';
import { elementsOf, type Node, named, openReader, textOf, type XmlReader } from './xml-reader.js';

const NUMBER = /^-?\d+(?:\.\d+)?$/;
const NAME = /^[A-Za-z_][A-Za-z0-9_-]*$/;
const WHOLE = /^\d+$/;
const TRUTH = /^(?:true|false)$/;

/**
 * What an attribute may hold. The standard lets an identifier have a point; but in a test a point parts the name of
 * an item from that of its variable, so that a program may look for `lesson_1_blank` and its variable `2`.
 */
const HOLDS: Readonly<Record<string, RegExp>> = {
  identifier: NAME,
  'response-identifier': NAME,
  'outcome-identifier': NAME,
  'variable-identifier': NAME,
  identifierref: NAME,
  cardinality: /^(?:single|ordered)$/,
  'base-type': /^(?:float|string|identifier)$/,
  'show-hide': /^show$/,
  'tolerance-mode': /^absolute$/,
  tolerance: /^\d+(?:\.\d+)? \d+(?:\.\d+)?$/,
  'include-lower-bound': TRUTH,
  'include-upper-bound': TRUTH,
  'case-sensitive': TRUTH,
  adaptive: TRUTH,
  'time-dependent': TRUTH,
  shuffle: TRUTH,
  visible: TRUTH,
  'show-feedback': TRUTH,
  'max-attempts': WHOLE,
  'max-choices': WHOLE,
  'expected-length': /^[1-9]\d*$/,
  'mapped-value': NUMBER,
  'default-value': NUMBER,
  'normal-maximum': NUMBER,
  href: /^(?:\.\.\/)?[A-Za-z0-9_/-]+\.(?:xml|svg)$/,
  src: /^\.\.\/figures\/[A-Za-z0-9_-]+\.svg$/,
  alt: /\S/,
  'aria-label': /\S/,
  title: /^\S(?:[^\n\t]*\S)?$/,
};

/**
 * A regular expression that XML Schema and the dialects of programming languages read alike: letters, figures and
 * signs, groups, choices, classes of letters, `*`, `+` and `?`, and no escape but of a sign or of a space.
 */
const COMMON = /^(?:[^\\^$.*+?()[\]{}|]|\\[s\\.^*+?()[\]{}|]|\[[^\\^\]-]+\]|[()|*+?])+$/u;

const workshops = KITS.flatMap((kit) => UNITS.map((units) => ({ kit, units })));

describe.each(workshops)('the packages for $kit in $units, read strictly', ({ kit, units }) => {
  let reader: XmlReader;
  const packages: ReadonlyMap<string, Node>[] = [];

  beforeAll(async () => {
    reader = await openReader();
    const draw = sheetsFor(kit, units);
    for (const place of [0, 1]) {
      const files = qtiFiles(draw(codeFor(`strict/${kit}/${units}/${place}`)), styleIn(units));
      const nodes = await reader.read([...files.values()]);
      packages.push(new Map([...files.keys()].map((name, at) => [name, nodes[at] as Node])));
    }
  });
  afterAll(() => reader.close());

  const items = () =>
    packages.flatMap((files) => [...files.values()].filter(({ name }) => name === 'qti-assessment-item'));

  it('have nothing in an attribute but what may stand there', () => {
    const seen = new Set<string>();
    const wrong: string[] = [];
    for (const [name, root] of packages.flatMap((files) => [...files]))
      for (const node of root.name === 'svg' ? [] : elementsOf(root))
        for (const [key, value] of Object.entries(node.attributes)) {
          const holds = HOLDS[key];
          if (!holds || node.namespace.endsWith('MathML')) continue;
          if (!holds.test(value)) wrong.push(`${name}: ${node.name} has ${key}="${value}"`);
          seen.add(key);
        }
    expect(wrong).toEqual([]);
    // All of them stand in every package.
    expect([...seen].sort()).toEqual(Object.keys(HOLDS).sort());
  });

  it('name files and resources so that no system takes two for one', () => {
    for (const files of packages) {
      const names = [...files.keys()].map((name) => name.toLowerCase());
      expect(new Set(names).size).toBe(names.length);
      const resources = named(files.get('imsmanifest.xml') as Node, 'resource').map(({ attributes }) =>
        attributes.identifier?.toLowerCase(),
      );
      expect(new Set(resources).size).toBe(resources.length);
    }
  });

  it('hold values of the type that is declared, and of a choice only those there are', () => {
    for (const item of items()) {
      for (const value of named(item, 'qti-base-value'))
        expect(textOf(value)).toMatch(value.attributes['base-type'] === 'float' ? NUMBER : NAME);
      for (const declaration of named(item, 'qti-response-declaration')) {
        const { identifier, 'base-type': type, cardinality } = declaration.attributes;
        const correct = named(declaration, 'qti-correct-response').flatMap((one) => named(one, 'qti-value'));
        expect(correct.length > 1).toBe(cardinality === 'ordered');
        if (type === 'float') for (const one of correct) expect(textOf(one)).toMatch(NUMBER);
        const [interaction] = [...elementsOf(item)].filter(
          ({ attributes }) => attributes['response-identifier'] === identifier,
        );
        const choices = named(interaction as Node, 'qti-simple-choice').map(
          ({ attributes }) => attributes.identifier,
        );
        expect(choices.length > 0).toBe(type === 'identifier');
        expect(new Set(choices).size).toBe(choices.length);
        if (choices.length > 0) expect(choices).toEqual(expect.arrayContaining(correct.map(textOf)));
        if (cardinality === 'ordered') expect(correct).toHaveLength(choices.length);
      }
    }
  });

  it('map no answer twice, and match patterns that every dialect reads alike', () => {
    let patterns = 0;
    for (const item of items()) {
      for (const mapping of named(item, 'qti-mapping')) {
        const keys = named(mapping, 'qti-map-entry').map(({ attributes }) =>
          attributes['map-key']?.toLowerCase(),
        );
        expect(new Set(keys).size).toBe(keys.length);
      }
      for (const { attributes } of named(item, 'qti-pattern-match')) {
        expect(attributes.pattern).toMatch(COMMON);
        patterns++;
      }
    }
    expect(patterns).toBeGreaterThan(10);
  });

  it('have formulas as plain MathML, and no paragraph without words', () => {
    let formulas = 0;
    for (const item of items()) {
      for (const name of ['semantics', 'annotation']) expect(named(item, name)).toEqual([]);
      for (const { attributes } of elementsOf(item)) expect(attributes.class ?? '').not.toMatch(/katex/);
      formulas += named(item, 'math').length;
      for (const one of [...named(item, 'p'), ...named(item, 'qti-content-body')])
        expect(
          textOf(one) !== '' ||
            named(one, 'img').length + named(one, 'qti-text-entry-interaction').length > 0,
        ).toBe(true);
    }
    expect(formulas).toBeGreaterThan(60);
  });
});

it('signs in the words of a list are matched as they are, in every dialect', () => {
  const items = ['a-b', '-5', 'x^2', '(A) [B] {C}', '$3', 'one|two', 'what? *+.'];
  const { right } = setEntry({ kind: 'set', items }, 'R');
  const patterns = [...right.xml.matchAll(/pattern="([^"]*)"/g)].map(([, pattern]) =>
    (pattern ?? '').replaceAll('&amp;', '&'),
  );
  expect(patterns).toHaveLength(items.length);
  for (const [at, pattern] of patterns.entries()) {
    expect(pattern).toMatch(COMMON);
    const whole = new RegExp(`^(?:${pattern})$`, 'u');
    expect(items.join(', ')).toMatch(whole);
    expect(items.filter((_, place) => place !== at).join(', ')).not.toMatch(whole);
  }
});
