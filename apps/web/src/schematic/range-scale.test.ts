import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { domainOf, hillPath, percentIn } from './range-scale.ts';

const range = (p05Mm: number, p50Mm: number, p95Mm: number) => ({ p05Mm, p50Mm, p95Mm });

const anyRange = fc
  .array(fc.integer({ min: -3000, max: 30000 }), { minLength: 5, maxLength: 5 })
  .map((tenths) => {
    const [a, b, c, d, e] = tenths.map((each) => each / 10);
    const [low, mid, high] = [a!, b!, c!].sort((x, y) => x - y);
    const [min, max] = [d!, e!].sort((x, y) => x - y);
    return { range: range(low!, mid!, high!), wanted: { min: min!, max: max! } };
  });

describe('scale of a range strip', () => {
  it('W-R1: every number lies between 26 % and 74 % of the strip, in order', () => {
    fc.assert(
      fc.property(anyRange, ({ range: r, wanted }) => {
        const domain = domainOf(r, wanted);
        const at = [r.p05Mm, r.p50Mm, r.p95Mm, wanted.min, wanted.max].map((mm) =>
          percentIn(domain, mm),
        );
        // 1e-6: rounding of percentages.
        expect(Math.min(...at)).toBeGreaterThan(26 - 1e-6);
        expect(Math.max(...at)).toBeLessThan(74 + 1e-6);
        expect(at[0]! <= at[1]! && at[1]! <= at[2]! && at[3]! <= at[4]!).toBe(true);
      }),
    );
  });

  it('W-R2: numbers that coincide stand in the middle, without a hill', () => {
    const point = range(182, 182, 182);
    const domain = domainOf(point, null);
    expect(percentIn(domain, 182)).toBeCloseTo(50, 9);
    expect(hillPath(point, domain)).toBe('');
  });

  it('W-R3: the hill is highest over the median and as wide as its sides are unsure', () => {
    const skew = range(90, 100, 120);
    const domain = { min: 0, max: 200 };
    const points = [...hillPath(skew, domain).matchAll(/L([\d.]+) ([\d.]+)/g)].map((m) => [
      Number(m[1]),
      Number(m[2]),
    ]);
    const top = points.reduce((best, p) => (p[1]! < best[1]! ? p : best));
    expect(top[0]).toBeCloseTo(50, 1);
    // At the 5th and 95th percentile a normal curve has exp(−1.645²/2) = 0.2585 of its height.
    const heightNear = (x: number) =>
      points.reduce((best, p) => (Math.abs(p[0]! - x) < Math.abs(best[0]! - x) ? p : best))[1]!;
    // 3: points lie a tenth of a standard deviation apart, which there is 2.1 of a height of 96.
    for (const x of [45, 60]) expect(Math.abs(heightNear(x) - (100 - 96 * 0.2585))).toBeLessThan(3);
  });
});
