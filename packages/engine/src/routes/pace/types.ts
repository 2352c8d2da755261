import type { Basis } from '../../fabric/index.ts';
import type { LogNormal, Spread } from '../../stats/index.ts';

/** `worked`: stitches that are crossed, turned or worked in colours. `ripped`: taken back, which goes faster. */
export type WorkKind = 'plain' | 'worked' | 'ripped';

/** Knitting that is left. */
export interface WorkPart {
  readonly name: string;
  /** 0 or more. */
  readonly stitches: number;
  readonly fabric: WorkKind;
}

/** Stitches timed. */
export interface PaceEntry {
  readonly minutes: number;
  readonly stitches: number;
  readonly fabric: 'plain' | 'worked';
}

/** Sewing up: length of seams in mm, ends to weave in; before the block or after it. */
export interface Finishing {
  readonly seamsMm: number;
  readonly ends: number;
  readonly when: 'before-drying' | 'after-drying';
}

/** Yarn that may run out on the way. */
export interface YarnWait {
  /** Yarn at hand over yarn needed for the whole work; below 1 it runs out at that share of it. */
  readonly heldOverNeeded: LogNormal;
  /** Days from asking for another skein to holding it; 0 or more. */
  readonly shopDays: number;
  /** Asked for on the first day, or only when the yarn has run out. */
  readonly order: 'at-once' | 'when-short';
  /** The chance that it runs out, where it was drawn already: told in place of this question's own draws. */
  readonly chanceShort?: number;
}

export interface PaceQuestion {
  /** In the order in which they are worked. */
  readonly parts: readonly WorkPart[];
  readonly log: readonly PaceEntry[];
  /** Hours for knitting on each day of the week, Monday first; 7 numbers, 0 to 24. */
  readonly hours: readonly number[];
  /** ISO day on which the plan starts: `2031-04-09`. */
  readonly from: string;
  /** ISO days on which nothing is knit. */
  readonly away: readonly string[];
  /** Null: nothing to sew. */
  readonly finishing: Finishing | null;
  /** Washing and drying, hours by the clock; null where it is not washed. */
  readonly dryingHours: Spread | null;
  readonly yarn: YarnWait | null;
  /** ISO day by which it is wanted; null where none. */
  readonly by: string | null;
}

export interface PaceOptions {
  readonly seed?: number;
  /** 10,000 where left out. */
  readonly draws?: number;
}

/** Days and hours over the draws of a set of columns; index i is one imagined knitter. */
export interface PaceDraws {
  readonly n: number;
  /** Hours of work, knitting, ripping and finishing, drying and waits left out. */
  readonly hours: Float64Array;
  /** Whole days from `from` until it is done; Infinity where not within `HORIZON_DAYS`. */
  readonly days: Float64Array;
  /** Chance of being done by an ISO day, that day included; 0 before `from`. */
  chanceBy(day: string): number;
}

/** What ends on its own day. */
export interface Milestone {
  /** Stable: `part:0`, `finishing`, `drying`, `done`. */
  readonly id: string;
  readonly name: string;
  /** ISO days; null where not within the horizon. */
  readonly early: string | null;
  readonly middle: string | null;
  readonly late: string | null;
}

export interface CriticalStep {
  readonly id: string;
  /** `knitting the second sleeve`, `drying`, `waiting for yarn`. */
  readonly name: string;
  /** Mean days that would be gained if it took no time. */
  readonly daysGained: number;
  /** Share of the draws in which it would bring the day forward. */
  readonly share: number;
  /** Chance of meeting the date if it took no time; null where there is no date. */
  readonly chanceWithout: number | null;
}

export interface PaceForecast {
  readonly seed: number;
  readonly draws: number;
  /** Stitches a minute in the long run. */
  readonly pace: { readonly plain: Spread; readonly worked: Spread };
  readonly entries: number;
  readonly hours: Spread;
  readonly byPart: readonly { readonly name: string; readonly hours: Spread }[];
  /** Days with a chance, in order; `by` that day or before. */
  readonly days: readonly {
    readonly day: string;
    readonly chance: number;
    readonly cumulative: number;
  }[];
  /** Chance that it is not done within `HORIZON_DAYS`. */
  readonly never: number;
  readonly done: {
    readonly p05: string | null;
    readonly p50: string | null;
    readonly p95: string | null;
  };
  readonly milestones: readonly Milestone[];
  /** The step that costs most days first; empty where nothing is left. */
  readonly critical: readonly CriticalStep[];
  /** Null where no date is wanted. */
  readonly date: DateAdvice | null;
  readonly yarn: YarnAdvice | null;
  readonly sentence: string;
  readonly notices: readonly { readonly code: string; readonly text: string }[];
  readonly bases: readonly Basis[];
}

export interface DateAdvice {
  readonly by: string;
  readonly chance: number;
  /** Latest ISO day to start on with this week's hours for a chance of 90 %; null where none is left. */
  readonly latestStart: string | null;
  /** Hours a week, spread as they are now, for a chance of 90 %; null where not even 12 a day are enough. */
  readonly hoursPerWeek: number | null;
  /** The same day by day, Monday first. */
  readonly hours: readonly number[] | null;
}

export interface YarnAdvice {
  /** Chance that it runs out on the way. */
  readonly chanceShort: number;
  /** Last ISO day to ask for another skein so that knitting stops for want of it with 5 % at most; null where it need not be asked for, `too-late` is true where that day is past. */
  readonly lastOrderDay: string | null;
  readonly tooLate: boolean;
  /** Days lost to waiting. */
  readonly waitDays: Spread;
}
