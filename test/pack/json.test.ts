import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { faultInJson } from '../../src/pack/json-fault.js';
import { placeInJson } from '../../src/pack/json-place.js';

const isJson = (text: string): boolean => {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
};

/** What stands at a place, up to a few characters. */
function standsAt(text: string, path: readonly PropertyKey[]): string {
  const { line, column } = placeInJson(text, path);
  return (text.split('\n')[line - 1] ?? '').slice(column - 1);
}

describe('faultInJson(text)', () => {
  it.each([
    ['{"a": 1,}', 8],
    ['', 0],
    ['  ', 2],
    ['{"a":', 5],
    ['[1 2]', 3],
    ['nul', 0],
    ['{"a" oh}', 5],
    ['{"a":1} {', 8],
    ['[1, "b\n"]', 4],
    ['[01]', 2],
    ['{"a": [1, {"b": tru}]}', 16],
    ['{a: 1}', 1],
    ['[1}', 2],
  ])('%j: at %i', (text, at) => expect(faultInJson(text)).toBe(at));

  it('is in no text that the system reads', () =>
    fc.assert(
      fc.property(
        fc.json(),
        fc.nat(),
        fc.constantFrom('', '"', '}', ']', ',', ':', '\\', '\n', 'x', '1'),
        (json, at, with_) => {
          const place = at % (json.length + 1);
          for (const text of [json, json.slice(0, place) + with_ + json.slice(place + 1)])
            if (faultInJson(text) < text.length) expect(isJson(text)).toBe(false);
            else if (isJson(text)) expect(faultInJson(text)).toBe(text.length);
        },
      ),
    ));
});

describe('placeInJson(text, path)', () => {
  const text = '{"a": [1, {"b": "x, \\"y\\"", "c": {}}, [2]],\n "d": {"a": 7}}';
  it.each([
    [[], '{"a"'],
    [['a'], '[1'],
    [['a', 0], '1,'],
    [['a', 1, 'b'], '"x,'],
    [['a', 1, 'c'], '{}}'],
    [['a', 2, 0], '2]'],
    [['d', 'a'], '7}'],
    [['d', 'none'], '{"a": 7'],
    [['none', 'deep'], '{"a"'],
  ])('%j', (path, stands) => expect(standsAt(text, path).startsWith(stands)).toBe(true));

  it('is found in a text of many millions of characters', () => {
    const long = JSON.stringify({ long: 'x'.repeat(30_000_000), a: 1 });
    expect(placeInJson(long, ['a'])).toEqual({ line: 1, column: long.length - 1 });
    expect(faultInJson(`${long}}`)).toBe(long.length);
  });
});
