import { type ForecastQuestion, wetStretch } from '../../garment/index.ts';
import { unitMean } from '../../stats/index.ts';
import type { Luck, Make } from './luck.ts';

/** All of it dried without pins, as it is. */
export const layMakes = (luck: Luck): Make[] =>
  luck.pinned.map(({ pinLimit, hang }) => ({
    from: 'there',
    factor: 1,
    pinnedTo: null,
    limit: pinLimit,
    hang,
  }));

/** Pinned to the pattern or the plan, no stretch beyond `most`. */
export const pinMakes = (luck: Luck, most = Number.POSITIVE_INFINITY): Make[] =>
  luck.pinned.map(({ pinnedTo, pinLimit, hang }) => ({
    from: 'there',
    factor: 1,
    pinnedTo,
    limit: Math.min(pinLimit, most),
    hang,
  }));

/** Line load of a hard pull, N/mm: twice what pinning by hand is trusted with. Assumption. */
const HARD_LOAD = 0.2;

/** Median of what lies wet without pins, mm. */
export const wetMm = (luck: Luck, make: Make, at: number): number =>
  luck.range(at, make, 'wet').p50Mm;

/**
 * Pinned beyond the wanted length, so that what is kept of the stretch ends there: wet + (wanted − wet) /
 * kept, as far as a hard pull goes.
 */
export const hardMakes = (question: ForecastQuestion, luck: Luck): Make[] => {
  const kept = unitMean(luck.known.kept.density);
  const stretch = wetStretch(question);
  return pinMakes(luck).map((make, at) => {
    if (make.pinnedTo === null) return make;
    const wet = wetMm(luck, make, at);
    const over = make.pinnedTo - wet;
    return {
      ...make,
      pinnedTo: over <= 0 ? make.pinnedTo : wet + over / kept,
      limit: Math.max(make.limit, stretch(luck.pinned[at]!.direction, HARD_LOAD)),
    };
  });
};

/** What the plan says of drying. */
export const plannedMakes = (question: ForecastQuestion, luck: Luck): Make[] =>
  question.drying === 'pin' ? pinMakes(luck) : layMakes(luck);

/** The same made `factor` times as large, pins and all. */
export const times = (make: Make, factor: number, from: Make['from'] = make.from): Make => ({
  ...make,
  from,
  factor: make.factor * factor,
  pinnedTo: make.pinnedTo === null ? null : make.pinnedTo * factor,
});
