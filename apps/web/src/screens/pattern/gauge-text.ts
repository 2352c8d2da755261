import {
  type CountOver,
  formatExact,
  mm,
  parseCountOver,
  type Result,
} from '@dryflat/engine/units';
import type { PatternGauge } from '@dryflat/record';
import { formatCount } from '../../kit/parse-count.ts';

type Counted = Pick<PatternGauge, 'stitches' | 'rows' | 'overMm'>;

/** 4 in and 1 in, to a twentieth of a millimetre, are printed as such; all else in centimetres. */
const isInches = (overMm: number): boolean =>
  Math.abs(overMm - 101.6) < 0.05 || Math.abs(overMm - 25.4) < 0.05;

/** `20 sts and 28 rows = 4 in`, as people write it. */
export const printGauge = ({ stitches, rows, overMm }: Counted): string =>
  `${formatCount(stitches)} sts and ${formatCount(rows)} rows = ${formatExact(mm(overMm), { unit: isInches(overMm) ? 'in' : 'cm' })}`;

const missing = (given: string, field: string, what: 'stitches' | 'rows'): Result<never> => ({
  ok: false,
  faults: [
    {
      code: 'gauge-half',
      field,
      given,
      problem: `the ${what} are missing`,
      mend:
        what === 'rows'
          ? 'Write both, such as 20 sts and 28 rows = 4 in. Where the pattern gives no rows, 1.4 rows to a stitch of stockinette is common (no source).'
          : 'Write both, such as 20 sts and 28 rows = 4 in.',
    },
  ],
});

/** Rows over another length than the stitches are brought to the stitches' length. */
const joined = (stitches: CountOver, rows: CountOver): Counted => ({
  stitches: stitches.count,
  rows: (rows.count * stitches.over) / rows.over,
  overMm: stitches.over,
});

/** Reads a pattern's gauge; both stitches and rows are needed. */
export const readGauge = (text: string, field: string): Result<Counted> => {
  const read = parseCountOver(text, { field });
  if (!read.ok) return read;
  const { stitches, rows } = read.value;
  if (stitches === null) return missing(text, field, 'stitches');
  if (rows === null) return missing(text, field, 'rows');
  return { ok: true, value: joined(stitches, rows) };
};
