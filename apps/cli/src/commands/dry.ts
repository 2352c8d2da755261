import { dryingCalendar, forecastDrying } from '@dryflat/engine/drying';
import { ok, type Result } from '@dryflat/engine/units';
import { type Drying, type GarmentRecord, goingOut } from '@dryflat/record';
import { askDrying } from '@dryflat/record/dry';
import { refused } from '../faults.ts';
import { called, openRecord, save, written } from '../files.ts';
import { dryJson } from '../json/dry-json.ts';
import { wholeNumber } from '../options.ts';
import { dryReport } from '../print/dry-report.ts';
import { styleFor } from '../print/style.ts';
import { done, type Ending, type Surroundings } from '../surroundings.ts';
import type { ToldDrying } from './told-drying.ts';

/** Options as they are typed. */
export interface DryFlags {
  readonly json?: boolean;
  readonly calendar?: string;
  readonly force?: boolean;
  readonly weighings?: string;
}

/** More than a record holds. */
const ALL = 1000;

const firstWeighings = (drying: Drying, count: number): Drying => ({
  ...drying,
  weighings: [...drying.weighings]
    .sort((a, b) => Date.parse(a.at) - Date.parse(b.at))
    .slice(0, count),
});

/** The record with its last drying as it stood after so many weighings. */
const asItStood = (record: GarmentRecord, count: number): GarmentRecord => {
  const dryings = record.dryings ?? [];
  return { ...record, dryings: dryings.map((each) => firstWeighings(each, count)) };
};

/** When the last drying of a record is over. */
export const tellDrying = (record: GarmentRecord): Result<ToldDrying> => {
  const drying = record.dryings?.at(-1);
  const asked = askDrying(record, drying?.id ?? 'none');
  if (!asked.ok || drying === undefined) return asked as Result<never>;
  const told = forecastDrying(asked.value);
  return told.ok ? ok({ record, drying, forecast: told.value }) : told;
};

/** The calendar counts as made at the last weighing, so that the same file gives the same bytes. */
const calendarOf = ({ record, drying, forecast }: ToldDrying): Result<string> =>
  dryingCalendar({
    id: `drying-${drying.id.replace(/[^A-Za-z0-9]/g, '-')}`,
    garment: goingOut(record).name,
    startMs: Date.parse(drying.begun),
    nowMs: Math.max(...[drying.begun, ...drying.weighings.map(({ at }) => at)].map(Date.parse)),
    revision: drying.weighings.length,
    marks: forecast.marks,
  });

/** `dryflat dry FILE`: when the last drying of a record is over, as a list, as JSON, and as a calendar. */
export const dryCommand = async (
  path: string,
  flags: DryFlags,
  surroundings: Surroundings,
): Promise<Ending> => {
  const count = wholeNumber('--weighings', flags.weighings ?? `${ALL}`, 0, ALL);
  if (!count.ok) return refused('dryflat dry', count.faults);
  const opened = await openRecord(path, surroundings);
  if (!opened.ok) return refused(called(path), opened.faults);
  const told = tellDrying(asItStood(opened.value.record, count.value));
  if (!told.ok) return refused(called(path), told.faults);
  const out = flags.json
    ? dryJson(told.value)
    : dryReport(told.value, styleFor(surroundings.colours));
  if (flags.calendar === undefined) return done(out);
  const calendar = calendarOf(told.value);
  if (!calendar.ok) return refused(called(path), calendar.faults);
  const unsaved = await save([[flags.calendar, calendar.value]], flags, surroundings);
  return unsaved ?? done(out, written([flags.calendar]));
};
