import { bounds } from '../../garment/index.ts';
import type { Make } from '../knit/luck.ts';
import { times } from '../knit/makes.ts';
import { beginAgain } from './afresh.ts';
import { type Bench, nothing, type Opened, spoken, together } from './draft.ts';
import {
  BLEND_GAIN,
  better,
  draftOf,
  fitted,
  pureChance,
  type Sized,
  sized,
  start,
} from './sized.ts';

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

/** The garment begun in numbers that the pattern does not have. */
export const openOwnNumbers = (bench: Bench): Opened =>
  together([openOwnLengths(bench), openOwnCounts(bench)]);
