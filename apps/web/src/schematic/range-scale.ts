/** 5th, 50th and 95th percentile, mm. */
export interface RangeMm {
  readonly p05Mm: number;
  readonly p50Mm: number;
  readonly p95Mm: number;
}

export interface Interval {
  readonly min: number;
  readonly max: number;
}

/** Share of the strip left free on each side, so that the outer numbers have a place. */
const MARGIN = 0.26;

/** Shown from–to, mm: holds the range and the wanted interval with a margin on each side. */
export const domainOf = (range: RangeMm, wanted: Interval | null): Interval => {
  const low = Math.min(range.p05Mm, wanted?.min ?? range.p05Mm);
  const high = Math.max(range.p95Mm, wanted?.max ?? range.p95Mm);
  /** Numbers that coincide are shown in the middle of a centimetre. */
  const half = high > low ? (high - low) / 2 : 5;
  const whole = half / (1 - 2 * MARGIN);
  return { min: (low + high) / 2 - whole, max: (low + high) / 2 + whole };
};

/** Where a length falls in the domain, in percent of the strip, held to 0–100. */
export const percentIn = (domain: Interval, mm: number): number =>
  Math.min(100, Math.max(0, (100 * (mm - domain.min)) / (domain.max - domain.min)));

/** 95th percentile of the standard normal. */
const Z95 = 1.6448536269514722;

/**
 * The range as a hill, for a strip 100 wide and 100 high, open at its foot: two halves of a normal
 * curve that meet at the median, each with the spread of its side. Empty for a range of no width.
 */
export const hillPath = (range: RangeMm, domain: Interval): string => {
  const [left, right] = [range.p50Mm - range.p05Mm, range.p95Mm - range.p50Mm].map((d) => d / Z95);
  if (!(left! + right! > 0)) return '';
  const steps = Array.from({ length: 49 }, (_, i) => -2.4 + i / 10);
  const points = steps.map((z) => {
    const at = range.p50Mm + z * (z < 0 ? left! : right!);
    const height = Math.exp((-z * z) / 2);
    return `${percentIn(domain, at).toFixed(2)} ${(100 - 96 * height).toFixed(2)}`;
  });
  return `M${points[0]!.split(' ')[0]} 100 L${points.join(' L')} L${points.at(-1)!.split(' ')[0]} 100 Z`;
};
