/**
 * Shares columns out among bands, each no wider than there is room for: as few as can be, and then as even as can be.
 *
 * @param room a column that is wider has a band to itself
 */
export function bands<T extends { readonly width: number }>(columns: readonly T[], room: number): T[][] {
  const fewest = filled(columns, room).length;
  const even = columns.reduce((sum, { width }) => sum + width, 0) / Math.max(1, fewest);
  for (let narrow = even; narrow < room; narrow += room / 40) {
    const shared = filled(columns, narrow);
    if (shared.length <= fewest) return shared;
  }
  return filled(columns, room);
}

function filled<T extends { readonly width: number }>(columns: readonly T[], room: number): T[][] {
  const all: T[][] = [];
  let left = 0;
  for (const column of columns) {
    const band = all.at(-1);
    if (band && column.width <= left) band.push(column);
    else {
      all.push([column]);
      left = room;
    }
    left -= column.width;
  }
  return all;
}
