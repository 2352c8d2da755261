import { type Fabric, widthOf } from './fabric-rows.ts';
import { type RowEvent, type Schedule, takesTwoRows } from './schedule.ts';
import type { Shape, Step } from './types.ts';

type EdgeEvent = Extract<RowEvent, { edge: unknown }>;

const isEdge = (event: RowEvent): event is EdgeEvent => 'edge' in event;
const alike = (a: EdgeEvent, b: RowEvent | undefined): b is EdgeEvent =>
  b !== undefined && isEdge(b) && a.by === b.by && a.edge === b.edge && a.stitches === b.stitches;

/** Events at the front of a list that repeat at one interval. */
const runLength = (events: readonly RowEvent[], first: EdgeEvent, every: number): number => {
  let length = 1;
  while (alike(first, events[length]) && events[length]!.row - events[length - 1]!.row === every)
    length++;
  return length;
};

interface Written {
  readonly steps: Step[];
  readonly at: number;
}

const plain = (rows: number): Step[] =>
  rows > 0 ? [{ kind: 'work', fabric: 'main', extent: { rows } }] : [];

const isAfterLike = (before: Step | undefined, event: EdgeEvent): boolean =>
  before?.kind === 'shape' &&
  before.by === event.by &&
  before.edge === event.edge &&
  before.stitches === event.stitches;

/** How a run of shaping is worded: rows to its first time, its interval, its length. */
const rhythm = (
  events: readonly RowEvent[],
  event: EdgeEvent,
  gap: number,
  follows: boolean,
): { first: number; every: number; times: number } => {
  const two = takesTwoRows(event);
  const next = alike(event, events[1]) ? events[1].row - event.row : 0;
  const every = two && next !== 2 ? 0 : next;
  if (every > 0) {
    const times = runLength(events, event, every);
    return { first: gap === every && !two ? gap : 1, every, times };
  }
  if (two) return { first: 1, every: 2, times: 1 };
  return follows ? { first: gap, every: gap, times: 1 } : { first: 1, every: 1, times: 1 };
};

const shapeStep = (
  events: readonly RowEvent[],
  event: EdgeEvent,
  gap: number,
  before: Step | undefined,
): { steps: Step[]; used: number; at: number } => {
  const beat = rhythm(events, event, gap, isAfterLike(before, event));
  const { by, edge, stitches } = event;
  const shape: Shape = { kind: 'shape', by, edge, stitches, ...beat };
  return {
    steps: [...plain(gap - beat.first), shape],
    used: beat.times,
    at: event.row + (beat.times - 1) * beat.every + (takesTwoRows(event) ? 1 : 0),
  };
};

const rowStep = (event: Exclude<RowEvent, EdgeEvent>): Step =>
  event.by === 'divide'
    ? { kind: 'divide', stitches: event.stitches }
    : {
        kind: 'evenly',
        change: event.stitches > 0 ? 'increase' : 'decrease',
        stitches: Math.abs(event.stitches),
      };

/** Words events that follow one another, from row `at` on. */
const inTurn = (events: readonly RowEvent[], from: number, before: readonly Step[]): Written => {
  const steps: Step[] = [];
  let at = from;
  let rest = events;
  while (rest.length > 0) {
    const event = rest[0]!;
    if (isEdge(event)) {
      const run = shapeStep(rest, event, event.row - at, steps.at(-1) ?? before.at(-1));
      steps.push(...run.steps);
      at = run.at;
      rest = rest.slice(run.used);
    } else {
      steps.push(...plain(event.row - at - 1), rowStep(event));
      at = event.row;
      rest = rest.slice(1);
    }
  }
  return { steps, at };
};

/** Where single edges are shaped, shaping at both ends is that of each. */
const parted = (events: readonly RowEvent[], from: number): RowEvent[] =>
  events.flatMap((event) =>
    isEdge(event) && event.edge === 'each' && event.row >= from
      ? [
          { ...event, edge: 'neck' as const },
          { ...event, edge: 'side' as const },
        ]
      : [event],
  );

const firstRow = (events: readonly RowEvent[]): number => events[0]?.row ?? Infinity;
const lastRow = (events: readonly RowEvent[]): number => events.at(-1)?.row ?? -Infinity;

interface Tracks {
  readonly before: readonly RowEvent[];
  readonly neck: readonly RowEvent[];
  readonly side: readonly RowEvent[];
}

/** Events before two edges are shaped at once, and those of each edge from there; null where they take turns. */
const tracksOf = (events: readonly RowEvent[], dividedAt: number | null): Tracks | null => {
  const neck = events.filter((event) => isEdge(event) && event.edge === 'neck');
  const start = dividedAt === null ? firstRow(neck) : dividedAt + 1;
  const side = events.filter(
    (event) => isEdge(event) && event.edge === 'side' && event.row >= start,
  );
  if (neck.length === 0 || side.length === 0) return null;
  if (lastRow(neck) < firstRow(side) || lastRow(side) < firstRow(neck)) return null;
  const before = events.filter((event) => event.row < start);
  return { before, neck, side };
};

const together = (tracks: Tracks, ribs: number, start: Step[], rows: number): Written => {
  const before = inTurn(tracks.before, ribs, start);
  const divided = tracks.before.some((event) => event.by === 'divide');
  const neck = inTurn(tracks.neck, before.at, []);
  const side = inTurn(tracks.side, before.at, []);
  const more = rows > Math.max(neck.at, side.at) ? plain(rows - side.at) : [];
  return {
    steps: [
      ...before.steps,
      ...(divided ? [] : [{ kind: 'mark' } as const]),
      ...neck.steps,
      { kind: 'same-time' },
      ...side.steps,
      ...more,
    ],
    at: rows,
  };
};

/** A last shaping that leaves nothing is the binding off itself, one row earlier. */
const ended = (schedule: Schedule, fabric: Fabric): Schedule => {
  const last = schedule.events.at(-1);
  if (!last || widthOf(fabric.rows.at(-1)!) > 0) return schedule;
  return {
    ...schedule,
    events: schedule.events.slice(0, -1),
    rows: last.row - 1,
    finish: 'bind-off',
  };
};

/**
 * Rows put into words: repeated shaping is one step, rows without shaping are another, and where two
 * edges are shaped at once each has its own list. There is one wording for one fabric.
 */
export const stepsOf = (given: Schedule, fabric: Fabric): Step[] => {
  const { castOn, ribs, events: all, rows, finish } = ended(given, fabric);
  const { dividedAt, form } = fabric;
  const events = parted(all, form === 'half' ? 0 : (dividedAt ?? Infinity));
  const start: Step[] = [
    castOn,
    ...(ribs > 0 ? [{ kind: 'work', fabric: 'rib', extent: { rows: ribs } } as const] : []),
  ];
  const tracks = tracksOf(events, dividedAt);
  const written = tracks ? together(tracks, ribs, start, rows) : inTurn(events, ribs, start);
  return [
    ...start,
    ...written.steps,
    ...plain(rows - written.at),
    { kind: 'finish', by: finish ?? 'hold' },
    ...(dividedAt !== null ? [{ kind: 'reverse' } as const] : []),
  ];
};
