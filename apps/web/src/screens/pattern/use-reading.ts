import { type Misprint, readSizeTable, type SizeTable } from '@dryflat/engine/garment';
import { useDeferredValue, useMemo } from 'react';
import { useDraftText, useGarment, useView } from '../../store/index.ts';
import { type Mends, openMisprints, type ReadRow, readMends, readRows } from './reading.ts';

export interface Reading {
  /** The text as pasted or typed; kept on the device until it is taken over. */
  readonly text: string;
  readonly setText: (text: string | null) => void;
  /** What of it has been read; behind `text` for as long as that takes. */
  readonly read: string;
  readonly table: SizeTable;
  readonly rows: readonly ReadRow[];
  readonly misprints: readonly Misprint[];
  readonly mends: Mends;
  readonly mend: (part: Partial<Mends>) => void;
  /** Unit of numbers that name none; null where all name theirs. */
  readonly bareUnit: 'cm' | 'in' | null;
}

const hasBareNumbers = (table: SizeTable): boolean =>
  table.rows.some(({ printed, cells }) => printed.length === 0 && cells.length > 0);

/** The text in the box, read anew as it is typed, with what the knitter mended in it. */
export const useReading = (): Reading => {
  const { kind } = useGarment().record;
  const { units } = useView();
  const [kept, setText] = useDraftText('pattern/paste');
  const [keptMends, setMends] = useDraftText('aside/pattern/paste-mends');
  const text = kept ?? '';
  // Typing goes on while a long text is read.
  const read = useDeferredValue(text);
  const mends = useMemo(() => readMends(keptMends), [keptMends]);
  const unit = mends.unit ?? units;
  const table = useMemo(() => readSizeTable(read, { unit, kind }), [read, unit, kind]);
  const bare = useMemo(() => hasBareNumbers(readSizeTable(read, { kind })), [read, kind]);
  const rows = useMemo(() => readRows(table, mends), [table, mends]);
  return {
    text,
    setText: (next) => {
      setText(next === '' ? null : next);
      if (next === null) setMends(null);
    },
    read,
    table,
    rows,
    misprints: openMisprints(table, rows, mends),
    mends,
    mend: (part) => setMends(JSON.stringify({ ...mends, ...part })),
    bareUnit: bare ? unit : null,
  };
};
