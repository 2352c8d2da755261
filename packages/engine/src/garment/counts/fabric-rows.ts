import { type Fault, fail, ok, type Result } from '../../units/index.ts';
import { type RowEvent, type Schedule, takesTwoRows } from './schedule.ts';

/**
 * Where the two edges of the worked part lie after a row, in stitches from the line x = 0: the middle
 * of a whole piece or a round, the inner edge of a half piece. After a divide it is the side at x > 0.
 */
export interface KnitRow {
  readonly inner: number;
  readonly outer: number;
}

/** `whole`: alike on both sides of x = 0. `half`: edges of its own, worked again in reverse. */
export type Form = 'whole' | 'half' | 'round';

export interface Fabric {
  readonly form: Form;
  /** The cast-on edge, then one entry for each row. */
  readonly rows: readonly KnitRow[];
  /** Row in which it divides; null where it does not. */
  readonly dividedAt: number | null;
}

export const widthOf = ({ inner, outer }: KnitRow): number => outer - inner;

const formOf = ({ castOn, events }: Schedule): Form => {
  if (castOn.round) return 'round';
  const divided = events.some((event) => event.by === 'divide');
  const oneEdged = events.some(
    (event) => 'edge' in event && (event.edge === 'neck' || event.edge === 'side'),
  );
  return oneEdged && !divided ? 'half' : 'whole';
};

const fault = (event: RowEvent, code: string, problem: string, mend: string): Fault => ({
  code,
  field: `row ${event.row}`,
  given: String(event.stitches),
  problem,
  mend,
});

const outOfPlace = (event: RowEvent, form: Form, divided: boolean): Fault | null => {
  const edge = 'edge' in event ? event.edge : null;
  if (form === 'round' && (event.by === 'divide' || (edge !== null && edge !== 'around')))
    return fault(
      event,
      'no-edges-in-a-round',
      'a round has no edges to shape or divide',
      'Spread the change over the round.',
    );
  if (form !== 'round' && edge === 'around')
    return fault(
      event,
      'no-round',
      'the piece is worked back and forth, not in rounds',
      'Name the edge, or join the cast-on into a round.',
    );
  if (event.by === 'divide' && divided)
    return fault(event, 'divided-twice', 'the work divides a second time', 'Divide it once.');
  if (form === 'whole' && !divided && (edge === 'neck' || edge === 'side'))
    return fault(
      event,
      'edge-before-divide',
      'one edge is shaped before the work divides',
      'Shape both ends, or divide the work first.',
    );
  return null;
};

const moved = ({ inner, outer }: KnitRow, event: RowEvent): KnitRow => {
  if (event.by === 'divide') return { inner: event.stitches / 2, outer };
  if (event.by === 'evenly')
    return { inner: inner - event.stitches / 2, outer: outer + event.stitches / 2 };
  const grows = event.by === 'increase' || event.by === 'cast-on';
  const by = grows ? event.stitches : -event.stitches;
  const half = event.edge === 'around' ? by / 2 : by;
  return {
    inner: event.edge === 'side' ? inner : inner - half,
    outer: event.edge === 'neck' ? outer : outer + half,
  };
};

/** A half piece keeps its inner edge where it is when a row grows evenly. */
const change = (row: KnitRow, event: RowEvent, form: Form): KnitRow =>
  form === 'half' && event.by === 'evenly'
    ? { inner: row.inner, outer: row.outer + event.stitches }
    : moved(row, event);

const usedUp = (event: RowEvent, had: number, last: boolean): Fault =>
  fault(
    event,
    'no-stitches-left',
    `there are ${had} stitches${last ? '' : ' and rows to come'}, so that many cannot be taken away`,
    'Take fewer, fewer times; or look for a line that is missing.',
  );

const single = (event: RowEvent): boolean =>
  'edge' in event && (event.edge === 'neck' || event.edge === 'side');

/** Two different single edges may be shaped in one row; nothing else may. */
const mayShare = (a: RowEvent, b: RowEvent): boolean =>
  single(a) && single(b) && 'edge' in a && 'edge' in b && a.edge !== b.edge;

interface Walk {
  row: KnitRow;
  divided: number | null;
  /** Shaping before, and the last row that it takes. */
  before: RowEvent | null;
  busy: number;
}

const twice = (walk: Walk, event: RowEvent): Fault | null =>
  walk.before !== null && event.row <= walk.busy && !mayShare(walk.before, event)
    ? fault(
        event,
        'row-shaped-twice',
        'two shapings come in one row',
        'Put them in rows of their own, or name the neck edge and the side edge.',
      )
    : null;

const keepBusy = (walk: Walk, event: RowEvent, form: Form): void => {
  const two = form === 'whole' && walk.divided === null && 'edge' in event && takesTwoRows(event);
  walk.before = event;
  walk.busy = event.row + (two ? 1 : 0);
};

const take = (walk: Walk, event: RowEvent, form: Form, last: boolean): Fault | null => {
  const wrong = outOfPlace(event, form, walk.divided !== null) ?? twice(walk, event);
  if (wrong) return wrong;
  const had = widthOf(walk.row);
  walk.row = change(walk.row, event, form);
  keepBusy(walk, event, form);
  if (event.by === 'divide') walk.divided = event.row;
  const left = widthOf(walk.row);
  if (left < 0 || (left === 0 && !last)) return usedUp(event, had, last);
  return null;
};

/** The edges row by row. Fails where an edge is shaped that is not there, or stitches run out. */
export const fabricOf = (schedule: Schedule): Result<Fabric> => {
  const form = formOf(schedule);
  const { castOn, events, rows } = schedule;
  const inner = form === 'half' ? 0 : -castOn.stitches / 2;
  const row = { inner, outer: inner + castOn.stitches };
  const walk: Walk = { row, divided: null, before: null, busy: 0 };
  const found = [walk.row];
  let next = 0;
  const lastEvent = events.at(-1);
  for (let r = 1; r <= rows; r++) {
    for (let event = events[next]; event?.row === r; event = events[++next]) {
      const wrong = take(walk, event, form, event === lastEvent);
      if (wrong) return fail(wrong);
    }
    found.push(walk.row);
  }
  return ok({ form, rows: found, dividedAt: walk.divided });
};

/**
 * Stitches worked: those of every row, on both sides where the work divides. Edges cast on and bound
 * off are not counted apart; a row counts what it has after its shaping.
 */
export const workedIn = ({ form, rows, dividedAt }: Fabric): number =>
  rows
    .slice(1)
    .reduce(
      (sum, row, i) =>
        sum + widthOf(row) * (form === 'whole' && dividedAt !== null && i + 1 >= dividedAt ? 2 : 1),
      0,
    );
