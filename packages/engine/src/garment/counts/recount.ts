import { type Fault, fail, ok, type Result } from '../../units/index.ts';
import { countFor } from './count-for.ts';
import { fabricOf } from './fabric-rows.ts';
import { boundOver, decreased, plain, spanOf } from './recount-shape.ts';
import { runningCounts } from './running-counts.ts';
import { scheduled } from './schedule.ts';
import type { Pitch, Repeat, Shape, ShapedEdge, Step } from './types.ts';
import { lengthFaults } from './whole.ts';

/** One line of the pattern beside what it becomes. */
export interface RecountedLine {
  readonly theirs: Step;
  /** Nothing where the other gauge has no use for it; several where it has to be split. */
  readonly mine: readonly Step[];
  /** After the line; null where two edges are shaped side by side. `errorMm` is mine less theirs. */
  readonly stitches: {
    readonly theirs: number;
    readonly mine: number;
    readonly errorMm: number;
  } | null;
  readonly rows: { readonly theirs: number; readonly mine: number; readonly errorMm: number };
}

export interface Recount {
  readonly lines: readonly RecountedLine[];
  readonly steps: readonly Step[];
}

/** Where the work has come to in both gauges. Rounding is always of the whole so far, so it never adds up. */
interface Where {
  theirRows: number;
  myRows: number;
  readonly edges: Record<ShapedEdge, { theirs: number; mine: number }>;
  mark: { theirs: number; mine: number };
}

const begin = (): Where => ({
  theirRows: 0,
  myRows: 0,
  edges: {
    each: { theirs: 0, mine: 0 },
    neck: { theirs: 0, mine: 0 },
    side: { theirs: 0, mine: 0 },
    around: { theirs: 0, mine: 0 },
  },
  mark: { theirs: 0, mine: 0 },
});

interface Gauges {
  readonly theirs: Pitch;
  readonly mine: Pitch;
  readonly repeat: Repeat | undefined;
}

const toRow = (rows: number, { theirs, mine }: Gauges): number =>
  Math.round((rows * theirs.row) / mine.row);

/** Rows that the pattern goes on by; in return those that I have for it. */
const goOn = (where: Where, rows: number, gauges: Gauges): number => {
  where.theirRows += rows;
  return Math.max(0, toRow(where.theirRows, gauges) - where.myRows);
};

/** Rows that a step takes when `at` are worked. */
const rowsIn = (step: Step, at: number, row: number): number => {
  if (step.kind === 'shape') return spanOf(step);
  if (step.kind === 'evenly' || step.kind === 'divide') return 1;
  if (step.kind !== 'work') return 0;
  const { extent } = step;
  if ('rows' in extent) return extent.rows;
  return 'mm' in extent
    ? Math.max(1, Math.round(extent.mm / row))
    : Math.max(0, Math.round(extent.toMm / row) - at);
};

const workOver = (step: Extract<Step, { kind: 'work' }>, where: Where, gauges: Gauges): Step[] => {
  const { extent } = step;
  if ('rows' in extent) return plain(goOn(where, extent.rows, gauges), step.fabric);
  const rowsAt = (mm: number) => Math.round(mm / gauges.theirs.row);
  const rows = 'mm' in extent ? rowsAt(extent.mm) : rowsAt(extent.toMm) - where.theirRows;
  goOn(where, rows, gauges);
  return [step];
};

/** Stitches of all times at one edge, in my gauge, rounded with those before it. */
const edgeTotal = (step: Shape, where: Where, { theirs, mine }: Gauges): number => {
  const edge = where.edges[step.edge];
  const sign = step.by === 'increase' || step.by === 'cast-on' ? 1 : -1;
  const before = edge.mine;
  edge.theirs += sign * step.stitches * step.times;
  edge.mine = Math.round((edge.theirs * theirs.stitch) / mine.stitch);
  return Math.max(0, sign * (edge.mine - before));
};

const shapeOver = (step: Shape, where: Where, gauges: Gauges): Step[] => {
  const span = spanOf(step);
  const rows = goOn(where, span, gauges);
  const total = edgeTotal(step, where, gauges);
  if (total === step.stitches * step.times && rows === span) return [step];
  if (total === 0) return plain(rows);
  const bound = step.by === 'bind-off' || step.by === 'cast-on';
  return bound ? boundOver(step, total, rows) : decreased(step, total, rows);
};

/** Nearest whole number, not below 0, that is even or odd as `like` is. */
const nearestLike = (wanted: number, like: number): number => {
  const odd = Math.abs(like) % 2;
  return Math.max(odd, odd + 2 * Math.round((wanted - odd) / 2));
};

const scaled = (stitches: number, { theirs, mine }: Gauges): number =>
  (stitches * theirs.stitch) / mine.stitch;

const castOver = (step: Extract<Step, { kind: 'cast-on' }>, gauges: Gauges): Result<Step[]> => {
  const count = countFor({
    wantedMm: step.stitches * gauges.theirs.stitch,
    pitchMm: gauges.mine.stitch,
    repeat: gauges.repeat,
  });
  return count.ok ? ok([{ ...step, stitches: count.value.count }]) : count;
};

