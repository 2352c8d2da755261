import type { Shape, Step } from './types.ts';

const shapedBy = (step: Shape): number => {
  const grows = step.by === 'increase' || step.by === 'cast-on';
  const edges = step.edge === 'each' ? 2 : 1;
  return step.stitches * step.times * edges * (grows ? 1 : -1);
};

/**
 * Stitches on the needle after each step, of one side once it divides; null where two lists run side
 * by side and neither alone says, and where there is no cast-on yet.
 */
export const runningCounts = (steps: readonly Step[]): (number | null)[] => {
  let now: number | null = null;
  let marked = false;
  const beside = steps.some((step) => step.kind === 'same-time');
  return steps.map((step) => {
    if (step.kind === 'cast-on') now = step.stitches;
    if (now === null) return null;
    if (step.kind === 'shape') now += shapedBy(step);
    if (step.kind === 'evenly') now += step.change === 'increase' ? step.stitches : -step.stitches;
    if (step.kind === 'divide') now = (now - step.stitches) / 2;
    const at = marked && beside ? null : now;
    if (step.kind === 'divide' || step.kind === 'mark') marked = true;
    return at;
  });
};
