import { FORECAST_STATES, type ForecastState } from '@dryflat/engine/fabric';
import { type Forecast, forecast } from '@dryflat/engine/garment';
import type { Result } from '@dryflat/engine/units';
import { fail, ok } from '@dryflat/engine/units';
import {
  askForecast,
  faultsBesidePhotos,
  type GarmentRecord,
  type GoingOut,
  goingOut,
  inEachSize,
  isDoubt,
  isSizeOpen,
  type Photo,
} from '@dryflat/record';
import { type CleanPicture, cleanPicture } from '@dryflat/record/photo';
import { type GotState, gotOf } from './got.ts';
import { keptBefore, toldBefore } from './kept-before.ts';
import { hoursOf, type YarnUsed, yarnUsed } from './used.ts';

/** A length with the range that it was told with; `mm` is the likeliest. */
export interface Told {
  readonly mm: number;
  readonly p05Mm: number;
  readonly p95Mm: number;
}

export interface ReportRow {
  readonly name: string;
  readonly around: boolean;
  readonly wantedMm: number | null;
  /** Dried. */
  readonly forecast: Told | null;
  readonly got: Readonly<Partial<Record<GotState, number>>>;
}

export interface ReportGauge {
  readonly state: ForecastState;
  /** Width of a stitch and height of a row. */
  readonly stitch: Told;
  readonly row: Told;
  /** True where a swatch or a piece was read in this state. */
  readonly measured: boolean;
}

export interface ReportBody {
  readonly name: string;
  readonly rows: readonly { readonly landmark: string; readonly mm: number }[];
}

export interface ReportPhoto extends Pick<Photo, 'caption' | 'widthPx' | 'heightPx'> {
  /** Clean, whatever the record holds; null where it cannot be read, and then it is told of instead. */
  readonly picture: CleanPicture | null;
}

/** What the designer or the next knitter needs to know. Lengths are mm, masses g. */
export interface Report {
  /** Names nobody, unless that was ticked. */
  readonly title: string;
  readonly pattern: string;
  readonly size: string | null;
  /** Which it may be, where nobody has said: then nothing is wanted and nothing foretold. */
  readonly openSizes: readonly string[];
  readonly needleMm: number | null;
  readonly stitch: string;
  readonly finishedOn: string | null;
  readonly washing: GarmentRecord['plan']['washing'];
  readonly drying: GarmentRecord['plan']['drying'];
  readonly gauge: readonly ReportGauge[];
  readonly patternGauge: GarmentRecord['pattern']['gauge'] | null;
  readonly rows: readonly ReportRow[];
  /** None, as the size is open; kept before the garment was measured; made now; or made now, knowing what came of it. */
  readonly forecastFrom: 'kept' | 'now' | 'hindsight' | 'no-size';
  /** States that something was measured in, in order. */
  readonly states: readonly GotState[];
  readonly yarns: readonly YarnUsed[];
  /** Yarn used in all, where it is known. */
  readonly usedG: number | null;
  readonly hours: number | null;
  readonly changes: string;
  readonly fitNotes: string;
  readonly remarks: readonly { readonly on: string | null; readonly text: string }[];
  readonly photos: readonly ReportPhoto[];
  /** Null unless it was ticked. */
  readonly body: ReportBody | null;
}

export interface ReportGiven {
  /** Whether body measurements and the wearer's name go in; the record's own tick where it is left out. */
  readonly body?: boolean;
  /** Where it is made already. */
  readonly forecast?: Forecast;
}

const told = (range: { p05Mm: number; p50Mm: number; p95Mm: number }): Told => ({
  mm: range.p50Mm,
  p05Mm: range.p05Mm,
  p95Mm: range.p95Mm,
});

const readIn = ({ evidence }: GarmentRecord, state: ForecastState): boolean =>
  evidence.some(({ readings }) =>
    readings.some((each) => 'state' in each && each.kind !== 'hang' && each.state === state),
  );

const gaugeOf = (record: GarmentRecord, { gauge }: Forecast): ReportGauge[] =>
  FORECAST_STATES.map((state) => ({
    state,
    stitch: told(gauge.stitch[state]),
    row: told(gauge.row[state]),
    measured: readIn(record, state),
  }));

const bodyOf = ({ wearer }: GarmentRecord): ReportBody => ({
  name: wearer.name,
  rows: wearer.body.map(({ landmark, mm }) => ({ landmark, mm })),
});

