import { bounds, type FitTarget } from '../../garment/index.ts';
import type { Make } from '../knit/luck.ts';
import { plannedMakes, times } from '../knit/makes.ts';
import { ownTargets } from '../knit/targets.ts';
import { beginAgain, needleLuck, nextNeedle, sizeMakes } from './afresh.ts';
import {
  type Bench,
  type Draft,
  nothing,
  type Opened,
  percent,
  spoken,
  together,
} from './draft.ts';

/** A size of the pattern, or the stitches of one and the lengths of another. */
interface Sized {
  readonly stitchesOf: number;
  readonly lengthsOf: number;
  readonly makes: readonly Make[];
  readonly chance: number;
  /** Sum over landmarks of the median's distance outside the wanted range, mm. */
  readonly miss: number;
}

const missOf =
  (bench: Bench, makes: readonly Make[]) =>
  (target: FitTarget): number => {
    const { low, high } = bounds(target);
    const { p50Mm } = bench.luck.range(target.at, makes[target.at]!, bench.forecast.judgeAt);
    return Math.max(0, low - p50Mm, p50Mm - high);
  };

const fitted = (
  bench: Bench,
  { stitchesOf, lengthsOf }: Pick<Sized, 'stitchesOf' | 'lengthsOf'>,
  makes: readonly Make[],
): Sized => {
  const chance = bench.chanceOfSize(makes);
  const miss = bench.own.targets.map(missOf(bench, makes)).reduce((a, b) => a + b, 0);
  return { stitchesOf, lengthsOf, makes, chance, miss };
};

const sized = (bench: Bench, stitchesOf: number, lengthsOf: number): Sized | null => {
  const judged = bench.own.targets.map(({ at }) => at);
  const makes = sizeMakes(bench.forecast, bench.luck, judged, stitchesOf, lengthsOf);
  return makes === null ? null : fitted(bench, { stitchesOf, lengthsOf }, makes);
};

/** Likeliest first; those without a chance by how far they miss. */
const better = (a: Sized, b: Sized): number => b.chance - a.chance || a.miss - b.miss;

/** Other sizes that are offered, at most, and the least chance of those after the first. */
const MOST_SIZES = 4;
const LEAST_CHANCE = 0.05;
/** A blend is worth the trouble when it adds this much chance to the best size. */
const BLEND_GAIN = 0.02;

const start = ({ begun }: Bench): string => (begun > 0 ? 'Begin again' : 'Knit it');

const draftOf = (bench: Bench, size: Sized): Pick<Draft, 'luck' | 'judged' | 'makes' | 'work'> => ({
  luck: bench.luck,
  judged: bench.own,
  makes: size.makes,
  work: beginAgain(bench, bench.luck, size.makes),
});

const sizeDraft = (bench: Bench, size: Sized): Draft => {
  const label = bench.forecast.sizes[size.stitchesOf] ?? '';
  return {
    ...draftOf(bench, size),
    id: `size:${label}`,
    kind: 'size',
    name: `${start(bench)} in size ${label}, at this gauge`,
    reasons: ['The pattern has its numbers: nothing has to be worked out.'],
  };
};

const others = (bench: Bench): Sized[] =>
  bench.forecast.sizes
    .flatMap((_, at) => (at === bench.forecast.chosen ? [] : (sized(bench, at, at) ?? [])))
    .sort(better);

const openSizes = (bench: Bench): Opened => {
  const { sizes } = bench.forecast;
  const name = 'Another size at this gauge';
  if (sizes.length < 2) return nothing('size', name, 'The pattern has one size.');
  if (bench.own.targets.length === 0)
    return nothing(
      'size',
      name,
      'Nothing is wanted of the fit, so no size is better than another.',
    );
  const all = others(bench);
  const offered = all.filter((s, k) => k === 0 || (k < MOST_SIZES && s.chance >= LEAST_CHANCE));
  return {
    drafts: offered.map((size) => sizeDraft(bench, size)),
    leftOut: all
      .filter((size) => !offered.includes(size))
      .map(({ stitchesOf, chance }) => ({
        kind: 'size',
        name: `Size ${sizes[stitchesOf]}`,
        why: `The chance that all of it fits is ${percent(chance)}; other sizes are nearer.`,
      })),
  };
};

const blends = (bench: Bench): Sized[] => {
  const at = bench.forecast.sizes.map((_, k) => k);
  return at
    .flatMap((a) => at.flatMap((b) => (a === b ? [] : (sized(bench, a, b) ?? []))))
    .sort(better);
};

/** Lengths that are knit to a tape can be knit to any: those that are judged, to the middle of what is wanted. */
const toOwnLengths = (bench: Bench, makes: readonly Make[]): Make[] =>
  makes.map((make, at) => {
    const target = bench.own.targets.find((each) => each.at === at);
    if (target === undefined || target.measurement.wanted.worked !== 'to-length') return make;
    const { low, high } = bounds(target);
    const { p50Mm } = bench.luck.range(at, make, bench.forecast.judgeAt);
    return low + high > 0 ? times(make, (low + high) / 2 / p50Mm) : make;
  });

const ownLengths = (bench: Bench): Sized[] =>
  bench.forecast.sizes
    .flatMap((_, at) => sized(bench, at, at) ?? [])
    .map((size) => fitted(bench, size, toOwnLengths(bench, size.makes)))
    .sort(better);

const hasLengths = ({ own }: Bench): boolean =>
  own.targets.some(({ measurement: { wanted } }) => wanted.worked === 'to-length');

const pureChance = (bench: Bench): number => {
  const { chosen } = bench.forecast;
  const pure = [...others(bench), sized(bench, chosen, chosen)].filter((s) => s !== null);
  return Math.max(0, ...pure.map(({ chance }) => chance));
};

