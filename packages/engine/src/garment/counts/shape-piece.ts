import type { BaseCounts } from './base-counts.ts';
import { type EdgeEvent, type EdgeFit, fitEdge } from './fit-edge.ts';
import type { PieceShape } from './piece-shape.ts';
import type { RowEvent, Schedule } from './schedule.ts';
import type { ShapedEdge } from './types.ts';

export interface ShapedPiece {
  readonly schedule: Schedule;
  readonly fits: readonly EdgeFit[];
}

/** Slopes below a stitch are no shaping: a side so straight keeps its count up to the armhole. */
const STRAIGHT = 1;

/**
 * What the count of the repeat is off at the bottom is kept all the way up a straight side, and lost
 * little by little up one that is shaped anyway.
 */
const shifted = (shape: PieceShape, start: number): ((height: number) => number) => {
  const base = shape.outer(shape.ribs + 0.5);
  const up = Math.min(shape.ledge, shape.rows);
  const slope = Math.abs(shape.outer(Math.max(up - 0.5, 0.5)) - base);
  const off = start - base;
  return (height) => {
    const beyond = height >= up;
    if (beyond)
      return shape.outer(height) + (shape.ledge < shape.rows || slope >= STRAIGHT ? 0 : off);
    if (slope < STRAIGHT) return shape.outer(height) + off;
    const share = (up - height) / (up - shape.ribs);
    return shape.outer(height) + off * Math.max(0, share);
  };
};

const stationsOf = (shape: PieceShape): number[] =>
  shape.ledge < shape.rows ? [Math.round(shape.ledge)] : [];

const outerFit = (shape: PieceShape, base: BaseCounts): EdgeFit | null => {
  const { places } = base;
  const round = shape.form === 'round';
  const unit = round ? places / 2 : 1;
  const start = (shape.form === 'half' ? 1 : 0.5) * base.main.count;
  const wanted = shifted(shape, start);
  return fitEdge({
    wanted: (height) => wanted(height) / unit,
    from: shape.ribs,
    to: shape.rows,
    starts: [start / unit],
    least: () => (round ? 1 : 0.5),
    boundOn: 1,
    most: (place) => (round ? Math.floor(place / 2) : Infinity),
    measured: stationsOf(shape),
  });
};

/** The edge that a fit gives, row by row. */
const placesOf = (fit: EdgeFit, from: number, to: number): ((row: number) => number) => {
  const places: number[] = [];
  let [place, next] = [fit.start, 0];
  for (let row = from + 1; row <= to; row++) {
    while (fit.events[next]?.row === row) place += fit.events[next++]!.by;
    places[row] = place;
  }
  return (row) => places[Math.min(Math.max(row, from + 1), to)]!;
};

/** The narrowest that the side comes to from a row on: an inner edge that keeps clear of it never has to go back. */
const clearOf = (at: (row: number) => number, to: number): ((row: number) => number) => {
  const least: number[] = [];
  for (let row = to; row >= 0; row--) least[row] = Math.min(at(row), least[row + 1] ?? Infinity);
  return (row) => least[Math.min(row, to)]! - 1;
};

const edgeEvents = (
  events: readonly EdgeEvent[],
  edge: (row: number) => ShapedEdge,
  inwards: 1 | -1,
): RowEvent[] =>
  events.map(({ row, by }) => {
    const [stitches, grows] = [Math.abs(by), by * inwards > 0];
    const many = stitches > 1;
    const how = grows ? (many ? 'cast-on' : 'increase') : many ? 'bind-off' : 'decrease';
    return { row, by: how, edge: edge(row), stitches } as const;
  });

const roundEvents = (events: readonly EdgeEvent[], places: number): RowEvent[] =>
  events.map(({ row, by }) => ({
    row,
    by: by > 0 ? 'increase' : 'decrease',
    edge: 'around',
    stitches: Math.abs(by) * places,
  }));

/** A row to divide in, near the one wanted, in which the side is not shaped. */
const divideRow = (wanted: number, outer: readonly RowEvent[], shape: PieceShape): number => {
  const busy = new Set(
    outer.flatMap((event) => (event.by === 'bind-off' ? [event.row, event.row + 1] : [event.row])),
  );
  const odd = wanted % 2 === 1 ? wanted : wanted - 1;
  const near = [0, 2, 1, -2, -1, 3, 4, -3].map((step) => odd + step);
  const below = Array.from({ length: odd }, (_, i) => odd - i);
  const free = (row: number) => row > shape.ribs + 1 && row <= shape.rows && !busy.has(row);
  return [...near, ...below].find(free) ?? odd;
};

/** Below the neck a whole piece has no inner edge: it is taken to go straight down from its first row. */
const innerAt = (shape: PieceShape, height: number): number =>
  shape.inner(shape.form === 'whole' ? Math.max(height, shape.neck + 0.75) : height) ?? 0;

