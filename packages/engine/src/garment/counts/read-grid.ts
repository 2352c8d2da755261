import type { EdgeKind, OutlinePiece, Segment } from '../outline/index.ts';
import { type Fabric, type Form, fabricOf } from './fabric-rows.ts';
import { profileOf } from './profile.ts';
import type { RowEvent, Schedule } from './schedule.ts';
import { stepsOf } from './steps-of.ts';
import type { Finish, Pitch, Shaping, Step } from './types.ts';

/** Closer than this to a whole stitch or row is on it: far above the rounding of doubles, far below a loop. */
const NEAR = 1e-6;

const whole = (value: number): number | null => {
  const nearest = Math.round(value);
  return Math.abs(value - nearest) < NEAR ? nearest : null;
};

interface Grid {
  readonly piece: OutlinePiece;
  readonly form: Form;
  readonly wide: number;
  readonly high: number;
  readonly rows: number;
}

const level = (s: Segment): boolean => s.from.y === s.to.y;
const upright = (s: Segment): boolean => s.from.x === s.to.x;

/** The kind of the level edge at a height (in rows) that lies between two places (in stitches). */
const kindAt = (grid: Grid, height: number, from: number, to: number): EdgeKind | null => {
  const middle = (from + to) / 2;
  const found = grid.piece.path.find((s) => {
    if (!level(s) || Math.abs(grid.rows - s.from.y / grid.high - height) > NEAR) return false;
    const [a, b] = [s.from.x / grid.wide, s.to.x / grid.wide];
    return Math.min(a, b) < middle && middle < Math.max(a, b);
  });
  return found?.edge ?? null;
};

const shapingBy = (grows: boolean, kind: EdgeKind | null): Shaping => {
  if (grows) return kind === 'cast-on' ? 'cast-on' : 'increase';
  return kind === 'bound-off' ? 'bind-off' : 'decrease';
};

type Row = { readonly inner: number | null; readonly outer: number };

/** What happened at one edge between two rows; `stitches` that the edge moved outwards of the piece. */
const edgeEvent = (
  grid: Grid,
  row: number,
  edge: 'neck' | 'side',
  [before, after]: readonly [number, number],
): { by: Shaping; stitches: number; kind: EdgeKind | null } | null => {
  if (Math.abs(after - before) < NEAR) return null;
  const kind = kindAt(grid, row - 1, before, after);
  const grows = edge === 'side' ? after > before : after < before;
  return { by: shapingBy(grows, kind), stitches: Math.abs(after - before), kind };
};

const wholeEvents = (grid: Grid, row: number, before: Row, after: Row): RowEvent[] => {
  const moved = edgeEvent(grid, row, 'side', [before.outer, after.outer]);
  if (!moved) return [];
  const { by, stitches, kind } = moved;
  if (grid.form === 'round') return [{ row, by, edge: 'around', stitches: 2 * stitches }];
  if (kind === 'join') return [{ row, by: 'evenly', stitches: 2 * (after.outer - before.outer) }];
  return [{ row, by, edge: 'each', stitches }];
};

const sideEvents = (grid: Grid, row: number, before: Row, after: Row): RowEvent[] =>
  (['neck', 'side'] as const).flatMap((edge) => {
    const which = edge === 'neck' ? 'inner' : 'outer';
    const moved = edgeEvent(grid, row, edge, [before[which] ?? 0, after[which] ?? 0]);
    return moved ? [{ row, edge, by: moved.by, stitches: moved.stitches }] : [];
  });

/** A half piece that grows evenly does so at its outer edge, with live stitches below. */
const halfEvenly = (grid: Grid, row: number, before: Row, after: Row): RowEvent[] | null =>
  grid.form === 'half' &&
  before.outer !== after.outer &&
  kindAt(grid, row - 1, before.outer, after.outer) === 'join'
    ? [{ row, by: 'evenly', stitches: after.outer - before.outer }]
    : null;

const eventsIn = (grid: Grid, row: number, before: Row, after: Row): RowEvent[] => {
  if (grid.form === 'half')
    return halfEvenly(grid, row, before, after) ?? sideEvents(grid, row, before, after);
  if (after.inner === null) return wholeEvents(grid, row, before, after);
  if (before.inner !== null) return sideEvents(grid, row, before, after);
  return [
    { row, by: 'divide', stitches: 2 * after.inner },
    ...sideEvents(grid, row, { ...before, inner: after.inner }, after),
  ];
};

