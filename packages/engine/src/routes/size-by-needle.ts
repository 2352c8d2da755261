import { bounds, type ForecastQuestion, nextNeedle } from '../garment/index.ts';
import { type Millimetres, mm, ok, type Result } from '../units/index.ts';
import { checked } from './faults.ts';
import { chanceOfSizes, judge } from './knit/judge.ts';
import type { Luck, Make } from './knit/luck.ts';
import { type Judged, ownTargets } from './knit/targets.ts';
import { needleLuck, sizeMakes } from './open/afresh.ts';
import { drawLuck } from './open/bench.ts';
import type { RoutesOptions, RoutesQuestion, SizeAtNeedle } from './types.ts';

/** A needle with the garment begun afresh on it. */
interface Tried {
  readonly needle: Millimetres | null;
  readonly luck: Luck;
  readonly from: SizeAtNeedle['gaugeFrom'];
  readonly judged: Judged;
}

const isMeasured = ({ known }: Luck): boolean =>
  known.evidence.some(({ basis }) => basis.kind === 'measured');

/** The garment's own needle, those of the specimens, and one size up and down; thinnest first. */
const needles = ({ forecast }: RoutesQuestion): (Millimetres | null)[] => {
  const { needle, specimens } = forecast;
  if (needle === null) return [null];
  const steps = ([-1, 1] as const).map((way) => nextNeedle(needle, way));
  const all = [needle, ...steps, ...specimens.map((each) => each.needle ?? null)];
  const known = all.filter((each) => each !== null).map(Number);
  return [...new Set(known)].sort((a, b) => a - b).map(mm);
};

const tried = (
  question: RoutesQuestion,
  luck: Luck,
  needle: Millimetres | null,
  seed: number,
): Tried => {
  const { forecast } = question;
  const own = needle === forecast.needle;
  const other = own
    ? { luck, from: isMeasured(luck) ? ('evidence' as const) : ('model' as const) }
    : needleLuck(question, luck, needle, 1, seed);
  return { needle, ...other, judged: ownTargets(forecast, other.luck) };
};

const landmarksOf = (
  { luck, judged }: Tried,
  makes: readonly Make[],
  judgement: ReturnType<typeof judge>,
  forecast: ForecastQuestion,
): SizeAtNeedle['landmarks'] =>
  luck.known.model.measurements.map(({ wanted }, at) => {
    const k = judged.targets.findIndex((target) => target.at === at);
    const target = judged.targets[k];
    const range = target === undefined ? null : bounds(target);
    return {
      landmark: wanted.landmark,
      finishedMm: luck.range(at, makes[at]!, forecast.judgeAt),
      wantedMm: range === null ? null : { min: range.low, max: range.high },
      chance: judgement.fit[k]?.chance ?? null,
    };
  });

const sizeAt = (
  forecast: ForecastQuestion,
  one: Tried,
  wide: number,
  long: number,
): SizeAtNeedle[] => {
  const { luck, judged, needle, from } = one;
  const makes = sizeMakes(
    forecast,
    luck,
    judged.targets.map(({ at }) => at),
    wide,
    long,
  );
  if (makes === null) return [];
  const judgement = judge(luck, makes, judged, forecast.judgeAt);
  return [
    {
      needleMm: needle,
      gaugeFrom: from,
      stitchMm: luck.pitch.width.median,
      rowMm: luck.pitch.length.median,
      size: forecast.sizes[wide] ?? '',
      lengthsOf: forecast.sizes[long] ?? '',
      chanceAllFit: judgement.chanceAll,
      landmarks: landmarksOf(one, makes, judgement, forecast),
    },
  ];
};

const chance = ({ chanceAllFit }: SizeAtNeedle): number => chanceAllFit ?? 0;

/** The best blend where it beats every single size; none where nothing is wanted. */
const bestBlend = (
  forecast: ForecastQuestion,
  one: Tried,
  pure: readonly SizeAtNeedle[],
): SizeAtNeedle[] => {
  const at = forecast.sizes.map((_, k) => k);
  const { luck, judged } = one;
  const chanceOf = chanceOfSizes(luck, judged, forecast.judgeAt);
  const places = judged.targets.map((target) => target.at);
  const blends = at
    .flatMap((wide) => at.map((long) => ({ wide, long })))
    .flatMap(({ wide, long }) => {
      const makes = sizeMakes(forecast, luck, places, wide, long);
      return makes === null ? [] : [{ wide, long, chance: chanceOf(makes) }];
    })
    .sort((a, b) => b.chance - a.chance);
  const [best] = blends;
  return best !== undefined && best.chance > Math.max(0, ...pure.map(chance))
    ? sizeAt(forecast, one, best.wide, best.long)
    : [];
};

/**
 * Before casting on: every size of the pattern on every needle that was tried, and on one size up and down,
 * with its finished measurements in the judged state and their fit, begun afresh at this gauge; and for each
 * needle the best blend where it beats the sizes. Thinnest needle first, sizes as the pattern has them. A
 * size that lacks a wanted measurement is left out. Same question and options, same bytes.
 */
export const sizeByNeedle = (
  given: RoutesQuestion,
  options: Omit<RoutesOptions, 'onRoute'> = {},
): Result<readonly SizeAtNeedle[]> => {
  const asked = checked(given, options);
  if (!asked.ok) return asked;
  const { seed = 1, draws = 10_000 } = options;
  const question = asked.value;
  const { forecast } = question;
  const luck = drawLuck(question, seed, draws);
  return ok(
    needles(question).flatMap((needle) => {
      const one = tried(question, luck, needle, seed);
      const pure = forecast.sizes.flatMap((_, at) => sizeAt(forecast, one, at, at));
      return [...pure, ...bestBlend(forecast, one, pure)];
    }),
  );
};
