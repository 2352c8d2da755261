import { type Fault, fail, ok, type Result } from '../../units/index.ts';
import { type Clause, clausesOf } from './clause.ts';
import { fabricOf } from './fabric-rows.ts';
import { type Problem, problem } from './problem.ts';
import { readClause, type Until } from './read-clause.ts';
import { runningCounts } from './running-counts.ts';
import { scheduleOf } from './schedule.ts';
import type { Shape, Step } from './types.ts';

export interface ReadOptions {
  /** Name of the field, for faults; `instructions` where left out. */
  readonly field?: string | undefined;
  /** Height of a row, to check lengths against each other; 3.5 mm where left out. */
  readonly rowMm?: number | undefined;
}

/** Only to tell whether lengths go upwards; no count of the answer depends on it. */
const SOME_ROW = 3.5;

const LONGEST_GIVEN = 80;

class Draft {
  readonly steps: Step[] = [];
  readonly clauses: Clause[] = [];
  readonly faults: Fault[] = [];

  constructor(private readonly field: string) {}

  add(step: Step, clause: Clause): void {
    this.steps.push(step);
    this.clauses.push(clause);
  }

  blame({ line, given }: Pick<Clause, 'line' | 'given'>, found: Problem): void {
    const short = given.length > LONGEST_GIVEN ? `${given.slice(0, LONGEST_GIVEN)}…` : given;
    this.faults.push({ ...found, field: `${this.field}, line ${line}`, given: short });
  }

  get now(): number | null {
    return runningCounts(this.steps).at(-1) ?? null;
  }
}

/** How many times shaping is worked so that so many stitches are there; null where it never is. */
const timesUntil = ({ shape, stitches }: Until, now: number): number | null => {
  const each = shape.stitches * (shape.edge === 'each' ? 2 : 1);
  const grows = shape.by === 'increase' || shape.by === 'cast-on';
  const times = (grows ? stitches - now : now - stitches) / each;
  return Number.isInteger(times) && times > 0 ? times : null;
};

const resolve = (until: Until, draft: Draft): Shape | Problem => {
  const now = draft.now;
  if (now === null) return problem.noTimes();
  const times = timesUntil(until, now);
  const each = until.shape.stitches * (until.shape.edge === 'each' ? 2 : 1);
  return times === null ? problem.until(now, until.stitches, each) : { ...until.shape, times };
};

/** In the round every even change goes round; there is no row to go across. */
const inRound = (step: Step, steps: readonly Step[]): Step => {
  const round = steps.some((each) => each.kind === 'cast-on' && each.round);
  if (!round || step.kind !== 'evenly') return step;
  const { change: by, stitches } = step;
  return { kind: 'shape', by, edge: 'around', stitches, first: 1, every: 1, times: 1 };
};

/** Spread over one row that is worked back and forth, it is a change across the row. */
const acrossRow = (step: Step, steps: readonly Step[]): Step => {
  const round = steps.some((each) => each.kind === 'cast-on' && each.round);
  if (round || step.kind !== 'shape' || step.edge !== 'around' || step.times > 1 || step.first > 1)
    return step;
  return step.by === 'increase' || step.by === 'decrease'
    ? { kind: 'evenly', change: step.by, stitches: step.stitches }
    : step;
};

const stepsIn = (draft: Draft, clause: Clause): Problem | null => {
  const found = clause.words === '' ? [] : readClause(clause.words);
  if ('code' in found) return found;
  for (const each of found) {
    const step = each.kind === 'until' ? resolve(each, draft) : each;
    if ('code' in step) return step;
    draft.add(acrossRow(inRound(step, draft.steps), draft.steps), clause);
  }
  const { now } = draft;
  return clause.claims !== null &&
    now !== null &&
    clause.claims !== now &&
    draft.faults.length === 0
    ? problem.claims(clause.claims, now)
    : null;
};

const readInto = (draft: Draft, clause: Clause): void => {
  const wrong = stepsIn(draft, clause);
  if (wrong) draft.blame(clause, wrong);
};

const asProblem = ({ code, problem: what, mend }: Fault): Problem => ({
  code,
  problem: what,
  mend,
});

/** What only shows when the rows are laid out: shaping that is not possible there, stitches that run out. */
const checkRows = (draft: Draft, rowMm: number): void => {
  const laid = scheduleOf(draft.steps, rowMm);
  if (!laid.ok) {
    const [fault] = laid.faults;
    draft.blame(draft.clauses[fault?.step ?? 0] ?? { line: 1, given: '' }, asProblem(fault!));
    return;
  }
  const fabric = fabricOf(laid.value);
  if (fabric.ok) return;
  // The fault names a row: the statement to blame is the first whose rows, alone with those before it, fail.
  const bad = draft.steps.findIndex((_, i) => {
    const upTo = scheduleOf(draft.steps.slice(0, i + 1), rowMm);
    return upTo.ok && !fabricOf(upTo.value).ok;
  });
  draft.blame(draft.clauses[bad] ?? { line: 1, given: '' }, asProblem(fabric.faults[0]!));
};

/**
 * The written counts of one piece, in the plain words of the trade, American or British: one statement
 * a sentence. Brackets hold remarks; a number of stitches in them is checked.
 *
 * @returns the steps, or a fault for each line that cannot be read, with the line, its words and the mend.
 *   No text throws.
 */
export const readCounts = (text: string, options: ReadOptions = {}): Result<Step[]> => {
  const draft = new Draft(options.field ?? 'instructions');
  const clauses = clausesOf(text);
  for (const clause of clauses) readInto(draft, clause);
  if (clauses.length === 0) draft.blame({ line: 1, given: '' }, problem.nothing());
  if (draft.faults.length === 0) checkRows(draft, options.rowMm ?? SOME_ROW);
  return draft.faults.length > 0 ? fail(...draft.faults) : ok(draft.steps);
};
