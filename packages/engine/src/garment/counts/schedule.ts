import { type Fault, fail, ok, type Result } from '../../units/index.ts';
import type { CastOn, Finish, Shape, ShapedEdge, Shaping, Step, Work } from './types.ts';
import { isWhole, MOST_COUNT } from './whole.ts';

/** What happens in one row. `evenly` changes by `stitches` (signed) across the row; `divide` leaves one side. */
export type RowEvent =
  | {
      readonly row: number;
      readonly by: Shaping;
      readonly edge: ShapedEdge;
      readonly stitches: number;
    }
  | { readonly row: number; readonly by: 'evenly'; readonly stitches: number }
  | { readonly row: number; readonly by: 'divide'; readonly stitches: number };

/** Steps laid out on rows that are numbered from 1, the first after the cast-on. */
export interface Schedule {
  readonly castOn: CastOn;
  /** Rows of ribbing that it begins with. */
  readonly ribs: number;
  /** In order of their rows; those of one row as they were given. */
  readonly events: readonly RowEvent[];
  readonly rows: number;
  readonly finish: Finish['by'] | null;
}

/** Ordinal of the step that is at fault, from 0, beside the fault. */
export interface StepFault extends Fault {
  readonly step: number;
}

/** Both edges cannot be bound off or cast on in one row: it takes this row and the next. */
export const takesTwoRows = (shape: Pick<Shape, 'by' | 'edge'>): boolean =>
  shape.edge === 'each' && (shape.by === 'bind-off' || shape.by === 'cast-on');

class Clock {
  at = 0;
  ribs = 0;
  readonly events: RowEvent[] = [];
  private markAt: number | null = null;
  private last = 0;
  castOn: CastOn | null = null;
  finish: Finish['by'] | null = null;

  get rows(): number {
    return Math.max(this.at, this.last);
  }

  mark(): void {
    this.markAt = this.at;
  }

  /** False where there is no row to come back to. */
  back(): boolean {
    if (this.markAt === null) return false;
    this.last = this.rows;
    this.at = this.markAt;
    return true;
  }

  work(rows: number, fabric: Work['fabric']): void {
    if (fabric === 'rib' && this.at === this.ribs) this.ribs += rows;
    this.at += rows;
  }

  shape(step: Shape): void {
    for (let i = 0; i < step.times; i++)
      this.events.push({
        row: this.at + step.first + i * step.every,
        by: step.by,
        edge: step.edge,
        stitches: step.stitches,
      });
    this.at += step.first + (step.times - 1) * step.every + (takesTwoRows(step) ? 1 : 0);
  }

  inRow(by: 'evenly' | 'divide', stitches: number): void {
    this.at += 1;
    this.events.push({ row: this.at, by, stitches });
    if (by === 'divide') this.mark();
  }
}

type Wrong = Omit<Fault, 'field'>;

const wrong = (code: string, given: unknown, problem: string, mend: string): Wrong => ({
  code,
  given: String(given),
  problem,
  mend,
});

const rowsOf = ({ extent }: Work, clock: Clock, rowMm: number): number => {
  if ('rows' in extent) return extent.rows;
  if ('mm' in extent) return Math.max(1, Math.round(extent.mm / rowMm));
  return Math.round(extent.toMm / rowMm) - clock.at;
};

const doWork = (step: Work, clock: Clock, rowMm: number): Wrong | null => {
  const rows = rowsOf(step, clock, rowMm);
  if ('toMm' in step.extent && rows < 0)
    return wrong(
      'step-already-longer',
      `{mm:${step.extent.toMm}}`,
      `it is {mm:${clock.at * rowMm}} long by then`,
      'Give a greater length, or work it earlier.',
    );
  if (!isWhole(rows, 'toMm' in step.extent ? 0 : 1))
    return wrong(
      'step-rows',
      rows,
      'the number of rows is not a whole number above zero',
      `Give 1 to ${MOST_COUNT} rows.`,
    );
  clock.work(rows, step.fabric);
  return null;
};