interface Needle {
  readonly theirs: number;
  readonly mine: number;
}

/** The centre is even or odd so that both sides come out as they do in the pattern. */
const centreOver = (stitches: number, needle: Needle, gauges: Gauges): number =>
  nearestLike(scaled(stitches, gauges), stitches + needle.mine - needle.theirs);

const stepOver = (step: Step, where: Where, gauges: Gauges, needle: Needle): Result<Step[]> => {
  switch (step.kind) {
    case 'cast-on':
      return castOver(step, gauges);
    case 'work':
      return ok(workOver(step, where, gauges));
    case 'shape':
      return ok(shapeOver(step, where, gauges));
    case 'evenly': {
      goOn(where, 1, gauges);
      const stitches = Math.round(scaled(step.stitches, gauges));
      return ok(stitches > 0 ? [{ ...step, stitches }] : plain(1));
    }
    case 'divide':
      goOn(where, 1, gauges);
      return ok([{ ...step, stitches: centreOver(step.stitches, needle, gauges) }]);
    default:
      return ok([step]);
  }
};

const markOrReturn = ({ kind }: Step, where: Where): void => {
  if (kind === 'divide' || kind === 'mark')
    where.mark = { theirs: where.theirRows, mine: where.myRows };
  if (kind !== 'same-time') return;
  where.theirRows = where.mark.theirs;
  where.myRows = where.mark.mine;
};

const lineOf = (
  theirs: Step,
  mine: readonly Step[],
  counts: readonly [theirs: number | null, mine: number | null],
  where: Where,
  gauges: Gauges,
): RecountedLine => {
  const [t, m] = counts;
  return {
    theirs,
    mine,
    stitches:
      t === null || m === null
        ? null
        : {
            theirs: t,
            mine: m,
            errorMm: m * gauges.mine.stitch - t * gauges.theirs.stitch,
          },
    rows: {
      theirs: where.theirRows,
      mine: where.myRows,
      errorMm: where.myRows * gauges.mine.row - where.theirRows * gauges.theirs.row,
    },
  };
};

const pitchFaults = (theirs: Pitch, mine: Pitch): Fault[] =>
  lengthFaults([
    ['patternPitch.stitch', theirs.stitch, 'the width of a stitch in the pattern'],
    ['patternPitch.row', theirs.row, 'the height of a row in the pattern'],
    ['myPitch.stitch', mine.stitch, 'the width of my stitch'],
    ['myPitch.row', mine.row, 'the height of my row'],
  ]);

const statesApart = (theirs: Pitch, mine: Pitch): Fault => ({
  code: 'recount-states',
  field: 'myPitch.state',
  given: mine.state,
  problem: `a gauge in one state (${mine.state}) is compared with one in another (${theirs.state})`,
  mend: 'Give both gauges in the same state of the fabric.',
});

const gone = (faults: readonly Fault[]): Fault => ({
  code: 'recount-impossible',
  field: faults[0]?.field ?? 'steps',
  given: faults[0]?.given ?? '',
  problem: `at my gauge the steps do not work out: ${faults[0]?.problem ?? ''}`,
  mend: 'The two gauges may be too far apart for these steps: draw the outline and count it anew.',
});

/**
 * What a pattern's counts become at another gauge, line by line: the same lengths and widths in other
 * stitches and rows. Rounding is of the whole so far, so that it does not add up. The same gauge and no
 * repeat give the same steps.
 *
 * @returns faults for gauges that are no lengths, are in different states, or for which the steps cannot be.
 */
export const recount = (
  steps: readonly Step[],
  patternPitch: Pitch,
  myPitch: Pitch,
  repeat?: Repeat | undefined,
): Result<Recount> => {
  const faults = pitchFaults(patternPitch, myPitch);
  if (faults.length > 0) return fail(...faults);
  if (patternPitch.state !== myPitch.state) return fail(statesApart(patternPitch, myPitch));
  const gauges: Gauges = { theirs: patternPitch, mine: myPitch, repeat };
  const where = begin();
  const counts = runningCounts(steps);
  const lines: RecountedLine[] = [];
  const all: Step[] = [];
  for (const [i, step] of steps.entries()) {
    const needle = { theirs: counts[i - 1] ?? 0, mine: runningCounts(all).at(-1) ?? 0 };
    const found = stepOver(step, where, gauges, needle);
    if (!found.ok) return found;
    for (const mine of found.value) {
      where.myRows += rowsIn(mine, where.myRows, myPitch.row);
      all.push(mine);
    }
    markOrReturn(step, where);
    const mine = runningCounts(all).at(-1) ?? null;
    lines.push(lineOf(step, found.value, [counts[i] ?? null, mine], where, gauges));
  }
  const schedule = scheduled(all, myPitch.row);
  if (!schedule.ok) return fail(gone(schedule.faults));
  const fabric = fabricOf(schedule.value);
  return fabric.ok ? ok({ lines, steps: all }) : fail(gone(fabric.faults));
};
