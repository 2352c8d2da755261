import { evenGaps } from './even-gaps.ts';
import { takesTwoRows } from './schedule.ts';
import { spaceRows } from './space-rows.ts';
import type { Shape, Step } from './types.ts';

/** Rows that a shaping takes. */
export const spanOf = (step: Shape): number =>
  step.first + (step.times - 1) * step.every + (takesTwoRows(step) ? 1 : 0);

/** Rows without shaping; no step where there are none. */
export const plain = (rows: number, fabric: 'rib' | 'main' = 'main'): Step[] =>
  rows > 0 ? [{ kind: 'work', fabric, extent: { rows } }] : [];

/** Several amounts one after the other, every second row; like ones together. */
const inSteps = (step: Shape, amounts: readonly number[]): Shape[] => {
  const found: Shape[] = [];
  for (const stitches of amounts.filter((amount) => amount > 0)) {
    const last = found.at(-1);
    if (last?.stitches === stitches) found[found.length - 1] = { ...last, times: last.times + 1 };
    else found.push({ ...step, stitches, first: 1, every: 2, times: 1 });
  }
  return found;
};

/** Single edges: the first at once, the next each on the second row after. */
const singles = (step: Shape, amounts: readonly number[]): Step[] =>
  inSteps(step, amounts).map((each, i) => {
    if (i > 0) return { ...each, first: 2 };
    return each.times === 1 ? { ...each, every: 1 } : each;
  });

/** Stitches bound off or cast on at an edge, over so many rows; the larger amounts first. */
export const boundOver = (step: Shape, total: number, rows: number): Step[] => {
  const two = takesTwoRows(step);
  const times = Math.max(1, Math.min(total, two ? Math.round(rows / 2) : Math.ceil(rows / 2)));
  const amounts = [...evenGaps(total, times)].sort((a, b) => b - a);
  const steps = two ? inSteps(step, amounts) : singles(step, amounts);
  const used = two ? 2 * times : 2 * times - 1;
  return [...steps, ...plain(rows - used)];
};

const onRows = (rows: number): 'any' | 'right-side' => (rows % 2 === 0 ? 'right-side' : 'any');

/** Rows that shaping may take from what follows, rather than be worked on wrong-side rows too. */
const BORROWED = 4;

/** Stitches that go or come one at a time (more where there are too few rows), over so many rows. */
export const decreased = (step: Shape, total: number, rows: number): Step[] => {
  const each = Math.max(1, Math.ceil(total / Math.max(1, rows)));
  const times = Math.max(1, Math.round(total / each));
  const starts = step.first === 1 && step.every !== 1;
  const shape = { ...step, stitches: each };
  if (times === 1) {
    const first = starts ? 1 : Math.max(1, rows);
    return [{ ...shape, first, every: first, times: 1 }, ...plain(rows - first)];
  }
  const room = starts ? rows - 1 : rows;
  const after = starts ? times - 1 : times;
  const sides = onRows(step.every);
  const short = sides === 'right-side' && room < 2 * after && room >= 2 * after - BORROWED;
  const wish = spaceRows({
    rows: short ? 2 * after : Math.max(room, after),
    times: after,
    on: sides,
  });
  const spaced = wish.ok
    ? wish
    : spaceRows({ rows: Math.max(room, after), times: after, on: 'any' });
  if (!spaced.ok) return [];
  const [lead, ...more] = spaced.value.runs;
  if (!lead) return [];
  const first = starts ? 1 : lead.every;
  return [
    { ...shape, first, every: lead.every, times: lead.times + (starts ? 1 : 0) },
    ...more.map((run) => ({ ...shape, first: run.every, ...run })),
    ...plain(spaced.value.rest),
  ];
};
