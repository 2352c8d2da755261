import {
  type Affine,
  add,
  jointOf,
  type LogNormal,
  meanOf,
  type Posterior,
  posterior,
  sdOf,
  Unknowns,
} from '../../stats/index.ts';
import {
  LONG_RUN_SD,
  MINUTE_SD,
  PART_SD,
  PLAIN_PACE,
  RIPPED_RATIO,
  SITTING_SD,
  WORKED_RATIO,
} from './assumptions.ts';
import type { PaceEntry, WorkKind } from './types.ts';

/** Log stitches a minute of each kind of work: a joint normal, closed form. */
export interface Hand {
  readonly post: Posterior;
  readonly forms: Readonly<Record<WorkKind, Affine>>;
}

const KINDS = ['plain', 'worked', 'ripped'] as const;

/** SD of the log pace of one sitting: sittings differ, and minutes are rounded. */
const entrySd = ({ minutes }: PaceEntry): number =>
  Math.hypot(SITTING_SD, MINUTE_SD / Math.max(minutes, 1));

/**
 * The pace of this hand: stitches a minute in the long run, log-normal, with worked stitches a share
 * of plain ones; each timed sitting narrows both. `LONG_RUN_SD` stays whatever is timed.
 */
export const handOf = (log: readonly PaceEntry[]): Hand => {
  const unknowns = new Unknowns();
  const timed = unknowns.fresh(Math.log(PLAIN_PACE.median), PLAIN_PACE.logSd);
  const worked = unknowns.fresh(Math.log(WORKED_RATIO.median), WORKED_RATIO.logSd);
  const ripped = unknowns.fresh(Math.log(RIPPED_RATIO.median), RIPPED_RATIO.logSd);
  const longRun = unknowns.fresh(0, LONG_RUN_SD);
  const kinds = { plain: timed, worked: add(timed, worked) };
  const observations = log.map((entry) => ({
    form: kinds[entry.fabric],
    value: Math.log(entry.stitches / entry.minutes),
    sd: entrySd(entry),
  }));
  return {
    post: posterior(unknowns.count, observations),
    forms: {
      plain: add(kinds.plain, longRun),
      worked: add(kinds.worked, longRun),
      ripped: add(kinds.plain, ripped, longRun),
    },
  };
};

/** Stitches a minute. */
export const paceOf = ({ post, forms }: Hand, kind: WorkKind): LogNormal => ({
  median: Math.exp(meanOf(post, forms[kind])),
  logSd: sdOf(post, forms[kind]),
});

/** Hours for a part: log-normal, exactly. 0 for no stitches. */
export const hoursOf = (hand: Hand, kind: WorkKind, stitches: number): LogNormal => {
  const pace = paceOf(hand, kind);
  return { median: stitches / pace.median / 60, logSd: Math.hypot(pace.logSd, PART_SD) };
};

/** Means and the joint covariance of the log paces, in the order of `KINDS`. */
export const jointPace = ({ post, forms }: Hand) => ({
  kinds: KINDS,
  ...jointOf(
    post,
    KINDS.map((kind) => forms[kind]),
  ),
});