const innerFit = (
  shape: PieceShape,
  from: number,
  starts: readonly number[],
  most: (row: number) => number,
): EdgeFit | null =>
  fitEdge({
    wanted: (height) => -innerAt(shape, height),
    from,
    to: shape.rows,
    starts: starts.map((start) => -start),
    least: (row) => -most(row),
    boundOn: shape.form === 'half' ? 0 : (from + 1) % 2 === 0 ? 0 : 1,
    most: () => Infinity,
    measured: [],
  });

const frame = (shape: PieceShape, base: BaseCounts): Omit<Schedule, 'events'> => ({
  castOn: { kind: 'cast-on', stitches: base.castOn.count, round: shape.form === 'round' },
  ribs: shape.ribs > 0 && base.castOn.count !== base.main.count ? shape.ribs - 1 : shape.ribs,
  rows: shape.rows,
  finish: shape.finish,
});

/** Stitches above the ribbing differ from those cast on: its last row takes them up. */
const takeUp = (shape: PieceShape, base: BaseCounts): RowEvent[] => {
  const change = base.main.count - base.castOn.count;
  return change === 0 ? [] : [{ row: shape.ribs, by: 'evenly', stitches: change }];
};

const byRow = (events: RowEvent[]): RowEvent[] => events.sort((a, b) => a.row - b.row);

const shapeRound = (shape: PieceShape, base: BaseCounts): ShapedPiece | null => {
  const fit = outerFit(shape, base);
  if (fit === null) return null;
  const taken = takeUp(shape, base).map(
    (event): RowEvent => ({
      row: event.row,
      by: event.stitches > 0 ? 'increase' : 'decrease',
      edge: 'around',
      stitches: Math.abs(event.stitches),
    }),
  );
  const events = [...taken, ...roundEvents(fit.events, base.places)];
  return { schedule: { ...frame(shape, base), events: byRow(events) }, fits: [fit] };
};

/** Nothing is shaped along the front edge below its neck; from the ribbing on where it has none. */
const neckRow = ({ neck, ribs, rows }: PieceShape): number =>
  neck > ribs && neck < rows - 2 ? Math.round(neck) : ribs;

const shapeHalf = (shape: PieceShape, base: BaseCounts): ShapedPiece | null => {
  const outer = outerFit(shape, base);
  if (outer === null) return null;
  const clear = clearOf(placesOf(outer, shape.ribs, shape.rows), shape.rows);
  const inner = innerFit(shape, neckRow(shape), [0], clear);
  if (inner === null) return null;
  const events = [
    ...takeUp(shape, base),
    ...edgeEvents(outer.events, () => 'side', 1),
    ...edgeEvents(inner.events, () => 'neck', 1),
  ];
  return { schedule: { ...frame(shape, base), events: byRow(events) }, fits: [outer, inner] };
};

const withNeck = (
  shape: PieceShape,
  base: BaseCounts,
  outer: EdgeFit,
  neck: number,
): ShapedPiece | null => {
  const sides = edgeEvents(outer.events, () => 'each', 1);
  const at = divideRow(neck, sides, shape);
  const clear = clearOf(placesOf(outer, shape.ribs, shape.rows), shape.rows);
  const odd = (base.main.count % 2) / 2;
  const most =
    Math.max(...Array.from({ length: 12 }, (_, i) => innerAt(shape, at - 1 + i / 4))) + 1;
  const starts = Array.from({ length: Math.ceil(most) + 1 }, (_, i) => i + odd).filter(
    (start) => start === odd || start <= clear(at),
  );
  const inner = innerFit(shape, at, starts, clear);
  if (inner === null) return null;
  const events = [
    ...takeUp(shape, base),
    ...edgeEvents(outer.events, (row) => (row < at ? 'each' : 'side'), 1),
    { row: at, by: 'divide', stitches: -2 * inner.start } as const,
    ...edgeEvents(inner.events, () => 'neck', 1),
  ];
  return { schedule: { ...frame(shape, base), events: byRow(events) }, fits: [outer, inner] };
};

const shapeWhole = (shape: PieceShape, base: BaseCounts): ShapedPiece | null => {
  const outer = outerFit(shape, base);
  if (outer === null) return null;
  if (shape.neck < shape.rows) return withNeck(shape, base, outer, Math.round(shape.neck) + 1);
  const events = [...takeUp(shape, base), ...edgeEvents(outer.events, () => 'each', 1)];
  return { schedule: { ...frame(shape, base), events: byRow(events) }, fits: [outer] };
};

/** Rows and shaping that follow a piece; null where it is too small for any. */
export const shapePiece = (shape: PieceShape, base: BaseCounts): ShapedPiece | null => {
  if (shape.form === 'round') return shapeRound(shape, base);
  return shape.form === 'half' ? shapeHalf(shape, base) : shapeWhole(shape, base);
};
