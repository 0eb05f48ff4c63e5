import { strFromU8, unzipSync } from 'fflate';
import { beforeAll, describe, expect, it } from 'vitest';
import { ITEM_SCHEMA, PACKAGE_SCHEMA } from '../../src/exchange/qti/namespaces.js';
import { qtiFiles, qtiPackage } from '../../src/exchange/qti/package.js';
import { misshapen, PACKAGE_SHAPES, QTI_SHAPES } from './shapes.js';
import { KITS, sampleSheet, styleIn, UNITS } from './sheets.js';
import { elementsOf, type Node, named, readXml } from './xml-reader.js';

const IDENTIFIER = /^[A-Za-z_][A-Za-z0-9_.-]*$/;

const workshops = KITS.flatMap((kit) => UNITS.map((units) => ({ kit, units })));

// No package here carries the published schemas: this holds the files to the shapes in shapes.ts instead.
describe.each(workshops)('the package of the sample course for $kit in $units', ({ kit, units }) => {
  let files: Map<string, string>;
  let read: Map<string, Node>;
  let manifest: Node;

  beforeAll(async () => {
    files = qtiFiles(sampleSheet(kit, units), styleIn(units));
    const texts = [...files.values()];
    const nodes = await readXml(texts);
    read = new Map([...files.keys()].map((name, place) => [name, nodes[place] as Node]));
    manifest = read.get('imsmanifest.xml') as Node;
  });
  const roots = (name: string) => [...read.values()].filter((node) => node.name === name);

  it('has a test for each lesson and an item for each problem', () => {
    const sheet = sampleSheet(kit, units);
    expect(roots('qti-assessment-test')).toHaveLength(sheet.lessons.length);
    const problems = sheet.lessons.reduce((sum, one) => sum + one.problems.length, 0);
    expect(problems).toBeGreaterThan(30);
    expect(roots('qti-assessment-item')).toHaveLength(problems);
    expect([...files.keys()][0]).toBe('imsmanifest.xml');
  });

  it('is of the shape that the standard gives each element', () => {
    expect(misshapen(manifest, PACKAGE_SCHEMA.namespace, PACKAGE_SHAPES)).toEqual([]);
    for (const name of ['qti-assessment-test', 'qti-assessment-item'])
      for (const root of roots(name)) expect(misshapen(root, ITEM_SCHEMA.namespace, QTI_SHAPES)).toEqual([]);
  });

  it('names each thing once, by a name that XML can have', () => {
    const resources = named(manifest, 'resource').map(({ attributes }) => attributes.identifier ?? '');
    expect(new Set(resources).size).toBe(resources.length);
    for (const root of read.values()) {
      const names = [...elementsOf(root)].flatMap(({ attributes }) => attributes.identifier ?? []);
      for (const name of names) expect(name).toMatch(IDENTIFIER);
    }
    for (const item of roots('qti-assessment-item')) {
      const declared = [
        ...named(item, 'qti-response-declaration'),
        ...named(item, 'qti-outcome-declaration'),
      ];
      const names = declared.map(({ attributes }) => attributes.identifier);
      expect(new Set(names).size).toBe(names.length);
    }
  });

  it('lists every file with its type, and what it leans on', () => {
    const listed = named(manifest, 'resource').map(({ attributes }) => attributes);
    expect(listed.map(({ href }) => href)).toEqual([...files.keys()].slice(1));
    const types: Record<string, string> = {
      'qti-assessment-test': 'imsqti_test_xmlv3p0',
      'qti-assessment-item': 'imsqti_item_xmlv3p0',
      svg: 'webcontent',
    };
    for (const { href = '', type, identifier } of listed) {
      const root = read.get(href);
      expect(type).toBe(types[root?.name ?? '']);
      if (root?.name !== 'svg') expect(root?.attributes.identifier).toBe(identifier);
    }
    for (const item of roots('qti-assessment-item'))
      for (const { attributes } of named(item, 'img'))
        expect(files.has((attributes.src ?? '').replace('../', ''))).toBe(true);
    for (const test of roots('qti-assessment-test')) {
      const refs = named(test, 'qti-assessment-item-ref').map(({ attributes }) => attributes);
      const line = named(manifest, 'resource').find(
        ({ attributes }) => attributes.identifier === test.attributes.identifier,
      );
      const leansOn = named(line as Node, 'dependency').map(({ attributes }) => attributes.identifierref);
      expect(leansOn).toEqual(refs.map(({ identifier }) => identifier));
      for (const { href = '', identifier } of refs)
        expect(read.get(href.replace('../', ''))?.attributes.identifier).toBe(identifier);
    }
  });

  it('declares every response, binds each to one interaction, and shows each feedback', () => {
    for (const item of roots('qti-assessment-item')) {
      const responses = named(item, 'qti-response-declaration').map(
        ({ attributes }) => attributes.identifier,
      );
      const bound = [...elementsOf(item)].flatMap(
        ({ attributes }) => attributes['response-identifier'] ?? [],
      );
      expect(bound).toEqual(responses);
      const outcomes = named(item, 'qti-outcome-declaration').map(({ attributes }) => attributes.identifier);
      const used = [
        ...named(item, 'qti-variable'),
        ...named(item, 'qti-map-response'),
        ...named(item, 'qti-correct'),
      ];
      for (const { attributes } of used) expect([...responses, ...outcomes]).toContain(attributes.identifier);
      for (const { attributes } of named(item, 'qti-set-outcome-value'))
        expect(outcomes).toContain(attributes.identifier);
      const shown = named(item, 'qti-modal-feedback').map(({ attributes }) => ({ ...attributes }));
      const given = named(item, 'qti-set-outcome-value')
        .filter(({ attributes }) => attributes.identifier !== 'SCORE')
        .map((rule) => ({
          outcome: rule.attributes.identifier,
          value: named(rule, 'qti-base-value')[0]?.children[0],
        }));
      expect(shown.map((one) => ({ outcome: one['outcome-identifier'], value: one.identifier }))).toEqual(
        expect.arrayContaining(given),
      );
      expect(shown).toHaveLength(given.length);
    }
  });

  it('is the same bytes every time, and unpacks to the same files', () => {
    const [one, two] = [0, 1].map(() => qtiPackage(sampleSheet(kit, units), styleIn(units)));
    expect(Buffer.compare(one as Uint8Array, two as Uint8Array)).toBe(0);
    const unpacked = unzipSync(one as Uint8Array);
    expect(Object.keys(unpacked)).toEqual([...files.keys()]);
    for (const [name, text] of files) expect(strFromU8(unpacked[name] as Uint8Array)).toBe(text);
  });
});

it('names no learner: it goes to another program', () => {
  const text = [
    ...qtiFiles(sampleSheet('harrow-lane', 'mm', '7KQ-2M4-X', 'Ada Brown'), styleIn('mm')).values(),
  ].join();
  expect(text).not.toContain('Ada Brown');
});
