import { describe, expect, it } from 'vitest';
import { work } from '../../../src/index.js';

describe('indexing', () => {
  const plates = '15,16,17,18,19,20,21,23,27,29,31,33,37,39,41,43,47,49';
  // Brown & Sharpe and Machinery's Handbook index tables, from memory; US Army OD1644 (read) for 42 on a 21 circle.
  const rows: [number, number, number, number][] = [
    [3, 13, 13, 39],
    [7, 5, 35, 49],
    [9, 4, 12, 27],
    [13, 3, 3, 39],
    [22, 1, 27, 33],
    [32, 1, 5, 20],
    [42, 0, 20, 21],
    [56, 0, 35, 49],
    [60, 0, 26, 39],
    [64, 0, 10, 16],
    [95, 0, 8, 19],
    [144, 0, 5, 18],
    [164, 0, 10, 41],
    [180, 0, 6, 27],
  ];
  it.each(rows)('%i divisions on a 40:1 head: %i turns and %i in %i', (divisions, turns, holes, circle) => {
    const { found } = work('dividing.simple', { divisions, ratio: 40, circles: plates });
    expect(found.turns).toBe(turns);
    expect(found.settings).toContainEqual({ holes, circle });
  });

  // A rotary-table manual (read): 17, 19 and 53 divisions at 90:1.
  it.each([
    [17, 5, 10, 34],
    [19, 4, 28, 38],
    [53, 1, 37, 53],
  ])('%i divisions at 90:1: %i turns and %i in %i', (divisions, turns, holes, circle) => {
    const { found } = work('dividing.simple', { divisions, ratio: 90, circles: [34, 38, 53] });
    expect(found).toMatchObject({ turns, settings: [{ holes, circle }] });
  });

  it('cannot do 25 at 72:1 on 33, 35, 36, 37, 39: a published practice sheet asks it all the same', () =>
    expect(
      work('dividing.simple', { divisions: 25, ratio: 72, circles: '33,35,36,37,39' }).found.possible,
    ).toBe(false));

  it('reaches every count to 50 on the three plates at 40:1, as the index tables say, and 96 not', () => {
    for (let divisions = 2; divisions <= 50; divisions++)
      expect(work('dividing.simple', { divisions, ratio: 40, circles: plates }).found.possible).toBe(true);
    expect(work('dividing.simple', { divisions: 96, ratio: 40, circles: plates }).found.possible).toBe(false);
  });

  it('the tally ends on the head’s whole ratio and marks quarters', () => {
    const rows = work('dividing.tally', { divisions: 60, ratio: 40, circles: '18' }).found.rows as Record<
      string,
      unknown
    >[];
    expect(rows[15]).toMatchObject({ tooth: 15, turns: 10, holes: 0, angle: '90° 0′ 0″', quarter: true });
    expect(rows.at(-1)).toMatchObject({ tooth: 60, turns: 40, holes: 0, quarter: true });
    expect(rows.filter((row) => row.quarter)).toHaveLength(5);
  });
});
