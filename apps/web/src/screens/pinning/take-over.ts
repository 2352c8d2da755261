import type { PiecePlan } from '@dryflat/engine/blocking';
import type { MatWork } from '@dryflat/record';
import { liesOf, stepOf } from './freeze.ts';
import { pinsForEachWire } from './pins-to-come.ts';

/**
 * Puts a new plan of what is still to come in place of the old: steps up to the last that is in stay, with
 * their numbers; those that were open among them are left out. What was told of steps that are gone goes
 * with them.
 */
export const takeOver = (work: MatWork, plan: PiecePlan): void => {
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
  if (work.lies) work.lies = liesOf(plan, work.lies.mat);
  work.at = stay;
  delete work.pinned;
};
