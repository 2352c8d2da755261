import { type PaceForecast, paceCalendar, paceForecast, pacePlan } from '@dryflat/engine/routes';
import type { Result } from '@dryflat/engine/units';
import { goingOut } from '@dryflat/record';
import { refused } from '../faults.ts';
import { called, save } from '../files.ts';
import { paceJson } from '../json/pace-json.ts';
import { paceReport } from '../print/pace-report.ts';
import { styleFor } from '../print/style.ts';
import { done, type Ending, type Surroundings } from '../surroundings.ts';
import { type AskedRoutes, dayOption, openRoutes } from './asked-routes.ts';

/** Options as they are typed. */
export interface PaceFlags {
  readonly json?: boolean;
  readonly calendar?: string;
  readonly force?: boolean;
  readonly today?: string;
}

const tell = ({ question }: AskedRoutes): Result<PaceForecast> => {
  const asked = pacePlan(question);
  return asked.ok ? paceForecast(asked.value) : asked;
};

/** The calendar counts as made at the start of the day of asking, so that the same day gives the same bytes. */
const calendarOf = (
  { record, question }: AskedRoutes,
  { milestones, yarn }: PaceForecast,
  today: string,
): Result<string> =>
  paceCalendar({
    id: `pace-${record.id.replace(/[^A-Za-z0-9]/g, '-')}`,
    garment: goingOut(record).name,
    nowMs: Date.parse(`${today}T00:00:00Z`),
    revision: record.pace?.log.length ?? 0,
    milestones,
    yarn,
    by: question.by,
  });

const finished = async (
  flags: PaceFlags,
  out: string,
  calendar: Result<string> | null,
  surroundings: Surroundings,
): Promise<Ending> => {
  const path = flags.calendar;
  if (path === undefined || calendar === null) return done(out);
  if (!calendar.ok) return refused(called(path), calendar.faults);
  const saved = await save(path, calendar.value, flags.force ?? false, surroundings);
  return saved.ok ? done(out, `Written to ${path}.\n`) : refused(called(path), saved.faults);
};

/** `dryflat pace FILE`: when it is done as planned, as a list, as JSON, and as a calendar. */
export const paceCommand = async (
  path: string,
  flags: PaceFlags,
  surroundings: Surroundings,
): Promise<Ending> => {
  const day = dayOption(flags.today ?? surroundings.today());
  if (!day.ok) return refused('dryflat pace', day.faults);
  const asked = await openRoutes(
    path,
    { today: day.value, said: flags.today !== undefined },
    surroundings,
  );
  if (!asked.ok) return refused(called(path), asked.faults);
  const told = tell(asked.value);
  if (!told.ok) return refused(called(path), told.faults);
  const answer = { ...asked.value, forecast: told.value };
  const out = flags.json ? paceJson(answer) : paceReport(answer, styleFor(surroundings.colours));
  const calendar =
    flags.calendar === undefined ? null : calendarOf(asked.value, told.value, day.value);
  return finished(flags, out, calendar, surroundings);
};
