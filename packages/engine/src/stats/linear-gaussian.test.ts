import { jStat } from 'jstat';
import { describe, expect, test } from 'vitest';
import {
  add,
  againstTheRest,
  constant,
  jointOf,
  meanOf,
  posterior,
  priorCovariance,
  scale,
  sdOf,
  squaredDistance,
  Unknowns,
} from './linear-gaussian.ts';

describe('conjugate normal update', () => {
  test('S1: one unknown, several readings: the textbook precision-weighted mean', () => {
    // Gelman et al., Bayesian Data Analysis, 3rd ed. (2013), eq. 2.12: precisions add.
    const unknowns = new Unknowns();
    const theta = unknowns.fresh(10, 2);
    const post = posterior(unknowns.count, [
      { form: theta, value: 13, sd: 1 },
      { form: theta, value: 12, sd: 0.5 },
    ]);
    const precision = 1 / 4 + 1 + 4;
    // Exact in real arithmetic; 1e-12 covers rounding of a 1 × 1 factorisation.
    expect(meanOf(post, theta)).toBeCloseTo((10 / 4 + 13 + 48) / precision, 12);
    expect(sdOf(post, theta)).toBeCloseTo(Math.sqrt(1 / precision), 12);
  });

  test('S2: the general case equals (I + AᵀWA)⁻¹AᵀWr worked by jStat matrix algebra', () => {
    const unknowns = new Unknowns();
    const [p, q] = unknowns.freshPair([1, -1], [0.7, 0.4], 0.5);
    const drift = unknowns.fresh(0, 0.3);
    const observations = [
      { form: add(p, drift), value: 1.4, sd: 0.2 },
      { form: add(q, scale(drift, -2), constant(0.1)), value: -0.8, sd: 0.3 },
      { form: add(p, q), value: 0.2, sd: 0.25 },
    ];
    const post = posterior(unknowns.count, observations);
    const n = unknowns.count;
    const row = (terms: readonly (readonly [number, number])[]) => {
      const out = new Array<number>(n).fill(0);
      for (const [i, a] of terms) out[i] = (out[i] ?? 0) + a;
      return out;
    };
    const A = observations.map((o) => row(o.form.terms).map((v) => v / o.sd));
    const r = observations.map((o) => [(o.value - o.form.constant) / o.sd]);
    const At = jStat.transpose(A);
    const precision = jStat.add(jStat.identity(n), jStat.multiply(At, A));
    const covariance = jStat.inv(precision);
    const mean = jStat.multiply(covariance, jStat.multiply(At, r)) as number[][];
    for (let i = 0; i < n; i++) expect(post.mean[i]).toBeCloseTo(mean[i]![0]!, 9);
    const joint = jointOf(post, [p, q]);
    const h = [row(p.terms)];
    const k = [row(q.terms)];
    const cov = jStat.multiply(jStat.multiply(h, covariance), jStat.transpose(k)) as
      | number[][]
      | number;
    expect(joint.covariance[1]).toBeCloseTo(typeof cov === 'number' ? cov : cov[0]![0]!, 9);
  });

  test('S3: a correlated pair has the SDs and the correlation asked for', () => {
    const unknowns = new Unknowns();
    const [a, b] = unknowns.freshPair([0, 0], [2, 3], 0.25);
    expect(priorCovariance(a, a)).toBeCloseTo(4, 12);
    expect(priorCovariance(b, b)).toBeCloseTo(9, 12);
    expect(priorCovariance(a, b)).toBeCloseTo(0.25 * 6, 12);
  });

  describe('observations against the rest', () => {
    const unknowns = new Unknowns();
    const [p, q] = unknowns.freshPair([1, -1], [0.7, 0.4], 0.5);
    const drift = unknowns.fresh(0, 2);
    const observations = [
      { form: add(p, drift), value: 1.4, sd: 0.003 },
      { form: add(q, scale(drift, -2), constant(0.1)), value: -0.8, sd: 0.3 },
      { form: add(p, q), value: 0.2, sd: 0.25 },
      { form: add(q, drift), value: 0.9, sd: 0.2 },
    ];
    const post = posterior(unknowns.count, observations);

    test.each([[[0]], [[1]], [[2]], [[0, 1]], [[1, 3]], [[0, 2, 3]], [[3, 2, 1, 0]]])(
      'S13: leaving out %j and learning again gives the same',
      (which) => {
        const group = which.map((k) => observations[k]!);
        const without = posterior(
          unknowns.count,
          observations.filter((each) => !group.includes(each)),
        );
        const { mean, covariance } = jointOf(
          without,
          group.map(({ form }) => form),
        );
        const told = againstTheRest(post, group);
        group.forEach(({ value, sd }, i) => {
          // S − V loses up to seven of sixteen digits where the noise is far below the doubt.
          expect(told.miss[i]).toBeCloseTo(value - mean[i]!, 7);
          for (let j = 0; j < group.length; j++)
            expect(told.covariance[i * group.length + j]).toBeCloseTo(
              covariance[i * group.length + j]! + (i === j ? sd * sd : 0),
              7,
            );
        });
      },
    );

    test('S13: the squared distance is that of jStat matrix algebra', () => {
      const told = againstTheRest(post, observations.slice(1));
      const [a, b] = [0, 2];
      const part = [
        [told.covariance[a * 3 + a]!, told.covariance[a * 3 + b]!],
        [told.covariance[b * 3 + a]!, told.covariance[b * 3 + b]!],
      ];
      const inverse = jStat.inv(part) as number[][];
      const [x, y] = [told.miss[a]!, told.miss[b]!];
      const expected =
        x * x * inverse[0]![0]! + 2 * x * y * inverse[0]![1]! + y * y * inverse[1]![1]!;
      expect(squaredDistance(told, [a, b])).toBeCloseTo(expected, 9);
    });
  });

  test('a negative or missing SD is a bug and throws', () => {
    expect(() => new Unknowns().fresh(0, -1)).toThrow(/fresh/);
    expect(() => new Unknowns().fresh(Number.NaN, 1)).toThrow(/fresh/);
  });
});
