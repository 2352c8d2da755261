import type { MatWork } from '@dryflat/record';

/** How far a piece is: `step 7 of 26`, `pinned`. */
export const stageWords = ({ pinned, out, at, steps }: MatWork): string => {
  if (out !== undefined) return 'pins coming out';
  if (pinned !== undefined) return 'pinned';
  return at < steps.length ? `step ${at + 1} of ${steps.length}` : 'some pins left out';
};
