import { type PaceForecast, paceCalendar, paceForecast, pacePlan } from '@dryflat/engine/routes';
import type { Result } from '@dryflat/engine/units';
import { goingOut } from '@dryflat/record';
import { refused } from '../faults.ts';
import { called, save, written } from '../files.ts';
import { paceJson, type ToldPace } from '../json/pace-json.ts';
import { paceReport } from '../print/pace-report.ts';
import { styleFor } from '../print/style.ts';
import { done, type Ending, type Surroundings } from '../surroundings.ts';
import { type AskedRoutes, dayOption, openRoutes } from './asked-routes.ts';
import { notWritten } from './which-size.ts';

/** Options as they are typed. */
export interface PaceFlags {
  readonly json?: boolean;
  readonly calendar?: string;
  readonly force?: boolean;
  readonly today?: string;
  readonly size?: string;
}

/** When it is done as planned. */
export const tellPace = (
  { question }: Pick<AskedRoutes, 'question'>,
  options: { readonly draws?: number } = {},
): Result<PaceForecast> => {
  const asked = pacePlan(question, options);
  return asked.ok ? paceForecast(asked.value, options) : asked;
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
  const unsaved = await save([[path, calendar.value]], flags, surroundings);
  return unsaved ?? done(out, written([path]));
};

/** `dryflat pace FILE`: when it is done as planned, as a list, as JSON, and as a calendar. */
export const paceCommand = async (
  path: string,
  flags: PaceFlags,
  surroundings: Surroundings,
): Promise<Ending> => {
  const day = dayOption(flags.today ?? surroundings.today());
  if (!day.ok) return refused('dryflat pace', day.faults);
  const asking = { today: day.value, said: flags.today !== undefined, size: flags.size };
  const opened = await openRoutes(path, asking, surroundings);
  if (!opened.ok) return refused(called(path), opened.faults);
  const told: ToldPace[] = [];
  for (const asked of opened.value.asked) {
    const forecast = tellPace(asked);
    if (!forecast.ok) return refused(called(path), forecast.faults);
    told.push({ ...asked, forecast: forecast.value });
  }
  const out = flags.json ? paceJson(told) : paceReport(told, styleFor(surroundings.colours));
  if (told.length > 1) return done(out, notWritten(flags.calendar));
  const [{ forecast, ...asked }] = told as [ToldPace];
  const calendar = flags.calendar === undefined ? null : calendarOf(asked, forecast, day.value);
  return finished(flags, out, calendar, surroundings);
};
