import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fillNormals, randomSource } from '../../stats/index.ts';
import { sampleInformation } from './sample-information.ts';

const N = 20_000;
const normals = (seed: number, n = N): Float64Array =>
  fillNormals(randomSource(seed), new Float64Array(n));

/** Three routes on one unknown: good where it is above 0.4, good near 0, and a sure half. */
const worthOf = (x: number): readonly [number, number, number] => [
  x > 0.4 ? 1 : 0,
  Math.abs(x) < 0.6 ? 0.9 : 0.1,
  0.5,
];
const routesOn = (x: Float64Array): Float64Array[] =>
  [0, 1, 2].map((k) => x.map((each) => worthOf(each)[k]!));

/**
 * By brute force: readings drawn, for each the exact normal posterior of the unknown drawn again, the best
 * mean then, averaged, less the best mean now. Independent of any regression.
 */
const nested = (errorSd: number, outer: number, inner: number): number => {
  const source = randomSource(77);
  const meanOf = (draw: () => number): number[] => {
    const sums = [0, 0, 0];
    for (let j = 0; j < inner; j++) {
      const worths = worthOf(draw());
      for (let k = 0; k < 3; k++) sums[k]! += worths[k]! / inner;
    }
    return sums;
  };
  const keep = 1 / (1 + errorSd * errorSd);
  const sd = Math.sqrt(1 - keep);
  let after = 0;
  const now = [0, 0, 0];
  for (let i = 0; i < outer; i++) {
    const reading = source.normal() + errorSd * source.normal();
    const then = meanOf(() => keep * reading + sd * source.normal());
    after += Math.max(...then) / outer;
    for (let k = 0; k < 3; k++) now[k]! += then[k]! / outer;
  }
  return after - Math.max(...now);
};

describe('value of information', () => {
  it.each([0.1, 0.5, 1, 2])(
    'O8: a reading with error %s is worth what nested sampling finds',
    (error) => {
      const x = normals(1);
      const e = normals(2);
      const found = sampleInformation(routesOn(x), [x.map((each, i) => each + error * e[i]!)]);
      // Nested: SD of the best mean about 0.25, over √1,500 readings, and a bias upward of about 0.4/√800 where routes
      // are close; ours: 0.4/√20,000, and edges that polynomials round off.
      expect(Math.abs(found.gain - nested(error, 1500, 800))).toBeLessThan(0.025);
    },
  );

  it('O8: the value of knowing all is the mean of the best less the best mean', () => {
    const x = normals(3);
    const all = routesOn(x);
    const mean = (values: Float64Array) => values.reduce((a, b) => a + b, 0) / N;
    const best = mean(x.map((each) => Math.max(...worthOf(each)))) - Math.max(...all.map(mean));
    const { gain, explains } = sampleInformation(all, [x]);
    // A polynomial of degree 8 rounds the three sharp edges off: it errs in about 0.06 of the draws by ½.
    expect(Math.abs(gain - best)).toBeLessThan(0.03);
    expect(gain).toBeGreaterThan(0.1);
    expect(explains[0]).toBeGreaterThan(0.75);
    expect(explains[2]).toBe(0);
  });

  it('O9: a reading of something else is worth nothing', () => {
    const all = routesOn(normals(4));
    for (const seed of [5, 6, 7, 8]) {
      const { gain, explains } = sampleInformation(all, [normals(seed)]);
      // Halves differ by chance: SD of a mean of half the draws, 0.5/√10,000 = 0.005, twice.
      expect(gain).toBeLessThan(0.01);
      // Nine columns fitted to noise explain about −9/10,000 of the other half, give or take as much.
      expect(explains[0]).toBeLessThan(0.003);
    }
  });

  it('O9: a finer reading is not worth less', () => {
    const x = normals(9);
    const e = normals(10);
    const gains = [2, 1, 0.5, 0.1].map(
      (error) => sampleInformation(routesOn(x), [x.map((each, i) => each + error * e[i]!)]).gain,
    );
    // Each is known to about 0.003.
    for (let k = 1; k < gains.length; k++) expect(gains[k]!).toBeGreaterThan(gains[k - 1]! - 0.01);
  });

  it('O9: two readings together tell what neither does alone', () => {
    const [a, b] = [normals(11), normals(12)];
    const same = a.map((each, i) => (each > 0 === b[i]! > 0 ? 1 : 0));
    const worths = [same, same.map(() => 0.5)];
    expect(sampleInformation(worths, [a]).gain).toBeLessThan(0.01);
    expect(sampleInformation(worths, [b]).gain).toBeLessThan(0.01);
    // Knowing both signs is worth a quarter; the product of the readings has the sign that is asked for.
    expect(sampleInformation(worths, [a, b]).gain).toBeGreaterThan(0.23);
  });

  it('O9: shares and chances stay between 0 and 1, whatever the columns', () => {
    const column = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), {
      minLength: 400,
      maxLength: 400,
    });
    fc.assert(
      fc.property(fc.array(column, { minLength: 1, maxLength: 4 }), column, (worths, reading) => {
        const found = sampleInformation(
          worths.map((w) => Float64Array.from(w)),
          [Float64Array.from(reading)],
        );
        for (const each of [...found.explains, found.gain, found.chanceOfChange])
          expect(each >= 0 && each <= 1).toBe(true);
        if (worths.length === 1) expect(found.gain).toBe(0);
      }),
      { seed: 5, numRuns: 30 },
    );
  });
});