const finishBy = (kind: EdgeKind | null): Finish['by'] => {
  if (kind === 'bound-off') return 'bind-off';
  return kind === 'gathered' ? 'gather' : 'hold';
};

const gridOf = (piece: OutlinePiece, pitch: Pitch): Grid | null => {
  if (!piece.path.every((s) => s.kind === 'line' && (level(s) || upright(s)))) return null;
  const rows = whole(profileOf(piece).heightMm / pitch.row);
  if (rows === null || rows === 0) return null;
  const round = piece.path.some((s) => upright(s) && s.edge === 'fold');
  const form = round ? 'round' : piece.symmetric ? 'whole' : 'half';
  const wide = round ? pitch.stitch / 2 : pitch.stitch;
  return { piece, form, wide, high: pitch.row, rows };
};

const onGrid = (grid: Grid, pitch: Pitch): boolean =>
  grid.piece.path.every(
    (s) => whole(s.from.y / pitch.row) !== null && whole((2 * s.from.x) / grid.wide) !== null,
  );

const rowsOf = (grid: Grid): Row[] => {
  const profile = profileOf(grid.piece);
  return Array.from({ length: grid.rows }, (_, i) => {
    const { inner, outer } = profile.at((i + 0.5) * grid.high);
    const near = (x: number) => Math.round((2 * x) / grid.wide) / 2;
    return { inner: inner === null ? null : near(inner), outer: near(outer) };
  });
};

const isLowest = (grid: Grid, s: Segment): boolean =>
  level(s) && Math.abs(s.from.y / grid.high - grid.rows) < NEAR;

/** Stitches along the lowest edge, which is one run whatever was cast on beside it in the first row. */
const castOnOf = (grid: Grid): number | null => {
  const edges = grid.piece.path.filter((s) => isLowest(grid, s) && s.edge === 'cast-on');
  const xs = edges.flatMap((s) => [s.from.x, s.to.x]);
  return xs.length === 0 ? null : whole((Math.max(...xs) - Math.min(...xs)) / grid.wide);
};

const ribsOf = (grid: Grid): number => {
  const top = grid.piece.details.find((detail) => detail.kind === 'ribbing')?.path[0];
  return top ? (whole(grid.rows - top.from.y / grid.high) ?? 0) : 0;
};

const scheduleOfGrid = (grid: Grid): Schedule | null => {
  const rows = rowsOf(grid);
  const stitches = castOnOf(grid);
  if (stitches === null) return null;
  const first: Row =
    grid.form === 'half' ? { inner: 0, outer: stitches } : { inner: null, outer: stitches / 2 };
  const events = rows.flatMap((row, i) => eventsIn(grid, i + 1, rows[i - 1] ?? first, row));
  const top = rows.at(-1)!;
  const finish = finishBy(kindAt(grid, grid.rows, top.inner ?? 0, top.outer));
  const castOn = { kind: 'cast-on', stitches, round: grid.form === 'round' } as const;
  return { castOn, ribs: ribsOf(grid), events, rows: grid.rows, finish };
};

const sameEdges = (fabric: Fabric, rows: readonly Row[]): boolean =>
  rows.every((row, i) => {
    const { inner, outer } = fabric.rows[i + 1]!;
    return outer === row.outer && (row.inner === null || inner === row.inner);
  });

/**
 * The steps of an outline whose corners lie on whole stitches and rows; null where they do not, or
 * where no steps give exactly this outline. Its top is y = 0, as `outlineFromCounts` draws it.
 */
export const stepsOfGrid = (piece: OutlinePiece, pitch: Pitch): Step[] | null => {
  const grid = gridOf(piece, pitch);
  if (grid === null || !onGrid(grid, pitch)) return null;
  const schedule = scheduleOfGrid(grid);
  if (schedule === null) return null;
  const fabric = fabricOf(schedule);
  if (!fabric.ok || !sameEdges(fabric.value, rowsOf(grid))) return null;
  return stepsOf(schedule, fabric.value);
};