const rowsOf = (record: GarmentRecord, made: Forecast): Pick<Report, 'rows' | 'forecastFrom'> => {
  const kept = keptBefore(record);
  const measured = record.outcomes.some((each) => each.measured.length > 0);
  const open = isSizeOpen(record.pattern);
  const rows = made.measurements.map((each): ReportRow => {
    const now = open ? undefined : each.states.dried;
    const foretold = kept.length === 0 ? now : toldBefore(kept, each.id);
    return {
      name: each.name,
      around: each.direction === 'width' && each.span === 'around',
      wantedMm: open ? null : each.targetMm,
      forecast: foretold === undefined ? null : told(foretold),
      got: gotOf(record, each.id),
    };
  });
  const from = open ? 'no-size' : measured ? 'hindsight' : 'now';
  return { rows, forecastFrom: kept.length > 0 ? 'kept' : from };
};

const GOT_STATES: readonly GotState[] = ['asKnit', 'wet', 'pinned', 'dried', 'worn', 'rewashed'];

const outcomeRemarks = ({ outcomes, finished }: GarmentRecord): Report['remarks'] =>
  [...outcomes, ...(finished === undefined ? [] : [finished])]
    .filter(({ remark }) => remark.trim() !== '')
    .map(({ on, remark }) => ({ on: on ?? null, text: remark }))
    .sort((a, b) => (a.on ?? '').localeCompare(b.on ?? ''));

const photosOf = ({ photos = [], report }: GarmentRecord): ReportPhoto[] => {
  const chosen = new Set(report?.photos ?? []);
  return photos
    .filter(({ id }) => chosen.has(id))
    .map(({ caption, widthPx, heightPx, data }) => ({
      caption,
      widthPx,
      heightPx,
      picture: cleanPicture(data),
    }));
};

/** The same with everything that the knitter wrote as others may read it. */
const asSaid = (full: Report, said: GoingOut['said']): Report => ({
  ...full,
  pattern: said(full.pattern),
  size: full.size === null ? null : said(full.size),
  openSizes: full.openSizes.map(said),
  rows: full.rows.map((row) => ({ ...row, name: said(row.name) })),
  yarns: full.yarns.map((yarn) => ({
    ...yarn,
    name: said(yarn.name),
    dyeLots: yarn.dyeLots.map(said),
  })),
  changes: said(full.changes),
  fitNotes: said(full.fitNotes),
  remarks: full.remarks.map(({ on, text }) => ({ on, text: said(text) })),
  photos: full.photos.map((photo) => ({ ...photo, caption: said(photo.caption) })),
});

/** Parts of a record that are read here and by no forecast; photos that cannot be read are told of instead. */
const ALSO_READ = /^(forecasts|finished)\b/;

/**
 * Gathers the report of a garment. Body measurements and names of persons go in only where that is
 * ticked; else they are taken out of what the knitter wrote as well. Where the size is open it says so, and leaves out what hangs on it. Fails as
 * `askForecast` does else, and with the faults of what else is read.
 */
export const reportOf = (record: GarmentRecord, given: ReportGiven = {}): Result<Report> => {
  // Where the size is open, what hangs on it is left out; the rest is the same in every one.
  const [first = record] = inEachSize(record);
  const asked = askForecast(first);
  if (!asked.ok) return asked;
  const faults = faultsBesidePhotos(record).filter(
    (fault) => !isDoubt(fault) && ALSO_READ.test(fault.field),
  );
  if (faults.length > 0) return fail(...faults);
  const made = given.forecast ?? forecast(asked.value);
  const withBody = given.body ?? record.report?.body ?? false;
  const { name, said } = goingOut(record, withBody);
  const measured = rowsOf(record, made);
  const full: Report = {
    title: name,
    pattern: record.pattern.name,
    size: record.pattern.chosen ?? null,
    openSizes: isSizeOpen(record.pattern) ? record.pattern.sizes : [],
    needleMm: record.needleMm ?? null,
    stitch: record.stitch,
    finishedOn: record.finished?.on ?? null,
    washing: record.plan.washing,
    drying: record.plan.drying,
    gauge: gaugeOf(record, made),
    patternGauge: record.pattern.gauge ?? null,
    ...measured,
    states: GOT_STATES.filter((state) => measured.rows.some(({ got }) => got[state] !== undefined)),
    ...yarnUsed(record),
    hours: hoursOf(record),
    changes: record.report?.changes ?? '',
    fitNotes: record.report?.fitNotes ?? '',
    remarks: outcomeRemarks(record),
    photos: photosOf(record),
    body: withBody ? bodyOf(record) : null,
  };
  return ok(asSaid(full, said));
};
