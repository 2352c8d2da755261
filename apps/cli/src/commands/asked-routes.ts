import type { RoutesQuestion } from '@dryflat/engine/routes';
import { type Fault, fail, ok, type Result } from '@dryflat/engine/units';
import { type GarmentRecord, inEachSize } from '@dryflat/record';
import { askRoutes, routesAssumed } from '@dryflat/record/routes';
import { openRecord } from '../files.ts';
import type { Surroundings } from '../surroundings.ts';
import { doubtsOf, sizedBy } from './which-size.ts';

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
  /** As if this one were knit. */
  readonly size: string | undefined;
}

export interface OpenedRoutes {
  /** As it is, its size open or not. */
  readonly record: GarmentRecord;
  readonly notices: readonly string[];
  /** Once for each size where it is open. */
  readonly asked: readonly AskedRoutes[];
}

/** The question in a file, asked on a day. */
export const openRoutes = async (
  path: string,
  { today, said, size }: Asking,
  surroundings: Surroundings,
): Promise<Result<OpenedRoutes>> => {
  const opened = await openRecord(path, surroundings);
  if (!opened.ok) return opened;
  const sized = sizedBy(opened.value.record, size);
  if (!sized.ok) return sized;
  const record = sized.value;
  const notices = [...opened.value.notices, ...routesAssumed(record), ...doubtsOf(record)];
  const asked: AskedRoutes[] = [];
  for (const each of inEachSize(record)) {
    const question = askRoutes(each, today);
    if (!question.ok) return question;
    const { value } = question;
    asked.push({ record: each, question: said ? { ...value, from: today } : value, notices });
  }
  return ok({ record, notices, asked });
};
