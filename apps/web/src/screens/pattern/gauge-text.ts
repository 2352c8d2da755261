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

/** `20 sts and 28 rows = 4 in`, as people write it; `20 sts = 4 in` where there are no rows. */
export const printGauge = ({ stitches, rows, overMm }: Counted): string => {
  const unit = isInches(overMm) ? 'in' : 'cm';
  const more = rows === undefined ? '' : ` and ${formatCount(rows)} rows`;
  return `${formatCount(stitches)} sts${more} = ${formatExact(mm(overMm), { unit })}`;
};

/** Rows over another length than the stitches are brought to the stitches' length. */
export const asGauge = (stitches: CountOver, rows: CountOver | null): Counted => ({
  stitches: stitches.count,
  ...(rows && {
    rows: rows.over === stitches.over ? rows.count : (rows.count * stitches.over) / rows.over,
  }),
  overMm: stitches.over,
});

/** Reads a pattern's gauge; stitches are needed, and rows may be missing, as they are in many patterns. */
export const readGauge = (text: string, field: string): Result<Counted> => {
  const read = parseCountOver(text, { field });
  if (!read.ok) return read;
  const { stitches, rows } = read.value;
  if (stitches !== null) return { ok: true, value: asGauge(stitches, rows) };
  return {
    ok: false,
    faults: [
      {
        code: 'gauge-half',
        field,
        given: text,
        problem: 'the stitches are missing',
        mend: 'Write both, such as 20 sts and 28 rows = 4 in, or the stitches alone.',
      },
    ],
  };
};
