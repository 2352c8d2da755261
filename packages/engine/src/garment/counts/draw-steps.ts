import { fail, mm, ok, type Result } from '../../units/index.ts';
import { line, point, withMirror, withoutNothing } from '../outline/path.ts';
import type {
  Detail,
  Dimension,
  EdgeKind,
  OutlinePiece,
  PieceName,
  Point,
  Segment,
} from '../outline/types.ts';
import { type Fabric, fabricOf, widthOf } from './fabric-rows.ts';
import { type RowEvent, type Schedule, scheduled } from './schedule.ts';
import type { Pitch, Step } from './types.ts';
import { lengthFaults } from './whole.ts';

interface Drawing {
  readonly schedule: Schedule;
  readonly fabric: Fabric;
  /** Place of a point `x` stitches out and `y` rows above the cast-on. */
  readonly at: (x: number, y: number) => Point;
}

const edgeBy = (event: RowEvent | undefined): EdgeKind => {
  if (event?.by === 'bind-off') return 'bound-off';
  if (event?.by === 'cast-on') return 'cast-on';
  return event?.by === 'evenly' || event?.by === 'divide' ? 'join' : 'seam';
};

const FINISHED: Readonly<Record<'bind-off' | 'gather' | 'hold', EdgeKind>> = {
  'bind-off': 'bound-off',
  gather: 'gathered',
  hold: 'join',
};

/** The event that moves that edge in that row. */
const moverOf = (
  { schedule }: Drawing,
  row: number,
  edge: 'neck' | 'side',
): RowEvent | undefined => {
  const other = edge === 'neck' ? 'side' : 'neck';
  return schedule.events.find(
    (event) => event.row === row && !('edge' in event && event.edge === other),
  );
};

/** Up an edge from row `from` to the top: level where it is shaped, upright between. */
const upEdge = (
  drawing: Drawing,
  which: 'inner' | 'outer',
  from: number,
  upright: EdgeKind,
): Segment[] => {
  const { rows } = drawing.fabric;
  const path: Segment[] = [];
  let foot = drawing.at(rows[from]![which], from);
  for (let r = from + 1; r < rows.length; r++) {
    const [x, before] = [rows[r]![which], rows[r - 1]![which]];
    if (x === before) continue;
    const corner = drawing.at(before, r - 1);
    const mover = moverOf(drawing, r, which === 'inner' ? 'neck' : 'side');
    const next = drawing.at(x, r - 1);
    path.push(line(foot, corner, upright), line(corner, next, edgeBy(mover)));
    foot = next;
  }
  path.push(line(foot, drawing.at(rows.at(-1)![which], rows.length - 1), upright));
  return withoutNothing(path);
};

const backwards = (path: readonly Segment[]): Segment[] =>
  [...path].reverse().map((s) => line(s.to, s.from, s.edge));

const topOf = ({ schedule, fabric, at }: Drawing, inner: number): Segment => {
  const top = fabric.rows.length - 1;
  const edge = schedule.finish === null ? 'join' : FINISHED[schedule.finish];
  return line(at(inner, top), at(fabric.rows[top]!.outer, top), edge);
};

/** From the middle of the top round the right side to the middle of the cast-on. */
const rightHalf = (drawing: Drawing): Segment[] => {
  const { fabric, at, schedule } = drawing;
  const side: EdgeKind = fabric.form === 'round' ? 'fold' : 'seam';
  const { dividedAt, rows } = fabric;
  const neck: Segment[] = [];
  if (dividedAt !== null) {
    const base = rows[dividedAt]!.inner;
    neck.push(line(at(0, dividedAt - 1), at(base, dividedAt - 1), 'bound-off'));
    neck.push(line(at(base, dividedAt - 1), at(base, dividedAt), 'neckline'));
    neck.push(...upEdge(drawing, 'inner', dividedAt, 'neckline'));
  }
  return withoutNothing([
    ...neck,
    topOf(drawing, dividedAt === null ? 0 : rows.at(-1)!.inner),
    ...backwards(upEdge(drawing, 'outer', 0, side)),
    line(at(schedule.castOn.stitches / 2, 0), at(0, 0), 'cast-on'),
  ]);
};

