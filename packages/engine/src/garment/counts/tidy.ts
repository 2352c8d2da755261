import { ok, type Result } from '../../units/index.ts';
import { fabricOf, workedIn } from './fabric-rows.ts';
import { scheduled } from './schedule.ts';
import { stepsOf } from './steps-of.ts';
import type { Pitch, Step } from './types.ts';

/**
 * The same rows in the one wording that is used here: lengths become rows of this gauge, shaping that
 * repeats is one step, and stitches that nothing is said about are left on a holder.
 */
export const tidySteps = (steps: readonly Step[], pitch: Pick<Pitch, 'row'>): Result<Step[]> => {
  const schedule = scheduled(steps, pitch.row);
  if (!schedule.ok) return schedule;
  const fabric = fabricOf(schedule.value);
  return fabric.ok ? ok(stepsOf(schedule.value, fabric.value)) : fabric;
};

/**
 * Stitches of all rows of one piece, both sides where it divides; the area of its outline over that of
 * a stitch. Edges cast on and bound off are not counted apart. Lengths become rows of this gauge.
 */
export const stitchesIn = (steps: readonly Step[], pitch: Pick<Pitch, 'row'>): Result<number> => {
  const schedule = scheduled(steps, pitch.row);
  if (!schedule.ok) return schedule;
  const fabric = fabricOf(schedule.value);
  return fabric.ok ? ok(workedIn(fabric.value)) : fabric;
};
