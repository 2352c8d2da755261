import type { RoutesQuestion } from '@dryflat/engine/routes';
import { explain, type Fault, fail, ok, type Result } from '@dryflat/engine/units';
import { faultsOf, type GarmentRecord, mustBeMended } from '@dryflat/record';
import { askRoutes, routesAssumed } from '@dryflat/record/routes';
import { openRecord } from '../files.ts';
import type { Surroundings } from '../surroundings.ts';

/** A record with the question of what to do now, and what is to be said beside the answer. */
export interface AskedRoutes {
  readonly record: GarmentRecord;
  readonly question: RoutesQuestion;
  readonly notices: readonly string[];
}

const notADay = (given: string): Fault => ({
  code: 'option-unusable',
  field: '--today',
  given,
  problem: 'this is no day of the calendar',
  mend: 'Write it like 2031-04-09.',
});

/** A day of the calendar as ISO 8601 writes it. */
export const dayOption = (given: string): Result<string> => {
  const time = Date.parse(`${given}T00:00:00Z`);
  const is = /^\d{4}-\d{2}-\d{2}$/.test(given) && !Number.isNaN(time);
  return is && new Date(time).toISOString().startsWith(given) ? ok(given) : fail(notADay(given));
};

/** The day to plan from: as it is said on the command line, else the file's own, else today. */
export interface Asking {
  readonly today: string;
  /** True: said on the command line, so that it goes before the file's. */
  readonly said: boolean;
}

/** The question in a file, asked on a day. */
export const openRoutes = async (
  path: string,
  { today, said }: Asking,
  surroundings: Surroundings,
): Promise<Result<AskedRoutes>> => {
  const opened = await openRecord(path, surroundings);
  if (!opened.ok) return opened;
  const { record } = opened.value;
  const asked = askRoutes(record, today);
  if (!asked.ok) return asked;
  const doubts = faultsOf(record)
    .filter((each) => !mustBeMended(each))
    .map(explain);
  const notices = [...opened.value.notices, ...routesAssumed(record), ...doubts];
  const question = said ? { ...asked.value, from: today } : asked.value;
  return ok({ record, question, notices });
};
