import type { Fault } from '../../units/index.ts';
import { tableFault } from './reading.ts';
import type { SizeRow } from './types.ts';

/** How many values most rows have; the larger number where two are as common. 0 without rows. */
export function commonCount(rows: readonly SizeRow[]): number {
  const counts = new Map<number, number>();
  for (const { cells } of rows) counts.set(cells.length, (counts.get(cells.length) ?? 0) + 1);
  counts.delete(0);
  const [best] = [...counts].sort(([a, often], [b, oftenB]) => oftenB - often || b - a);
  return best?.[0] ?? 0;
}

const UNIT_NAMES = { in: 'inches', cm: 'cm', mm: 'mm' } as const;

const many = (count: number, noun: string): string => `${count} ${noun}${count === 1 ? '' : 's'}`;

function miscounted(row: SizeRow, given: number, unit: string, sizes: number): Fault {
  const mend =
    given === 1
      ? 'Say whether it holds for every size, and type it into each.'
      : given < sizes
        ? 'Find the missing ones, or put a dash where a size has none.'
        : 'Take out what does not belong, or add the missing size.';
  const problem = `${many(given, 'value')}${unit} for ${many(sizes, 'size')}`;
  return tableFault('size-count', row.name || 'size table', '', problem, mend);
}

/** Adds a fault for each printed version whose number of values is not the number of sizes. */
export function checkCounts(row: SizeRow, sizes: number): SizeRow {
  const versions =
    row.printed.length > 0
      ? row.printed
      : row.cells.length > 0
        ? [{ unit: null, cells: row.cells }]
        : [];
  const faults = versions
    .filter(({ cells }) => cells.length !== sizes)
    .map(({ unit, cells }) =>
      miscounted(row, cells.length, unit ? ` in ${UNIT_NAMES[unit]}` : '', sizes),
    );
  return faults.length > 0 ? { ...row, faults: [...row.faults, ...faults] } : row;
}
