import { describe, expect, it } from 'vitest';
import { codeMark, codePicture } from '../../src/sheets/code-mark.js';

const QUIET = 4;
const SIDE = 21;
const LETTERS = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:';

/** The squares that a path blackens. */
function squares(path: string, size: number): boolean[][] {
  const grid = Array.from({ length: size }, () => Array<boolean>(size).fill(false));
  for (const [, x, y, width] of path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/g))
    for (let at = 0; at < Number(width); at++) (grid[Number(y)] as boolean[])[Number(x) + at] = true;
  return grid;
}

/** Masks of ISO/IEC 18004; true where a square is turned over. */
const MASKS: readonly ((i: number, j: number) => boolean)[] = [
  (i, j) => (i + j) % 2 === 0,
  (i) => i % 2 === 0,
  (_, j) => j % 3 === 0,
  (i, j) => (i + j) % 3 === 0,
  (i, j) => (Math.floor(i / 2) + Math.floor(j / 3)) % 2 === 0,
  (i, j) => ((i * j) % 2) + ((i * j) % 3) === 0,
  (i, j) => (((i * j) % 2) + ((i * j) % 3)) % 2 === 0,
  (i, j) => (((i + j) % 2) + ((i * j) % 3)) % 2 === 0,
];

/** Finders with what surrounds them, and the two rows of ticks, hold no data. */
const isData = (i: number, j: number): boolean =>
  i !== 6 && j !== 6 && !((i < 9 && (j < 9 || j > 12)) || (i > 12 && j < 9));

/** Reads a code of 21 squares a side that holds capitals and figures, as a scanner does, but for mending errors. */
function read(code: readonly (readonly boolean[])[]): string {
  const at = (i: number, j: number): boolean => code[i]?.[j] ?? false;
  const mask = ([2, 3, 4] as const).reduce((sum, j) => sum * 2 + Number(at(8, j)), 0) ^ 0b101;
  const bits: boolean[] = [];
  let up = true;
  for (let right = SIDE - 1; right > 0; right -= 2, up = !up) {
    if (right === 6) right--;
    for (let step = 0; step < SIDE; step++)
      for (const j of [right, right - 1]) {
        const i = up ? SIDE - 1 - step : step;
        if (isData(i, j)) bits.push(at(i, j) !== MASKS[mask]?.(i, j));
      }
  }
  const take = (count: number): number =>
    bits.splice(0, count).reduce((sum, bit) => sum * 2 + Number(bit), 0);
  expect(take(4)).toBe(0b0010);
  let left = take(9);
  let text = '';
  for (; left > 1; left -= 2) {
    const pair = take(11);
    text += `${LETTERS[Math.floor(pair / 45)]}${LETTERS[pair % 45]}`;
  }
  return left === 1 ? text + LETTERS[take(6)] : text;
}

describe('codeMark(variant)', () => {
  it.each(['7KQ-2M4-X', '7KQ-2M4-X-inch', '000-000-0', 'ZZZ-ZZZ-Z-mm'])('says %s to a scanner', (variant) => {
    const { size, path } = codeMark(variant);
    expect(size).toBe(SIDE + 2 * QUIET);
    const all = squares(path, size);
    const code = all.slice(QUIET, -QUIET).map((row) => row.slice(QUIET, -QUIET));
    expect(read(code)).toBe(variant.toUpperCase());
  });

  it('is a picture of half a millimetre to a square, for a style sheet', () => {
    const [, data = ''] =
      /^url\("data:image\/svg\+xml,([^"<>]*)"\)$/.exec(codePicture('7KQ-2M4-X-inch')) ?? [];
    const svg = decodeURIComponent(data);
    const { path, size } = codeMark('7KQ-2M4-X-inch');
    expect(svg).toContain(`width="${size / 2}mm" height="${size / 2}mm" viewBox="0 0 ${size} ${size}"`);
    expect(svg).toContain(`<path d="${path}"/>`);
  });

  it('has three finders, and nothing in its quiet zone', () => {
    const { size, path } = codeMark('7KQ-2M4-X');
    const all = squares(path, size);
    const finder = ['#######', '#     #', '# ### #', '# ### #', '# ### #', '#     #', '#######'];
    for (const [top, left] of [
      [QUIET, QUIET],
      [QUIET, QUIET + SIDE - 7],
      [QUIET + SIDE - 7, QUIET],
    ] as const)
      expect(
        all.slice(top, top + 7).map((row) =>
          row
            .slice(left, left + 7)
            .map((one) => (one ? '#' : ' '))
            .join(''),
        ),
      ).toEqual(finder);
    const inside = (at: number) => at >= QUIET && at < QUIET + SIDE;
    for (const [i, row] of all.entries())
      for (const [j, black] of row.entries()) if (!inside(i) || !inside(j)) expect(black).toBe(false);
  });
});