const openOwnLengths = (bench: Bench): Opened => {
  const name = 'A size with lengths of your own';
  const out = (why: string) => nothing('blend', name, why);
  if (!hasLengths(bench)) return out('No length that is wanted is knit to a tape.');
  const [first] = ownLengths(bench);
  const best = pureChance(bench);
  if (first === undefined || first.chance < best + BLEND_GAIN)
    return out('The lengths of the best size do as well.');
  const label = bench.forecast.sizes[first.stitchesOf] ?? '';
  const lengths = bench.own.targets.filter((t) => t.measurement.wanted.worked === 'to-length');
  return {
    drafts: [
      {
        ...draftOf(bench, first),
        id: `blend:${label}:own`,
        kind: 'blend',
        name: `${start(bench)} with the stitches of size ${label}, each length knit to what is wanted`,
        counts: lengths.map(({ at, wanted }) => ({
          what: `rows to the ${spoken(wanted.landmark)}`,
          count: Math.round(
            (bench.luck.median.afresh[at]! * first.makes[at]!.factor) /
              bench.luck.pitch.length.median,
          ),
        })),
        reasons: ['Lengths that are knit to a tape need no size of the pattern.'],
      },
    ],
    leftOut: [],
  };
};

/** Every count and length worked out for this gauge, each judged measurement to the middle of what is wanted. */
const ownCounts = (bench: Bench): Make[] =>
  bench.planned.map((make, at) => {
    const begun: Make = { ...make, from: 'afresh' };
    const target = bench.own.targets.find((each) => each.at === at);
    if (target === undefined) return begun;
    const { low, high } = bounds(target);
    const { p50Mm } = bench.luck.range(at, begun, bench.forecast.judgeAt);
    return low + high > 0 ? times(begun, (low + high) / 2 / p50Mm) : begun;
  });

const openOwnCounts = (bench: Bench): Opened => {
  const name = 'Counts worked out for your gauge';
  if (bench.own.targets.length === 0)
    return nothing('blend', name, 'Nothing is wanted of the fit, so there is nothing to work out.');
  const makes = ownCounts(bench);
  const pitch = bench.luck.pitch;
  return {
    drafts: [
      {
        luck: bench.luck,
        judged: bench.own,
        makes,
        work: beginAgain(bench, bench.luck, makes),
        id: 'blend:own',
        kind: 'blend',
        name: `${start(bench)} with every count worked out for your gauge and what is wanted`,
        counts: bench.own.targets.map(({ at, wanted, measurement }) => {
          const mm = bench.luck.median.afresh[at]! * makes[at]!.factor;
          return measurement.wanted.direction === 'width'
            ? {
                what: `stitches at the ${spoken(wanted.landmark)}`,
                count: Math.round(mm / pitch.width.median),
              }
            : {
                what: `rows to the ${spoken(wanted.landmark)}`,
                count: Math.round(mm / pitch.length.median),
              };
        }),
        reasons: [
          'The pattern’s shapes stay, its numbers do not: work them out before casting on.',
        ],
      },
    ],
    leftOut: [],
  };
};

const openBlends = (bench: Bench): Opened => {
  const { sizes } = bench.forecast;
  const name = 'Stitches of one size, lengths of another';
  if (sizes.length < 2 || bench.own.targets.length === 0)
    return nothing('blend', name, 'There is one size, or nothing is wanted of the fit.');
  const best = pureChance(bench);
  const [first] = blends(bench);
  if (first === undefined || first.chance < best + BLEND_GAIN)
    return nothing('blend', name, 'No blend fits better than the best single size.');
  const [wide, long] = [sizes[first.stitchesOf], sizes[first.lengthsOf]];
  return {
    drafts: [
      {
        ...draftOf(bench, first),
        id: `blend:${wide}:${long}`,
        kind: 'blend',
        name: `${start(bench)} with the stitches of size ${wide} and the lengths of size ${long}`,
        reasons: [`No single size has more than ${percent(best)} of fitting throughout.`],
      },
    ],
    leftOut: [],
  };
};

const needleWords = (needle: number | null, way: 1 | -1): string => {
  const word = way === 1 ? 'larger' : 'smaller';
  return needle === null
    ? `one needle size ${word}`
    : `${Math.round(100 * needle) / 100} mm needles, one size ${word}`;
};

const openNeedle = (bench: Bench, way: 1 | -1, seed: number): Opened => {
  const { forecast, question } = bench;
  const needle = nextNeedle(forecast.needle, way);
  if (needle === null && forecast.needle !== null)
    return nothing('needle', 'Another needle', 'There is no needle beyond this one.');
  const { luck, from } = needleLuck(question, bench.luck, needle, way, seed);
  const judged = ownTargets(forecast, luck);
  const makes = plannedMakes(forecast, luck);
  const because =
    from === 'evidence'
      ? 'What was measured on this needle says what it gives.'
      : 'What it gives is taken from a usual step of the gauge, half of it as doubt: knit a swatch on it first.';
  return {
    drafts: [
      {
        id: `needle:${needle ?? (way === 1 ? 'larger' : 'smaller')}`,
        kind: 'needle',
        name: `${start(bench)} on ${needleWords(needle, way)}`,
        luck,
        judged,
        makes,
        work: beginAgain(bench, luck, makes),
        reasons: [because],
        bases: ['route-needle-step'],
      },
    ],
    leftOut: [],
  };
};

/** The garment knit from the start: in another size, blended, or on another needle. */
export const openSizesAndNeedles = (bench: Bench, seed: number): Opened =>
  together([
    openNeedle(bench, 1, seed),
    openNeedle(bench, -1, seed),
    openSizes(bench),
    openBlends(bench),
    openOwnLengths(bench),
    openOwnCounts(bench),
  ]);
