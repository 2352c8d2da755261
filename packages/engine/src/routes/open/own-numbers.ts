import { bounds, type FitTarget, type PartName, partOf, sizeWords } from '../../garment/index.ts';
import type { Make } from '../knit/luck.ts';
import { times } from '../knit/makes.ts';
import type { Knitting, PieceRows, RipTo, RouteCount } from '../types.ts';
import { beginAgain } from './afresh.ts';
import { stitchesFor } from './aim.ts';
import { type Bench, nothing, type Opened, spoken, together } from './draft.ts';
import { knittingOf } from './rip.ts';
import { rowSteps } from './row-words.ts';
import { type Ask, inRows, piecesInRows } from './rows.ts';
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

/** How much longer each judged length of a part would have to be as knit, for the middle of what is wanted. */
const asksOf = (
  bench: Bench,
  makes: readonly Make[],
  part: PartName,
  isAsked: (target: FitTarget) => boolean,
): Ask[] =>
  bench.own.targets.flatMap((target) => {
    const { landmark, direction } = target.measurement.wanted;
    if (direction !== 'length' || partOf(landmark) !== part || !isAsked(target)) return [];
    const { low, high } = bounds(target);
    const make = makes[target.at]!;
    const { p50Mm } = bench.luck.range(target.at, make, bench.forecast.judgeAt);
    const knit = bench.luck.median[make.from][target.at]! * make.factor;
    return low + high > 0 ? [{ landmark, byMm: knit * ((low + high) / 2 / p50Mm - 1) }] : [];
  });

/** Those lengths in whole rows, part by part. */
const lengthsIn = (
  bench: Bench,
  makes: readonly Make[],
  isAsked: (target: FitTarget) => boolean,
): { readonly makes: Make[]; readonly pieces: PieceRows[] } => {
  const parts = [...new Set(bench.pieces.map(({ part }) => part))];
  return parts.reduce<{ makes: Make[]; pieces: PieceRows[] }>(
    (so, part) => {
      const met = inRows(bench, so.makes, part, asksOf(bench, so.makes, part, isAsked));
      const ripTo: RipTo = { mark: 'cast-on', below: 0, row: 0 };
      const pieces = piecesInRows(bench, part, { ...met, ripTo });
      return { makes: met.makes, pieces: [...so.pieces, ...pieces] };
    },
    { makes: [...makes], pieces: [] },
  );
};

const isTaped = ({ measurement }: FitTarget): boolean => measurement.wanted.worked === 'to-length';

/** Lengths that are knit to a tape can be knit to any: those that are judged, to the middle of what is wanted. */
const toOwnLengths = (bench: Bench, makes: readonly Make[]): Make[] =>
  lengthsIn(bench, makes, isTaped).makes;

const ownLengths = (bench: Bench): Sized[] =>
  bench.forecast.sizes
    .flatMap((_, at) => sized(bench, at, at) ?? [])
    .map((size) => fitted(bench, size, toOwnLengths(bench, size.makes)))
    .sort(better);

const hasLengths = ({ own }: Bench): boolean => own.targets.some(isTaped);

const openOwnLengths = (bench: Bench): Opened => {
  const name = 'A size with lengths of your own';
  const out = (why: string) => nothing('blend', name, why);
  if (!hasLengths(bench)) return out('No length that is wanted is knit to a tape.');
  const [first] = ownLengths(bench);
  const best = pureChance(bench);
  if (first === undefined || first.chance < best + BLEND_GAIN)
    return out('The lengths of the best size do as well.');
  const label = bench.forecast.sizes[first.stitchesOf] ?? '';
  const plain = sized(bench, first.stitchesOf, first.stitchesOf);
  const { pieces } = lengthsIn(bench, plain?.makes ?? first.makes, isTaped);
  return {
    drafts: [
      {
        ...draftOf(bench, first),
        id: `blend:${label}:own`,
        kind: 'blend',
        name: `${start(bench)} with the stitches of ${sizeWords(label)}, each length knit to what is wanted`,
        counts: rowsOf(pieces),
        knitting: knittingOf({ pieces }),
        steps: stepsOf(bench, pieces),
        reasons: ['Lengths that are knit to a tape need no size of the pattern.'],
      },
    ],
    leftOut: [],
  };
};

/** Rows of each stretch that is knit by count, as figures; pieces of a part are alike. */
const rowsOf = (pieces: readonly PieceRows[]): RouteCount[] => {
  const all = pieces.flatMap(({ piece, stretches }) =>
    stretches.flatMap(({ to, rows }) =>
      rows === null
        ? []
        : [{ what: `rows to the ${piece === 'sleeve' ? 'top of the sleeve' : to}`, count: rows }],
    ),
  );
  return all.filter(({ what }, k) => all.findIndex((each) => each.what === what) === k);
};

const stepsOf = (bench: Bench, pieces: readonly PieceRows[]): string[] =>
  (['body', 'sleeve'] as const).flatMap((part) =>
    rowSteps(bench, {
      part,
      pieces: pieces.filter(({ piece }) => (piece === 'sleeve') === (part === 'sleeve')),
    }),
  );

interface OwnCounts {
  readonly makes: Make[];
  readonly pieces: PieceRows[];
  readonly stitches: Knitting['stitches'];
}

/** Every count and length worked out for this gauge, each judged measurement to the middle of what is wanted. */
const ownCounts = (bench: Bench): OwnCounts => {
  const { luck } = bench;
  const begun = bench.planned.map((make): Make => ({ ...make, from: 'afresh' }));
  const { makes: long, pieces } = lengthsIn(bench, begun, () => true);
  const stitches: { landmark: string; count: number }[] = [];
  const makes = long.map((make, at): Make => {
    const target = bench.own.targets.find((each) => each.at === at);
    if (target === undefined || target.measurement.wanted.direction !== 'width') return make;
    const { low, high } = bounds(target);
    const { p50Mm } = luck.range(at, make, bench.forecast.judgeAt);
    const knit = luck.median.afresh[at]! * make.factor;
    const count = low + high > 0 ? stitchesFor(bench, (knit * (low + high)) / 2 / p50Mm) : null;
    if (count === null) return make;
    stitches.push({ landmark: target.wanted.landmark, count });
    return times(make, (count * luck.pitch.width.median) / knit);
  });
  return { makes, pieces, stitches };
};

const openOwnCounts = (bench: Bench): Opened => {
  const name = 'Counts worked out for your gauge';
  if (bench.own.targets.length === 0)
    return nothing('blend', name, 'Nothing is wanted of the fit, so there is nothing to work out.');
  const { makes, pieces, stitches } = ownCounts(bench);
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
        counts: [
          ...stitches.map(({ landmark, count }) => ({
            what: `stitches at the ${spoken(landmark)}`,
            count,
          })),
          ...rowsOf(pieces),
        ],
        knitting: knittingOf({ pieces, stitches }),
        steps: stepsOf(bench, pieces),
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
