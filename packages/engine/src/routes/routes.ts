import { type Basis, type YarnQuestion, yarnNeeded } from '../fabric/index.ts';
import { fail, ok, type Result } from '../units/index.ts';
import { checked } from './faults.ts';
import { candidatesOf } from './information/candidates.ts';
import { valueOfInformation } from './information/value-of-information.ts';
import { noticesOf } from './notices.ts';
import { openAdding } from './open/add.ts';
import { benchOf, drawLuck } from './open/bench.ts';
import { type Bench, type Opened, together } from './open/draft.ts';
import { openDrying } from './open/drying.ts';
import { openGiving } from './open/give.ts';
import { openNeedles } from './open/needles.ts';
import { openOtherPiece } from './open/other-piece.ts';
import { openOwnNumbers } from './open/own-numbers.ts';
import { openRipping } from './open/rip.ts';
import { openOtherSizes } from './open/sizes.ts';
import { worthwhile } from './open/worthwhile.ts';
import { basesOf as paceBases } from './pace/bases.ts';
import { ordered } from './price/compare.ts';
import { type Supply, supplyOf } from './price/cost.ts';
import { ROUTE_BASES } from './price/depends.ts';
import { costsOf, type Priced, priced } from './price/price.ts';
import { whyFirst } from './price/sentence.ts';
import { knitNow } from './price/work.ts';
import type { RoutesOptions, RoutesQuestion, RoutesResult } from './types.ts';
import { underStock, yarnQuestion } from './yarn-question.ts';

const DEFAULT_SEED = 1;
const DEFAULT_DRAWS = 10_000;

const openAll = (bench: Bench, seed: number): Opened =>
  worthwhile(
    bench,
    together([
      openDrying(bench),
      openRipping(bench),
      openAdding(bench),
      openOtherPiece(bench),
      openNeedles(bench, seed),
      openOtherSizes(bench),
      openOwnNumbers(bench),
      openGiving(bench),
    ]),
  );

interface PricedAll {
  readonly routes: readonly Priced[];
  readonly complete: boolean;
}

/** One after the other, until the caller has enough. Works fail alike or not at all: the first fault ends it. */
const priceAll = (
  question: RoutesQuestion,
  { drafts }: Opened,
  supply: Supply,
  onRoute: NonNullable<RoutesOptions['onRoute']>,
): Result<PricedAll> => {
  const costs = costsOf(question, supply);
  const routes: Priced[] = [];
  for (const draft of drafts) {
    const one = priced(question, draft, costs);
    if (!one.ok) return one;
    routes.push(one.value);
    if (!onRoute(one.value.route)) break;
  }
  return ok({ routes, complete: routes.length === drafts.length });
};

const distinct = (bases: readonly Basis[]): Basis[] => [
  ...new Map(bases.map((basis) => [basis.id, basis])).values(),
];

const basesOf = (
  question: RoutesQuestion,
  bench: Bench,
  yarn: YarnQuestion,
  used: ReadonlySet<string>,
): Basis[] => {
  const { stitch } = question.forecast;
  const some = [{ name: '', stitch, stitches: 1 }];
  const needed = yarnNeeded(yarn, {
    parts: some,
    ripped: some,
    castOn: 1,
    bindOff: 1,
    seamsMm: 1,
    joins: 0,
  });
  const { pace, from, by, dryingHours } = question;
  return distinct([
    ...bench.luck.known.bases,
    ...bench.luck.known.kept.bases,
    ...(needed.ok ? needed.value.bases : []),
    ...paceBases({
      parts: [{ name: '', stitches: 1, fabric: 'ripped' }],
      log: pace.log,
      hours: pace.hours,
      away: pace.away,
      from,
      by,
      dryingHours,
      finishing: { seamsMm: 1, ends: 1, when: 'after-drying' },
      yarn: null,
    }),
    ...ROUTE_BASES.filter(({ id }) => used.has(id)),
  ]);
};

/**
 * The ways out of where a garment is, each with the fit, the hours, the yarn and the chances that it gives, on
 * one set of draws, best first by the knitter's weights; those that are not open with the reason; and what a
 * cheap measurement would be worth. Lengths are millimetres in the span of their measurement, hours hours,
 * metres metres. Pure: the same question, seed and draws give the same bytes, and the planned route's fit is
 * that of `forecast` with the same seed.
 *
 * `onRoute` is called as each is ready, in the order of the families and not of merit; `false` stops there, and
 * what was ready is compared. Faults for whatever cannot be used; bugs throw.
 */
export const routes = (
  given: RoutesQuestion,
  options: RoutesOptions = {},
): Result<RoutesResult> => {
  const asked = checked(given, options);
  if (!asked.ok) return asked;
  const { seed = DEFAULT_SEED, draws = DEFAULT_DRAWS, onRoute = () => true } = options;
  const question = asked.value;
  const bench = benchOf(question, drawLuck(question, seed, draws));
  const yarn = yarnQuestion(question, bench.luck);
  const knit = knitNow(bench.pieces, question.progress);
  const supply = supplyOf(question, yarn, knit, bench.luck.normals);
  if (!supply.ok) return fail(...supply.faults.map(underStock));
  const opened = openAll(bench, seed);
  const all = priceAll(question, opened, supply.value, onRoute);
  if (!all.ok) return all;
  const sorted = ordered(all.value.routes);
  const valued = valueOfInformation(sorted, candidatesOf(bench, supply.value));
  const found = sorted.map(({ route }, k) => ({ ...route, measureFirst: valued.first[k]! }));
  const used = new Set(found.flatMap(({ dependsOn }) => dependsOn));
  return ok({
    seed,
    draws,
    judgedAt: question.forecast.judgeAt,
    routes: found,
    leftOut: opened.leftOut,
    sentence: whyFirst(found, question.weights),
    valueOfInformation: valued.measurings,
    complete: all.value.complete,
    notices: noticesOf(question, bench, found),
    bases: basesOf(question, bench, yarn, used),
  });
};