const halfPiece = (drawing: Drawing): Segment[] => {
  const { fabric, at } = drawing;
  return withoutNothing([
    ...upEdge(drawing, 'inner', 0, 'selvedge'),
    topOf(drawing, fabric.rows.at(-1)!.inner),
    ...backwards(upEdge(drawing, 'outer', 0, 'seam')),
    line(at(fabric.rows[0]!.outer, 0), at(fabric.rows[0]!.inner, 0), 'cast-on'),
  ]);
};

const ribbing = ({ schedule, fabric, at }: Drawing): Detail[] => {
  const { ribs } = schedule;
  if (ribs === 0) return [];
  const { inner, outer } = fabric.rows[ribs]!;
  return [{ kind: 'ribbing', path: [line(at(inner, ribs), at(outer, ribs), 'cast-on')] }];
};

const dimension = (
  landmark: string,
  direction: 'width' | 'length',
  from: Point,
  to: Point,
): Dimension => ({
  landmark,
  direction,
  from,
  to,
  side: direction === 'width' ? 'bottom' : 'right',
  outside: true,
  mm: mm(Math.hypot(to.x - from.x, to.y - from.y)),
  assumed: false,
});

const widestRow = ({ rows }: Fabric): number =>
  rows.reduce((best, row, i) => (widthOf(row) > widthOf(rows[best]!) ? i : best), 0);

const dimensionsOf = (drawing: Drawing): Dimension[] => {
  const { schedule, fabric, at } = drawing;
  const { rows, dividedAt } = fabric;
  const across = (landmark: string, r: number, y: number) =>
    dimension(landmark, 'width', at(rows[r]!.inner, y), at(rows[r]!.outer, y));
  const upTo = (landmark: string, y: number) =>
    dimension(landmark, 'length', at(rows[0]!.outer, y), at(rows[0]!.outer, 0));
  const widest = widestRow(fabric);
  const top = rows.length - 1;
  const armhole = schedule.events.find((event) => event.by === 'bind-off');
  const neck = rows.at(-1)!.inner;
  return [
    across('hem', 0, 0),
    across('width', widest, widest),
    upTo('length', top),
    ...(schedule.ribs > 0 ? [upTo('rib-depth', schedule.ribs)] : []),
    ...(armhole ? [upTo('underarm-length', armhole.row - 1)] : []),
    ...(dividedAt === null
      ? []
      : [
          dimension('neck-width', 'width', at(-neck, top), at(neck, top)),
          dimension('front-neck-depth', 'length', at(0, top), at(0, dividedAt - 1)),
        ]),
  ];
};

/** A last row that has no stitches left is the edge of the row below. */
const trimmed = (fabric: Fabric): Fabric => {
  const top = fabric.rows.findIndex((row) => widthOf(row) === 0);
  return top < 0 ? fabric : { ...fabric, rows: fabric.rows.slice(0, top) };
};

/**
 * The outline that steps give at a gauge, stitch by stitch: upright beside rows, level where stitches
 * are added or taken away. A whole piece is centred on x = 0, a round is drawn lying flat, a piece
 * whose two edges differ runs from x = 0 to the right. Its top is y = 0.
 *
 * Dimensions are the cast-on (`hem`), the widest row (`width`), the whole height (`length`), and what
 * else the steps have: ribbing, height to the first binding off, neck.
 */
export const outlineFromCounts = (
  steps: readonly Step[],
  pitch: Pitch,
  name: PieceName = 'piece',
): Result<OutlinePiece> => {
  const pitchFaults = lengthFaults([
    ['pitch.stitch', pitch.stitch, 'the width of a stitch'],
    ['pitch.row', pitch.row, 'the height of a row'],
  ]);
  if (pitchFaults.length > 0) return fail(...pitchFaults);
  const schedule = scheduled(steps, pitch.row);
  if (!schedule.ok) return schedule;
  const walked = fabricOf(schedule.value);
  if (!walked.ok) return walked;
  const fabric = trimmed(walked.value);
  const top = fabric.rows.length - 1;
  const wide = fabric.form === 'round' ? pitch.stitch / 2 : pitch.stitch;
  const at = (x: number, y: number) => point(x * wide, (top - y) * pitch.row);
  const drawing: Drawing = { schedule: schedule.value, fabric, at };
  const half = fabric.form === 'half';
  return ok({
    name,
    copies: half ? 2 : 1,
    symmetric: !half,
    path: half ? halfPiece(drawing) : withMirror(rightHalf(drawing)),
    details: ribbing(drawing),
    dimensions: dimensionsOf(drawing),
    shownOn: null,
  });
};
