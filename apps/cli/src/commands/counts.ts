import { fail, ok, type Result } from '@dryflat/engine/units';
import { inEachSize } from '@dryflat/record';
import { refused, type Units } from '../faults.ts';
import { called, openRecord } from '../files.ts';
import { countsJson } from '../json/counts-json.ts';
import { faultsIn, oneOf } from '../options.ts';
import { countsReport } from '../print/counts-report.ts';
import { styleFor } from '../print/style.ts';
import type { Words } from '../print/words.ts';
import { done, type Ending, type Surroundings } from '../surroundings.ts';
import { type ToldCounts, tellCounts } from './told-counts.ts';
import { doubtsOf, sizedBy } from './which-size.ts';

/** Options as they are typed. */
export interface CountsFlags {
  readonly json?: boolean;
  readonly piece?: string;
  readonly size?: string;
  readonly units: string;
  readonly words: string;
}

const readFlags = (flags: CountsFlags): Result<{ units: Units; words: Words }> => {
  const units = oneOf('--units', flags.units, ['cm', 'in'] as const);
  const words = oneOf('--words', flags.words, ['us', 'uk'] as const);
  if (units.ok && words.ok) return ok({ units: units.value, words: words.value });
  return fail(...faultsIn(units, words));
};

/** `dryflat counts FILE`: stitches and rows of every piece at the knitter's own gauge, as instructions or JSON. */
export const countsCommand = async (
  path: string,
  flags: CountsFlags,
  surroundings: Surroundings,
): Promise<Ending> => {
  const chosen = readFlags(flags);
  if (!chosen.ok) return refused('dryflat counts', chosen.faults);
  const { units, words } = chosen.value;
  const opened = await openRecord(path, surroundings);
  if (!opened.ok) return refused(called(path), opened.faults, units);
  const sized = sizedBy(opened.value.record, flags.size);
  if (!sized.ok) return refused(called(path), sized.faults, units);
  const told: ToldCounts[] = [];
  for (const record of inEachSize(sized.value)) {
    const counted = tellCounts(record, flags.piece);
    if (!counted.ok) return refused(called(path), counted.faults, units);
    told.push(counted.value);
  }
  const known = [...opened.value.notices, ...doubtsOf(sized.value)];
  const telling = { units, words, style: styleFor(surroundings.colours) };
  return done(
    flags.json ? countsJson(told, known, { units, words }) : countsReport(told, known, telling),
  );
};
