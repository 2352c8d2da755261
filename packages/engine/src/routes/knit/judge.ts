import { bounds, missOf, share, shareAll, verdicts } from '../../garment/index.ts';
import type { RouteFit } from '../types.ts';
import type { Luck, Make } from './luck.ts';
import type { Judged } from './targets.ts';

export type JudgedState = 'dried' | 'worn' | 'rewashed';

export interface Judgement {
  readonly fit: readonly RouteFit[];
  readonly chanceAll: number | null;
  /** 1 where everything is in range, draw by draw; null where nothing is judged. */
  readonly fits: Uint8Array | null;
}

/** Verdict of each target, draw by draw: −1 too small, 0 in range, +1 too large. */
const verdictsOf = (
  luck: Luck,
  makes: readonly Make[],
  { targets, body }: Judged,
  state: JudgedState,
): Int8Array[] =>
  targets.map((target) => {
    const make = makes[target.at]!;
    const lengths = luck.lengths(target.at, make, state);
    return verdicts({ ...luck.draws, body }, target, lengths, make.factor);
  });

/** Chance that all of it fits, for garments that differ in size alone: each length is looked at once. */
export const chanceOfSizes = (luck: Luck, judged: Judged, state: JudgedState) => {
  const seen = new Map<string, Uint8Array>();
  const inRange = (makes: readonly Make[], k: number): Uint8Array => {
    const target = judged.targets[k]!;
    const { factor, pinnedTo, limit, hang, from } = makes[target.at]!;
    const key = `${k} ${factor} ${pinnedTo} ${limit} ${hang} ${from}`;
    const had = seen.get(key);
    if (had !== undefined) return had;
    const [verdict] = verdictsOf(luck, makes, { ...judged, targets: [target] }, state);
    const fits = Uint8Array.from(verdict!, (each) => (each === 0 ? 1 : 0));
    seen.set(key, fits);
    return fits;
  };
  return (makes: readonly Make[]): number => {
    if (judged.targets.length === 0) return 0;
    const all = judged.targets.map((_, k) => inRange(makes, k));
    let hits = 0;
    for (let i = 0; i < luck.draws.n; i++) {
      let fits = 1;
      for (let k = 0; k < all.length; k++) fits &= all[k]![i]!;
      hits += fits;
    }
    return hits / luck.draws.n;
  };
};

const allFit = (all: readonly Int8Array[]): Uint8Array | null => {
  const first = all[0];
  if (first === undefined) return null;
  const out = new Uint8Array(first.length);
  for (let i = 0; i < out.length; i++) {
    let fits: 0 | 1 = 1;
    for (let k = 0; k < all.length; k++) if (all[k]![i] !== 0) fits = 0;
    out[i] = fits;
  }
  return out;
};

/** How a garment that is made so fits in a state. */
export const judge = (
  luck: Luck,
  makes: readonly Make[],
  judged: Judged,
  state: JudgedState,
): Judgement => {
  const all = verdictsOf(luck, makes, judged, state);
  const fit = judged.targets.map((target, k): RouteFit => {
    const range = bounds(target);
    const finishedMm = luck.range(target.at, makes[target.at]!, state);
    const sides = { tooSmall: share(all[k]!, -1), tooLarge: share(all[k]!, 1) };
    return {
      landmark: target.wanted.landmark,
      measurement: target.measurement.wanted.id,
      wantedMm: { min: range.low, max: range.high },
      finishedMm,
      chance: share(all[k]!, 0),
      ...sides,
      miss: missOf(range, sides, finishedMm.p50Mm),
    };
  });
  return { fit, chanceAll: shareAll(all), fits: allFit(all) };
};

/** The landmark with the least chance, the first of several; null where none is judged. */
export const worstOf = (fit: readonly RouteFit[]): RouteFit | null =>
  fit.reduce<RouteFit | null>((a, b) => (a === null || b.chance < a.chance ? b : a), null);
