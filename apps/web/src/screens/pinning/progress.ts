import { stockWithout } from '@dryflat/engine/blocking';
import { type MatStep, type MatWork, type PinStock, pinsIn } from '@dryflat/record';

/** How the work on a piece goes on; each changes the draft it is handed. `now`: ISO moment. */

const runsWith = (list: PinStock['combs'], lengthMm: number): PinStock['combs'] => {
  const at = list.findIndex((each) => Math.abs(each.lengthMm - lengthMm) < 0.5);
  if (at < 0) return [...list, { lengthMm, count: 1 }];
  return list.map((each, k) => (k === at ? { ...each, count: each.count + 1 } : each));
};

/** The box with one thing put back. */
const stockWith = (stock: PinStock, { kind, along }: MatStep, straight: number): PinStock => {
  const length = along?.lengthMm ?? 0;
  return {
    straight: stock.straight + straight + Number(kind === 'straight'),
    tPins: stock.tPins + Number(kind === 't-pin'),
    combs: kind === 'comb' ? runsWith(stock.combs, length) : stock.combs,
    wires: kind === 'wire' ? runsWith(stock.wires, length) : stock.wires,
  };
};

const stockLeft = (stock: PinStock, { kind, along }: MatStep, straight: number): PinStock =>
  structuredClone(stockWithout(stock, [{ kind, along: along ?? null }], straight)) as PinStock;

/** Says of a step that it is in, left out, or still to come; what is in the box follows. */
export const setDone = (work: MatWork, at: number, done: MatStep['done']): void => {
  const step = work.steps[at];
  if (step === undefined || step.done === done) return;
  const [before, old] = [pinsIn(work).straight, step.done];
  if (done === undefined) delete step.done;
  else step.done = done;
  if (!work.left) return;
  // Straight pins beside the step itself: those that hold a wire.
  const more = Math.abs(pinsIn(work).straight - before) - Number(step.kind === 'straight');
  if (done === 'in') work.left = stockLeft(work.left, step, more);
  else if (old === 'in') work.left = stockWith(work.left, step, more);
};

/** To a step, or past the last: then the time is noted, once. */
export const goTo = (work: MatWork, at: number, now: string): void => {
  work.at = Math.min(work.steps.length, Math.max(0, at));
  const allDecided = work.steps.every(({ done }) => done !== undefined);
  if (work.at === work.steps.length && allDecided) work.pinned ??= now;
};

/** The step that is shown is in, unless it was decided before; on to the next. */
export const goOn = (work: MatWork, now: string): void => {
  const step = work.steps[work.at];
  if (step === undefined) return;
  if (step.done === undefined) setDone(work, work.at, 'in');
  goTo(work, work.at + 1, now);
};

export const goBack = (work: MatWork, now: string): void => goTo(work, work.at - 1, now);

/** The step that is shown is left out; on to the next. */
export const passBy = (work: MatWork, now: string): void => {
  setDone(work, work.at, 'passed');
  goTo(work, work.at + 1, now);
};

/** The step that is shown is not in after all; nor is the piece pinned. */
export const takeBack = (work: MatWork): void => {
  setDone(work, work.at, undefined);
  delete work.pinned;
};

/** Ordinals of the steps that were left out. */
export const leftOut = ({ steps }: Pick<MatWork, 'steps'>): number[] =>
  steps.flatMap(({ done }, k) => (done === 'passed' ? [k] : []));
