import type { OutlinePiece } from '@dryflat/engine/garment';
import type {
  ExtentReading,
  GarmentRecord,
  PatternMeasurement,
  Specimen,
} from '../schema/index.ts';
import { awaitsSpan, directionOf, engineSpan, timesToEngine } from '../spans/girths.ts';
import { isOfGarment, outlinePiecesOf, pieceOf } from './piece-of.ts';

/** Stitches that a piece of the garment has at a place, however the pattern would have it. */
export interface CountKnit {
  /** Id of the pattern's measurement. */
  readonly measurement: string;
  /** Over the span that the engine takes the measurement in. */
  readonly stitches: number;
  /** Across the piece, as they were counted. */
  readonly across: number;
  /** What the piece is called. */
  readonly piece: string;
}

/** Places across a piece, widest first where nothing tells which was measured. */
const ACROSS: Readonly<Record<string, readonly string[]>> = {
  back: ['chest', 'waist', 'hip', 'hem', 'cross-back'],
  front: ['chest', 'waist', 'hip', 'hem'],
  sleeve: ['upper-arm', 'cuff'],
  shawl: ['width'],
  blanket: ['width'],
  piece: ['width'],
};

/** Whole pieces across a girth: a back is half of the body, a sleeve is knit all around the arm. */
const times = (piece: string, row: PatternMeasurement): number =>
  engineSpan(row) === 'around' && piece !== 'sleeve' ? 2 : 1;

/** Counts that differ by less are of one place. */
const ALIKE = 0.03;

/** Words for a place that say no more than that it was measured straight across. */
const ANYWHERE =
  /^(in )?(the )?(middle|cent(er|re)|whole|widest|(straight )?across( the)?( (back|front|piece))?|back|front)$/i;

const isAsked = (row: PatternMeasurement, place: string): boolean => {
  const said = place.trim().toLowerCase();
  return [row.name, row.landmark, row.landmark.replaceAll('-', ' ')].some(
    (each) => each.toLowerCase() === said,
  );
};

interface Candidate {
  readonly row: PatternMeasurement;
  readonly stitches: number;
  /** By how much the pattern's count differs, as a share; null where it has none. */
  readonly off: number | null;
}

const candidates = (record: GarmentRecord, piece: OutlinePiece, across: number): Candidate[] => {
  const { measurements, sizes, chosen } = record.pattern;
  const at = chosen === undefined ? 0 : sizes.indexOf(chosen);
  return (ACROSS[piece.name] ?? []).flatMap((landmark) => {
    const row = measurements.find(
      (each) => each.landmark === landmark && directionOf(each) === 'width' && !awaitsSpan(each),
    );
    if (row === undefined || row.worked !== 'counted') return [];
    const printed = row.counts?.[at];
    const stitches = across * times(piece.name, row);
    const off =
      printed == null ? null : Math.abs(stitches / (printed * timesToEngine(row, row.span)) - 1);
    return [{ row, stitches, off }];
  });
};

/**
 * The place that a width was taken at: as it says; else where the pattern has about as many stitches; else, where
 * it has no counts and the knitter named no place, the widest.
 */
const placed = (all: readonly Candidate[], reading: ExtentReading): Candidate | undefined => {
  const place = ANYWHERE.test(reading.place?.trim() ?? '') ? undefined : reading.place;
  if (place !== undefined) {
    const named = all.find(({ row }) => isAsked(row, place));
    if (named !== undefined) return named;
  }
  const near = [...all].sort((a, b) => (a.off ?? 1) - (b.off ?? 1))[0];
  if (near !== undefined && near.off !== null && near.off <= ALIKE) return near;
  return place === undefined ? all[0] : undefined;
};

const isCounted = (reading: Specimen['readings'][number]): reading is ExtentReading =>
  reading.kind === 'extent' &&
  reading.direction === 'width' &&
  reading.read === 'flat' &&
  reading.count !== undefined;

/**
 * What the pieces that are knit, or begun, have across: a whole width with its stitches speaks for the place where
 * it was taken. A front that opens is left out, for its bands are not. The last of several for one place.
 */
export const countsKnit = (record: GarmentRecord): CountKnit[] => {
  const pieces = outlinePiecesOf(record);
  const first = pieces.find(({ name }) => name === 'back') ?? pieces[0];
  const found = record.evidence.filter(isOfGarment).flatMap((specimen) => {
    const piece = pieceOf(pieces, specimen) ?? first;
    if (piece === undefined || (piece.name === 'front' && piece.copies === 2)) return [];
    return specimen.readings.filter(isCounted).flatMap((reading): CountKnit[] => {
      const across = reading.count ?? 0;
      const at = placed(candidates(record, piece, across), reading);
      // As the pattern has it is nothing of its own.
      if (at === undefined || at.off === 0) return [];
      const { row, stitches } = at;
      return [{ measurement: row.id, stitches, across, piece: specimen.name }];
    });
  });
  return found.filter(
    (each, k) => found.findLastIndex((other) => other.measurement === each.measurement) === k,
  );
};
