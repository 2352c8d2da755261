import type { Mark, Place } from '../sheet/sheet.ts';
import type { Rows, Slab } from './block.ts';

export interface Filled {
  readonly heightMm: number;
  readonly draw: (at: Place) => Mark[];
  /** Rows that are still to come. */
  readonly rest: readonly Slab[];
}

/** How many of the rows stand below each other in `heightMm`. */
const countIn = (rows: readonly Slab[], heightMm: number): number => {
  let height = 0;
  const at = rows.findIndex((row) => {
    height += row.heightMm;
    // Sums of row heights land a hair beside themselves.
    return height > heightMm + 1e-6;
  });
  return at === -1 ? rows.length : at;
};

const columnsIn = ({ rows, across }: Rows, heightMm: number): (readonly Slab[])[] => {
  const columns: (readonly Slab[])[] = [];
  let from = 0;
  while (columns.length < across) {
    const count = countIn(rows.slice(from), heightMm);
    columns.push(rows.slice(from, from + count));
    from += count;
  }
  return columns;
};

const sum = (slabs: readonly Slab[]): number => slabs.reduce((all, each) => all + each.heightMm, 0);
const taken = (columns: readonly (readonly Slab[])[]) =>
  columns.reduce((all, column) => all + column.length, 0);

/** Where everything fits, the least height in which it does: columns end about level. */
const evenly = (rows: Rows, heightMm: number): (readonly Slab[])[] => {
  const full = columnsIn(rows, heightMm);
  if (rows.across === 1 || taken(full) < rows.rows.length) return full;
  let [low, high] = [0, heightMm];
  // 20 halvings of a page leave less than a thousandth of a millimetre.
  for (let k = 0; k < 20; k++) {
    const middle = (low + high) / 2;
    if (taken(columnsIn(rows, middle)) === rows.rows.length) high = middle;
    else low = middle;
  }
  return columnsIn(rows, high);
};

/** As many rows as `heightMm` holds, in reading order; none where not even one does. */
export const fill = (rows: Rows, heightMm: number): Filled => {
  const headMm = rows.head?.heightMm ?? 0;
  const columns = evenly(rows, heightMm - headMm);
  const rest = rows.rows.slice(taken(columns));
  return {
    rest,
    heightMm: headMm + Math.max(...columns.map(sum)),
    draw: ({ x, y }) =>
      columns.flatMap((column, k) => {
        if (column.length === 0) return [];
        const left = x + k * (rows.columnMm + rows.gutterMm);
        let top = y + headMm;
        return [
          ...(rows.head?.draw({ x: left, y }) ?? []),
          ...column.flatMap((row) => {
            const marks = row.draw({ x: left, y: top });
            top += row.heightMm;
            return marks;
          }),
        ];
      }),
  };
};
