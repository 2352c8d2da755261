import { expect, test } from 'vitest';
import { logNormal, quantilesInPlace, randomSource, Z95 } from '../stats/index.ts';
import { celsius, grams } from '../units/index.ts';
import { heatPerFibre } from './assumptions.ts';
import { imaginer, UNKNOWNS } from './imagined.ts';
import type { DryingQuestion } from './types.ts';

const QUESTION: DryingQuestion = {
  fibres: [{ fibre: 'wool', share: 1 }],
  dry: { mass: grams(500), air: 'here' },
  wet: grams(900),
  air: { temperature: celsius(20), humidityPercent: 50, movement: 'still' },
  lying: { on: 'rack', fabricM2: 1.2, layers: 2, thick: [], pinned: false },
  weighings: [],
};
const MIDDLE = new Float64Array(UNKNOWNS.length);

test('D5: the worked garment loses about 86 g/h on a rack and half on a mat', () => {
  // By hand: 0.6 m² lying, two faces, h = 8: 1.2 m² · 0.072 kg/m²h = 86 g/h. The assumptions take
  // h 7.8 and an underside that gets less air, 1.76 faces in all: within a fifth.
  const rack = imaginer(QUESTION)(MIDDLE).rateG;
  expect(Math.abs(rack / 86.4 - 1)).toBeLessThan(0.2);
  const mat = imaginer({ ...QUESTION, lying: { ...QUESTION.lying, on: 'mat' } })(MIDDLE).rateG;
  expect(mat / rack).toBeGreaterThan(0.5);
  expect(mat / rack).toBeLessThan(0.75);
});

test('D14: the ends of an assumed range are its 5 % and 95 % points', () => {
  const { median, logSd } = logNormal(5.5, 11);
  const source = randomSource(8);
  const values = Float64Array.from(
    { length: 20_000 },
    () => median * Math.exp(logSd * source.normal()),
  );
  const [p5, p95] = quantilesInPlace(values, [0.05, 0.95]);
  // Standard error of such a point with 20,000 draws is 0.3 % here; taken four times.
  expect(Math.abs(p5! / 5.5 - 1)).toBeLessThan(0.012);
  expect(Math.abs(p95! / 11 - 1)).toBeLessThan(0.012);
  expect(median * Math.exp(Z95 * logSd)).toBeCloseTo(11, 9);
});

test('D14: a guessed area is less sure than a measured one', () => {
  const guessed = { ...QUESTION, lying: { ...QUESTION.lying, fabricM2: null } };
  expect(heatPerFibre(guessed, 450).logSd).toBeGreaterThan(heatPerFibre(QUESTION, 450).logSd);
});

test('D14: the shares of the water make the water, and thicker places dry by thickness', () => {
  const thick = [{ name: 'hem', share: 0.2, times: 2 }];
  const lying = { ...QUESTION.lying, thick };
  const { places, excess, fibreG, dryMassG, rateG } = imaginer({ ...QUESTION, lying })(MIDDLE);
  expect(dryMassG + fibreG * excess).toBeCloseTo(900, 9);
  expect(places.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
  // Area is shared out, not made: the places lose together what the whole does.
  const together = places.reduce((sum, { share, course }) => sum + share * course.rate, 0);
  expect((together * fibreG) / rateG).toBeCloseTo(1, 12);
  // Twice the water under the same face.
  expect(places[0]!.course.rate / places[1]!.course.rate).toBeCloseTo(2, 12);
});
