import type { InMat, PiecePlan } from '@dryflat/engine/blocking';
import { type MatStep, type MatWork, pinsForEachWire } from '@dryflat/record';
import { liesOf, stepOf } from './freeze.ts';
import { referencesOf } from './step-frame.ts';

/** Steps that are in stand where the tape found them, with the distances that are so. */
const standWhereTheyAre = (work: MatWork, inMat: readonly InMat[]): void => {
  const at = new Map(inMat.map(({ order, to }) => [order, to]));
  work.steps.forEach((step, k) => {
    const to = at.get(k + 1);
    if (to) [step.xMm, step.yMm] = [to.x, to.y];
  });
  for (const step of work.steps) if (step.done === 'in') measureAgain(work, step);
};

const measureAgain = (work: MatWork, step: MatStep): void =>
  referencesOf(work, step).forEach((place, k) => {
    const from = step.from[k];
    if (place && from) from.mm = Math.hypot(place[0] - step.xMm, place[1] - step.yMm);
  });

/**
 * Puts a new plan of what is still to come in place of the old: steps up to the last that is in stay, with
 * their numbers; those that were open among them are left out. What was told of steps that are gone goes
 * with them.
 */
export const takeOver = (work: MatWork, plan: PiecePlan, inMat: readonly InMat[]): void => {
  standWhereTheyAre(work, inMat);
  const last = work.steps.findLastIndex(({ done }) => done === 'in');
  const stay = last + 1;
  const held = pinsForEachWire(work).reduce(
    (sum, pins, k) => sum + (work.steps[k]!.done === 'in' ? pins : 0),
    0,
  );
  for (const step of work.steps.slice(0, stay)) step.done ??= 'passed';
  work.steps = [...work.steps.slice(0, stay), ...plan.pins.map(stepOf)];
  work.told = work.told.filter(({ step }) => step < stay);
  work.pinsForWires = held + plan.pinsForWires;
  if (work.lies) work.lies = liesOf(plan, plan.laidOn);
  work.at = stay;
  delete work.pinned;
};
