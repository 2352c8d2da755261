import { DEFAULT_DRAWS, DEFAULT_SEED, forecastEach } from '@dryflat/engine/garment';
import { explain, type Fault, fail, ok, type Result } from '@dryflat/engine/units';
import {
  askEachSize,
  faultsOf,
  type GarmentRecord,
  inSize,
  markedText,
  mustBeMended,
} from '@dryflat/record';
import { eachSizeJson } from '../json/forecast-json.ts';
import { eachSizeReport } from '../print/each-size.ts';
import type { Reporting } from '../print/report.ts';

const noSuchSize = (given: string, sizes: readonly string[]): Fault => ({
  code: 'size-not-in-pattern',
  field: '--size',
  given,
  problem: 'the pattern has no size of this name',
  mend:
    sizes.length === 0
      ? 'Enter its sizes in pattern.sizes first.'
      : `Choose one of ${sizes.map((size) => `"${size}"`).join(', ')}.`,
});

/** The record as if the size of `--size` were being knit; the file itself stays as it is. */
export const sizedBy = (record: GarmentRecord, size: string | undefined): Result<GarmentRecord> => {
  if (size === undefined) return ok(record);
  const { sizes } = record.pattern;
  return sizes.includes(size) ? ok(inSize(record, size)) : fail(noSuchSize(size, sizes));
};

/** Doubts and open questions of a record, a sentence each. */
export const doubtsOf = (record: GarmentRecord): string[] =>
  faultsOf(record)
    .filter((each) => !mustBeMended(each))
    .map(explain);

/** What is said of a file that would hang on a size that nobody has chosen. */
export const notWritten = (file: string | undefined): string =>
  file === undefined
    ? ''
    : `${markedText(file)} is not written: it hangs on the size. Add --size.\n`;

export interface Whichever extends Reporting {
  readonly json?: boolean | undefined;
  readonly seed?: number;
  readonly draws?: number;
}

/**
 * What is told in place of an answer that hangs on the size: which it may be, each with its chance and what it
 * would measure. Null where the size is known.
 */
export const whichSize = (
  record: GarmentRecord,
  notices: readonly string[],
  { json, seed = DEFAULT_SEED, draws = DEFAULT_DRAWS, ...told }: Whichever,
): Result<string> | null => {
  const each = askEachSize(record);
  if (!each?.ok) return each;
  const answer = forecastEach(each.value, { seed, draws });
  return ok(
    json
      ? eachSizeJson(record, answer, notices, told.units)
      : eachSizeReport(record, answer, notices, told),
  );
};