const doShape = (step: Shape, clock: Clock): Wrong | null => {
  const numbers = [step.stitches, step.first, step.every, step.times];
  const bad = numbers.find((each) => !isWhole(each, 1));
  if (bad !== undefined)
    return wrong(
      'step-numbers',
      bad,
      'stitches, rows and times of a shaping are whole numbers above zero',
      'Give 1 or more.',
    );
  if (step.times > 1 && step.every < 2 && takesTwoRows(step))
    return wrong(
      'step-two-edges-a-row',
      step.every,
      'stitches at both edges take two rows to bind off or to cast on',
      'Do it every 2nd row or less often.',
    );
  clock.shape(step);
  return null;
};

const doRow = (by: 'evenly' | 'divide', stitches: number, clock: Clock): Wrong | null => {
  if (!isWhole(Math.abs(stitches), by === 'evenly' ? 1 : 0))
    return wrong('step-numbers', stitches, 'stitches are whole numbers', 'Give a whole number.');
  clock.inRow(by, stitches);
  return null;
};

const doCastOn = (step: CastOn, clock: Clock): Wrong | null => {
  if (clock.castOn !== null)
    return wrong(
      'step-second-cast-on',
      step.stitches,
      'the piece is cast on twice',
      'Give one piece at a time.',
    );
  if (!isWhole(step.stitches, 1))
    return wrong('step-cast-on', step.stitches, 'nothing is cast on', 'Cast on 1 stitch or more.');
  clock.castOn = step;
  return null;
};

const nowhereToGo = wrong(
  'step-same-time',
  '',
  'it is not said from which row two edges are shaped at the same time',
  'Divide the work first, or say “Shape both edges at the same time from here”.',
);

const doStep = (step: Step, clock: Clock, rowMm: number): Wrong | null => {
  if (clock.castOn === null && step.kind !== 'cast-on')
    return wrong('step-no-cast-on', step.kind, 'nothing is cast on yet', 'Begin with the cast-on.');
  if (clock.finish !== null && step.kind !== 'reverse')
    return wrong('step-after-end', step.kind, 'the piece has ended', 'Give one piece at a time.');
  switch (step.kind) {
    case 'cast-on':
      return doCastOn(step, clock);
    case 'work':
      return doWork(step, clock, rowMm);
    case 'shape':
      return doShape(step, clock);
    case 'evenly':
      return doRow('evenly', step.change === 'increase' ? step.stitches : -step.stitches, clock);
    case 'divide':
      return doRow('divide', step.stitches, clock);
    case 'mark':
      clock.mark();
      return null;
    case 'same-time':
      return clock.back() ? null : nowhereToGo;
    case 'finish':
      clock.finish = step.by;
      return null;
    case 'reverse':
      return null;
  }
};

const tooManyRows = (rows: number): Wrong =>
  wrong(
    'step-too-many-rows',
    rows,
    `the piece has more than ${MOST_COUNT} rows`,
    'Look at the numbers of rows and times.',
  );

/** Lays steps out on rows; the first step that cannot be is the fault. */
export const scheduleOf = (
  steps: readonly Step[],
  rowMm: number,
): { ok: true; value: Schedule } | { ok: false; faults: readonly StepFault[] } => {
  const clock = new Clock();
  for (const [i, step] of steps.entries()) {
    const found =
      doStep(step, clock, rowMm) ?? (clock.rows > MOST_COUNT ? tooManyRows(clock.rows) : null);
    if (found) return { ok: false, faults: [{ ...found, field: `steps[${i}]`, step: i }] };
  }
  const { castOn, ribs, events, rows, finish } = clock;
  if (castOn === null) {
    const none = wrong('step-no-cast-on', '', 'there are no steps', 'Begin with the cast-on.');
    return { ok: false, faults: [{ ...none, field: 'steps', step: 0 }] };
  }
  events.sort((a, b) => a.row - b.row);
  const plain = Math.min(ribs, (events[0]?.row ?? Infinity) - 1);
  return { ok: true, value: { castOn, ribs: plain, events, rows, finish } };
};

/** For callers that have one list of faults. */
export const scheduled = (steps: readonly Step[], rowMm: number): Result<Schedule> => {
  const found = scheduleOf(steps, rowMm);
  return found.ok ? ok(found.value) : fail(...found.faults);
};
