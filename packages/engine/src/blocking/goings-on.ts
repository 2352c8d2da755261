import type { BlockHooks } from './types.ts';

/** Tells how far a plan is, and hears whether to go on. */
export interface GoingsOn {
  /** False once the caller has asked to stop; called before each solve that takes time. */
  readonly goOn: () => boolean;
  /** The piece's own share of its work that is done, 0 to 1. */
  readonly reach: (share: number) => void;
  readonly stopped: () => boolean;
}

/** For piece number `at` of `pieces`. Between marks the share creeps on by halves of what is left. */
export const goingsOn = (
  hooks: BlockHooks,
  piece: string,
  at: number,
  pieces: number,
): GoingsOn => {
  let [share, ceiling, stopped] = [0, 0.3, false];
  const tell = () => {
    const done = (at + share) / pieces;
    if (hooks.onStep !== undefined && !hooks.onStep({ piece, done })) stopped = true;
  };
  return {
    goOn: () => {
      share += (ceiling - share) / 16;
      if (!stopped) tell();
      return !stopped;
    },
    reach: (reached) => {
      share = Math.max(share, reached);
      ceiling = Math.min(1, reached + 0.3);
    },
    stopped: () => stopped,
  };
};
