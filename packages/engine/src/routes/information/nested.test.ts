import { expect, test } from 'vitest';
import { drawAll } from '../../garment/index.ts';
import { normalColumns, posterior, randomSource } from '../../stats/index.ts';
import { QUESTION } from '../check/questions.ts';
import { judge } from '../knit/judge.ts';
import { clothOf, type Luck, luckOf, type Make } from '../knit/luck.ts';
import { ownTargets } from '../knit/targets.ts';
import { benchOf, drawLuck } from '../open/bench.ts';
import { together } from '../open/draft.ts';
import { openRipping } from '../open/rip.ts';
import { openOtherSizes } from '../open/sizes.ts';
import { sampleInformation } from './sample-information.ts';

const { forecast } = QUESTION;
const luck = drawLuck(QUESTION, 5, 10_000);
const bench = benchOf(QUESTION, luck);
const drafts = together([openRipping(bench), openOtherSizes(bench)]).drafts;
const made = drafts.map(({ makes }) => makes!);

const chances = (on: Luck, makes: readonly Make[]): Uint8Array =>
  judge(on, makes, ownTargets(forecast, on), forecast.judgeAt).fits!;
const mean = (values: ArrayLike<number>): number =>
  Array.from(values).reduce((a, b) => a + b, 0) / values.length;
/** Of every other draw, so that a route that was lucky in one half is judged by the other. */
const half = (fits: Uint8Array, from: 0 | 1): number => mean(fits.filter((_, i) => i % 2 === from));

/** How far the growth from as knit to dried is read off: a swatch washed and counted again. */
const ERROR = 0.017;
const DIRECTIONS = ['width', 'length'] as const;

/** The garment as it is believed after such readings: the closed posterior, drawn again. */
const after = (readings: readonly number[], seed: number): Luck => {
  const { model, evidence } = luck.known;
  const read = DIRECTIONS.map((direction, k) => ({
    form: model.fabric.driedOverAsKnit[direction],
    value: readings[k]!,
    sd: ERROR,
  }));
  const post = posterior(luck.known.post.n, [...evidence, ...read]);
  const known = { ...luck.known, post };
  const n = 1600;
  const normals = normalColumns(seed, n);
  return luckOf(forecast, clothOf(known, drawAll(model, post, known.kept, { n, seed }), normals));
};

test('O8: washing a swatch is worth what drawing its reading and learning from it, again and again, finds', () => {
  const now = made.map((makes) => mean(chances(luck, makes)));
  const best = now.indexOf(Math.max(...now));
  const source = randomSource(91);
  const OUTER = 250;
  const gains = Array.from({ length: OUTER }, (_, j) => {
    const i = Math.floor(source.uniform() * luck.draws.n);
    const readings = DIRECTIONS.map(
      (d) => luck.draws.driedOverAsKnit[d][i]! + ERROR * source.normal(),
    );
    const then = after(readings, j);
    const each = made.map((makes) => chances(then, makes));
    const chosen = each.map((fits) => half(fits, 0));
    const pick = chosen.indexOf(Math.max(...chosen));
    return half(each[pick]!, 1) - half(each[best]!, 1);
  });
  const brute = mean(gains);
  const columns = DIRECTIONS.map((d) => {
    const z = luck.normals.normal(`test ${d}`);
    return luck.draws.driedOverAsKnit[d].map((value, i) => value + ERROR * z[i]!);
  });
  const worths = made.map((makes) => Float64Array.from(chances(luck, makes)));
  const { gain } = sampleInformation(worths, columns);
  // Nested: SD of a gain about 0.1, over √250 readings 0.006, two of them; a choice that errs among 800 draws costs
  // nested sampling some 0.005, and the polynomials cost ours as much.
  expect(Math.abs(gain - brute)).toBeLessThan(0.02);
  expect(gain).toBeGreaterThan(0.025);
});
