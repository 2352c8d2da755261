import {
  type LogNormal,
  logNormal,
  type NormalColumns,
  normalColumns,
  quantilesInPlace,
  type Spread,
  wholePercent,
} from '../../stats/index.ts';
import { fail, ok, type Result } from '../../units/index.ts';
import { MOST_SHORT } from './assumptions.ts';
import { type DoubtColumns, doubtColumns } from './columns.ts';
import { yarnDrawsOf } from './draws.ts';
import { stockFaults, workFaults } from './faults.ts';
import { heldGrams, lotTerms, stockTerms, yarnHeld } from './held.ts';
import { lotAdvice } from './lots.ts';
import { yarnModel } from './model.ts';
import { yarnNeeded } from './needed.ts';
import { chanceShort } from './short.ts';
import type { SkeinAdvice, YarnLot, YarnQuestion, YarnStock, YarnWork } from './types.ts';

/** More skeins than this are another garment. */
const MOST_SKEINS = 200;

const spread = (values: Float64Array): Spread => {
  const [p5, p50, p95] = quantilesInPlace(values.slice(), [0.05, 0.5, 0.95]);
  return { p5: p5!, p50: p50!, p95: p95! };
};

/** One more skein of the kind of which there are most. */
const skeinOf = ({ lots }: YarnStock): YarnLot | null => {
  const sized = lots.filter((lot) => lot.gramsEach !== null || lot.metresEach !== null);
  const usual = sized.reduce<YarnLot | null>(
    (best, lot) => (best === null || lot.skeins > best.skeins ? lot : best),
    null,
  );
  return usual && { ...usual, skeins: 1 };
};

interface Needs {
  readonly needed: Float64Array;
  readonly returned: Float64Array;
  readonly held: Float64Array;
}

/** Fewest skeins that bring the chance below `MOST_SHORT`: skeins missing, all but the worst draws served. */
const skeinsToBuy = ({ needed, returned, held }: Needs, skein: Float64Array) => {
  const chanceWith = (k: number): number => {
    const more = held.map((grams, i) => grams + k * skein[i]!);
    return chanceShort(needed, returned, more);
  };
  let [low, high] = [0, MOST_SKEINS];
  if (chanceWith(high) >= MOST_SHORT) return null;
  while (low < high) {
    const half = (low + high) >> 1;
    if (chanceWith(half) < MOST_SHORT) high = half;
    else low = half + 1;
  }
  return { buy: low, chanceWithBuy: chanceWith(low) };
};

/** Held and given back over needed, by its 5 and 95 % points; far above 1 where nothing is needed. */
const ratioOf = ({ needed, returned, held }: Needs): LogNormal => {
  const least = 1e-6;
  const ratio = needed.map((need, i) =>
    Math.min(Math.max((held[i]! + returned[i]!) / Math.max(need, least), least), 1 / least),
  );
  const { p5, p95 } = spread(ratio);
  return logNormal(p5, p95);
};

const percent = (chance: number): string => {
  const whole = wholePercent(chance);
  return whole === 0 ? 'less than 1 %' : whole === 100 ? 'more than 99 %' : `${whole} %`;
};

const plural = (n: number): string => `${n} more skein${n === 1 ? '' : 's'}`;

const sentenceOf = (
  short: number,
  bought: { readonly buy: number; readonly chanceWithBuy: number } | null,
): string => {
  const risk = `The chance of running out is ${percent(short)}`;
  if (bought === null)
    return `${risk}. The size of a skein is not known, or no number of them is enough.`;
  return bought.buy === 0
    ? `${risk}: the yarn should last.`
    : `${risk}; ${plural(bought.buy)} would bring it to ${percent(bought.chanceWithBuy)}.`;
};

export interface SkeinOptions {
  /** Columns to draw from, to compare on the same luck; else `seed` and `draws` make some. */
  readonly normals?: NormalColumns;
  readonly seed?: number;
  /** 10,000 where left out. */
  readonly draws?: number;
  /** What is knit of the stock already: taken off what was bought, not off what was weighed as left. */
  readonly used?: YarnWork;
}

const NOTHING: YarnWork = {
  parts: [],
  castOn: 0,
  bindOff: 0,
  seamsMm: 0,
  joins: 0,
  ripped: [],
};

/** Both as one work; of a part that stands in both there is one, where it is first. */
const together = (a: YarnWork, b: YarnWork): YarnWork => {
  const parts = new Map(a.parts.map((part) => [part.name, part]));
  for (const part of b.parts) {
    const had = parts.get(part.name)?.stitches ?? 0;
    parts.set(part.name, { ...part, stitches: had + part.stitches });
  }
  return {
    parts: [...parts.values()],
    castOn: a.castOn + b.castOn,
    bindOff: a.bindOff + b.bindOff,
    seamsMm: a.seamsMm + b.seamsMm,
    joins: a.joins + b.joins,
    ripped: [...a.ripped, ...b.ripped],
  };
};

const adviseOn = (columns: DoubtColumns, work: YarnWork, stock: YarnStock, used: YarnWork) => {
  const draws = yarnDrawsOf(columns, work);
  const gone = stock.leftG === null ? yarnDrawsOf(columns, used).neededG : null;
  const all = heldGrams(columns, stockTerms(stock));
  // What is knit was there: where more seems used up than was bought, nothing is left.
  const held = gone === null ? all : all.map((grams, i) => Math.max(0, grams - gone[i]!));
  const needs: Needs = { needed: draws.neededG, returned: draws.returnedG, held };
  const inMetres = (grams: Float64Array) =>
    spread(grams.map((each, i) => (each * draws.metresPer100g[i]!) / 100));
  const skein = skeinOf(stock);
  const bought = skein && skeinsToBuy(needs, heldGrams(columns, lotTerms(skein)));
  const short = chanceShort(needs.needed, needs.returned, needs.held);
  const over = needs.held.map((held, i) => held + needs.returned[i]! - needs.needed[i]!);
  return {
    needed: { metres: spread(draws.neededM), grams: spread(draws.neededG) },
    held: { metres: inMetres(held), grams: spread(held) },
    chanceShort: short,
    heldOverNeeded: ratioOf(needs),
    leftoverG: spread(over),
    leftoverM: inMetres(over),
    buy: bought?.buy ?? null,
    chanceWithBuy: bought?.chanceWithBuy ?? null,
    lots: lotAdvice(columns, gone === null ? work : together(used, work), stock, {
      ...needs,
      gone,
    }),
    sentence: sentenceOf(short, bought),
  };
};

/**
 * Whether the yarn at hand, with what ripping gives back, lasts for the work; the fewest skeins that
 * bring the chance of running out below 5 %; and which dye lots to knit from. Same question, seed
 * and draws, same bytes. Faults of all that was given.
 */
export const skeinAdvice = (
  question: YarnQuestion,
  work: YarnWork,
  stock: YarnStock,
  { normals, seed = 1, draws = 10_000, used = NOTHING }: SkeinOptions = {},
): Result<SkeinAdvice> => {
  const faults = [...workFaults(work), ...workFaults(used), ...stockFaults(stock)];
  const model = yarnModel(question);
  if (faults.length > 0 || !model.ok) return fail(...(model.ok ? [] : model.faults), ...faults);
  const columns = doubtColumns(model.value, normals ?? normalColumns(seed, draws));
  const bases = [yarnNeeded(question, work), yarnHeld(question, stock)];
  return ok({
    ...adviseOn(columns, work, stock, used),
    bases: bases.flatMap((each) => (each.ok ? each.value.bases : [])),
  });
};
