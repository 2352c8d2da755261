import type { Misprint, PrintedGauge, SizeCell, SizeRow, SizeTable } from '@dryflat/engine/garment';
import { ownValue } from '@dryflat/engine/units';

/** What the knitter mended in a reading before it is taken over. */
export interface Mends {
  /** Unit of numbers that name none. */
  readonly unit?: 'cm' | 'in';
  /** Landmarks by row key. */
  readonly landmarks: Readonly<Record<string, string>>;
  /** Values by cell key; null for a cell that was emptied. */
  readonly values: Readonly<Record<string, number | null>>;
  /** Row keys: true for rows left out, false for rows that were put in by hand. */
  readonly out: Readonly<Record<string, boolean>>;
  /** Which of several gauges is the main one. */
  readonly gauge?: number;
}

export const NO_MENDS: Mends = { landmarks: {}, values: {}, out: {} };

/** Reads what was kept of them; anything else counts as none. */
export const readMends = (text: string | null): Mends => {
  if (text === null) return NO_MENDS;
  try {
    return { ...NO_MENDS, ...(JSON.parse(text) as Partial<Mends>) };
  } catch {
    return NO_MENDS;
  }
};

/** One row of a reading with what was mended in it. */
export interface ReadRow {
  readonly key: string;
  readonly row: SizeRow;
  readonly landmark: string;
  readonly values: readonly (number | null)[];
  readonly out: boolean;
}

/** Names a row by its name, and by its turn where a name comes twice. */
const rowKeys = (rows: readonly SizeRow[]): string[] =>
  rows.map(({ name }, at) => {
    const turn = rows.slice(0, at).filter((each) => each.name === name).length;
    return turn === 0 ? name : `${name}#${turn + 1}`;
  });

/** Names a cell so that a mend falls away when the text under it changes. */
export const cellKey = (rowKey: string, size: number, cell: SizeCell | undefined): string =>
  `${rowKey}/${size}/${cell?.text ?? ''}`;

/** The rows of a table with the knitter's mends applied. */
export const readRows = (table: SizeTable, mends: Mends): ReadRow[] => {
  const keys = rowKeys(table.rows);
  return table.rows.map((row, at) => {
    const key = keys[at] ?? row.name;
    return {
      key,
      row,
      landmark: ownValue(mends.landmarks, key) ?? row.landmark,
      values: table.sizes.map((_, size) => {
        const mended = mends.values[cellKey(key, size, row.cells[size])];
        return mended === undefined ? (row.cells[size]?.mm ?? null) : mended;
      }),
      out: ownValue(mends.out, key) ?? row.measures === 'body',
    };
  });
};

/** Misprints whose cell nobody has decided on yet. */
export const openMisprints = (
  table: SizeTable,
  rows: readonly ReadRow[],
  mends: Mends,
): Misprint[] =>
  table.misprints.filter(({ row, size }) => {
    const read = rows[row];
    return (
      read !== undefined &&
      !read.out &&
      mends.values[cellKey(read.key, size, read.row.cells[size])] === undefined
    );
  });

/** A gauge that can be taken over: it says its stitches. */
export type WholeGauge = PrintedGauge & {
  readonly stitches: NonNullable<PrintedGauge['stitches']>;
};

/** The gauges of a text that say their stitches, in its order. */
export const wholeGauges = ({ gauges }: Pick<SizeTable, 'gauges'>): WholeGauge[] =>
  gauges.filter((each): each is WholeGauge => each.stitches !== null);

/** The gauge that is taken over: as the knitter chose, else the first that is not said to be unwashed. */
export const mainGauge = (
  table: Pick<SizeTable, 'gauges'>,
  { gauge }: Mends,
): WholeGauge | null => {
  const all = wholeGauges(table);
  const first = all.find(({ state }) => state !== 'asKnit') ?? all[0] ?? null;
  return gauge === undefined ? first : (all[gauge] ?? first);
};

/** Gauges of a text that stay out of the pattern, which has one, as they stand there. */
export const gaugesLeftOut = (
  text: string,
  { gauges }: Pick<SizeTable, 'gauges'>,
  mends: Mends,
): string[] => {
  const main = mainGauge({ gauges }, mends);
  const out = gauges.filter((each) => main !== null && each !== main);
  return [...new Set(out.map(({ from }) => text.slice(...from).replace(/[\s,;]+$/, '')))];
};
