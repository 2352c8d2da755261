import { type MatWork, pinsMissing, pinTotal } from '@dryflat/record';

/** How far a piece is: `step 7 of 26`, `pinned`, `unpinned`. */
export const stageWords = (work: MatWork): string => {
  const { pinned, out, at, steps } = work;
  if (out !== undefined)
    return pinTotal(pinsMissing({ onMat: [work] })) === 0 ? 'unpinned' : 'pins coming out';
  if (pinned !== undefined) return 'pinned';
  return at < steps.length ? `step ${at + 1} of ${steps.length}` : 'some pins left out';
};
