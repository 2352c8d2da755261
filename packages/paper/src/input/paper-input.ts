import type { BlockPlan } from '@dryflat/engine/blocking';
import {
  type Forecast,
  findLandmark,
  forecast,
  LANDMARKS_OF,
  type OutlinePiece,
  type OutlineSizes,
  outlineOf,
  outlineSizes,
} from '@dryflat/engine/garment';
import { explain, ok, type Result } from '@dryflat/engine/units';
import {
  askForecast,
  directionOf,
  faultsBesidePhotos,
  type GarmentRecord,
  type GoingOut,
  goingOut,
  mayGoAround,
  mustBeMended,
} from '@dryflat/record';
import { type Drawing, drawingOf, forecastSizes, wantedSizes } from '../schematic/index.ts';

/** A line of the measuring sheet: a landmark of the pattern, or a usual one of its kind. */
export interface BlankRow {
  /** As the pattern calls it; empty for a usual one, which goes by its landmark's name. */
  readonly name: string;
  readonly landmark: string;
  /** True where the number may be meant flat or around. */
  readonly girth: boolean;
  readonly direction: 'width' | 'length';
}

/** What a page to fill in needs: no number, and so no forecast. Names nobody, unless that was ticked. */
export interface BlankInput {
  readonly name: string;
  readonly size: string | null;
  readonly drawing: Drawing;
  readonly rows: readonly BlankRow[];
}

/** Everything of a record that the other pages are made of. */
export interface PaperInput extends BlankInput {
  readonly forecast: Forecast;
  /** Wanted and forecast, the second in the state dried. */
  readonly dried: Drawing;
  /** Each piece as it is to lie pinned; none where nobody gave any size. */
  readonly asPinned: readonly OutlinePiece[];
  readonly plan: BlockPlan | null;
  /** What is doubtful in the file, and what the forecast has to say but for its cautions, as sentences. */
  readonly notices: readonly string[];
}

const rowsOf = ({ pattern, kind }: GarmentRecord, said: GoingOut['said']): BlankRow[] =>
  pattern.measurements.length > 0
    ? pattern.measurements.map((each) => ({
        name: said(each.name),
        landmark: each.landmark,
        girth: mayGoAround(each),
        direction: directionOf(each) ?? 'width',
      }))
    : LANDMARKS_OF[kind].map((id) => {
        const { girth, direction } = findLandmark(id)!;
        return { name: '', landmark: id, girth, direction };
      });

/** Usual sizes of the landmarks that are to be drawn: they shape the drawing and are never printed. */
const usualSizes = ({ kind }: GarmentRecord, rows: readonly BlankRow[]): OutlineSizes => {
  const drawn = new Set(rows.map(({ landmark }) => landmark));
  const usual = outlineOf(kind, {}).assumed.filter(({ landmark }) => drawn.has(landmark));
  return Object.fromEntries(usual.map(({ landmark, mm }) => [landmark, mm])) as OutlineSizes;
};

const sizesAsked = (record: GarmentRecord): OutlineSizes => {
  const asked = askForecast(record);
  if (!asked.ok) return {};
  const { chosen, measurements } = asked.value;
  return outlineSizes(measurements.map((each) => ({ ...each, mm: each.values[chosen] ?? null })));
};

/** What the measuring sheet is made of. Never fails: a record without a number has its landmarks. */
export const blankInput = (record: GarmentRecord): BlankInput => {
  const { name, said } = goingOut(record);
  const rows = rowsOf(record, said);
  const sizes = { ...usualSizes(record, rows), ...sizesAsked(record) };
  const { chosen } = record.pattern;
  return {
    name,
    size: chosen === undefined ? null : said(chosen),
    drawing: drawingOf(record.kind, sizes, null),
    rows,
  };
};

export interface PaperGiven {
  /** The plan of the mat; null where there is none, and then no page of pins. */
  readonly plan: BlockPlan | null;
  /** Of that plan: what else should be said with it. */
  readonly notices?: readonly string[];
  /** Where it is made already; else it is made here, as the forecast of a file is. */
  readonly forecast?: Forecast;
}

const piecesAsPinned = (record: GarmentRecord, made: Forecast): readonly OutlinePiece[] => {
  const sized = made.measurements.filter(({ targetMm }) => targetMm !== null);
  const sizes = outlineSizes(
    sized.map(({ landmark, span, pinnedMm, targetMm }) => ({
      landmark,
      span,
      mm: pinnedMm ?? targetMm,
    })),
  );
  const { pieces } = outlineOf(record.kind, sizes);
  const given = pieces.some(({ dimensions }) => dimensions.some(({ assumed }) => !assumed));
  return given ? pieces : [];
};

/** Gathers what the pages are made of. Fails as `askForecast` does. Takes the time of a forecast. */
export const paperInput = (
  record: GarmentRecord,
  { plan, notices = [], forecast: given }: PaperGiven,
): Result<PaperInput> => {
  const asked = askForecast(record);
  if (!asked.ok) return asked;
  const made = given ?? forecast(asked.value);
  const doubts = faultsBesidePhotos(record)
    .filter((each) => !mustBeMended(each))
    .map(explain);
  const { said } = goingOut(record);
  const measurements = made.measurements.map((each) => ({ ...each, name: said(each.name) }));
  return ok({
    ...blankInput(record),
    forecast: { ...made, measurements },
    dried: drawingOf(record.kind, wantedSizes(made), forecastSizes(made, 'dried')),
    asPinned: piecesAsPinned(record, made),
    plan,
    notices: [
      // What is said of one reading stands beside it, where it is entered.
      ...made.notices
        .filter(({ code, about }) => about === undefined && !code.startsWith('caution-'))
        .map(({ text }) => text),
      ...notices,
      ...doubts,
    ].map(said),
  });
};
