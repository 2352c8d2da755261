import type { SafeOrigin, SafeStretch } from '../fabric/index.ts';
import type { Standing } from './choose-pins.ts';
import type { Gap } from './gaps.ts';
import { MOST_PULL } from './hand-pull.ts';
import { measured, type Ruler, restOf, SEEN } from './measure.ts';
import type { PinState, Shortfall } from './pin-state.ts';
import type { BlockQuestion, CouldNot, EdgeKind } from './types.ts';

const mm = (value: number): string => `{mm:${value.toFixed(1)}}`;
export const percent = (share: number): string => `${(100 * share).toFixed(0)} %`;

const EDGE_WORDS: Readonly<Record<EdgeKind, string>> = {
  'cast-on': 'cast-on edge',
  'bound-off': 'bound-off edge',
  selvedge: 'selvedge',
  seam: 'seam',
  'picked-up': 'edge where stitches were picked up',
  rib: 'ribbing',
  fold: 'fold',
  open: 'edge',
};

/** What the fabric was at its limit of, in words. */
const limitWords = (state: PinState, { by }: Shortfall): string => {
  const { fabric } = state.sheet.piece;
  if (by.kind === 'cord')
    return `the ${EDGE_WORDS[state.sheet.cordKinds[by.cord] ?? 'open']} is stretched out and holds the fabric beside it`;
  if (by.kind === 'triangle') {
    const [along, limit] =
      by.line === 1
        ? (['across, along its rows', fabric.constants.width.limit] as const)
        : (['lengthwise, along its columns of stitches', fabric.constants.length.limit] as const);
    return `the fabric is stretched out ${along}: it ends at about ${percent(limit)} over its rest`;
  }
  return 'no further stretch was found in which the fabric comes to rest';
};

/** That pins would have to bear too much, by the edges that they are in. */
const pullWords = (state: PinState, rings: readonly number[]): string => {
  const edges = new Set(rings.map((ring) => EDGE_WORDS[state.sheet.ring[ring]!.kind]));
  const hand =
    state.mostPull === MOST_PULL
      ? ', which is taken to be what a hand gives: the weight of half a kilogram'
      : '';
  return `a pin in the ${[...edges].join(' or the ')} would have to bear more than ${state.mostPull} N${hand}`;
};

/** Shortfalls within this share of the largest count as its causes. */
const CAUSES = 0.3;

const causes = (state: PinState): string => {
  const all = [...state.shortfalls.values()];
  const most = Math.max(0, ...all.map(({ short }) => short));
  const large = all.filter(({ short }) => short >= CAUSES * most);
  const pulled = large.filter(({ by }) => by.kind === 'pull').map(({ ring }) => ring);
  const words = large
    .filter(({ by }) => by.kind !== 'pull')
    .map((shortfall) => limitWords(state, shortfall));
  if (pulled.length > 0) words.push(pullWords(state, pulled));
  return [...new Set(words)].join('; ');
};

export interface Cut {
  /** Share of the wanted stretch that was planned for; 1 where nothing was cut. */
  readonly share: number;
  /** The stretch that was allowed. */
  readonly limit: number;
  readonly because: SafeOrigin | 'own';
}

/** Where a limit comes from, in words. */
export const SAFE_BECAUSE: Readonly<Record<Cut['because'], string>> = {
  published: 'which is what makers of wool call safe',
  'common-practice': 'as far as such a stitch is usually pinned (common practice, no source)',
  'from-memory': 'as the fibre is weak while it is wet (from memory)',
  own: 'as you asked',
};

const cutWords = ({ limit, because }: Cut): string =>
  `no dimension was to be stretched beyond ${percent(limit)}, ${SAFE_BECAUSE[because]}`;

const inZone = ({ sheet }: PinState, { from, to }: Ruler): boolean =>
  [from, to].every((k) => sheet.ring[k]!.pinning !== 'free');

/** Why a dimension is off; `stocked`: false where there were fewer pins than wanted. */
const dimensionWhy = (
  state: PinState,
  ruler: Ruler,
  now: number,
  cut: Cut,
  stocked: boolean,
): string => {
  const { targetMm, direction } = ruler.dimension;
  const rest = restOf(ruler);
  if (now > targetMm)
    return rest > targetMm
      ? `it lies at ${mm(rest)} wet already, and pins pull but do not push${now > rest + SEEN ? ', those beside it open it further' : ''}; pat it in by hand, or knit it smaller`
      : `the pull of what is pinned beside it opens it; it is not pinned there itself`;
  if (direction === 'width' && inZone(state, ruler)) return 'ribbing is left to draw in';
  if (cut.share < 1) return cutWords(cut);
  if (state.shortfalls.size > 0) return causes(state);
  if (!state.eq.converged) return 'the calculation ended before the piece came to rest';
  return stocked
    ? 'no place where it could be pinned holds it there'
    : 'there are not enough pins at hand';
};

const dimensionsOff = (
  state: PinState,
  standing: Standing,
  cut: Cut,
  stocked: boolean,
): CouldNot[] =>
  standing.off.map(({ ruler }) => {
    const now = measured(ruler, state.sheet.ring, state.eq.points);
    const { name, targetMm } = ruler.dimension;
    const how = now < targetMm ? 'short of' : 'over';
    return {
      what: `${name}: ${mm(now)}, ${mm(Math.abs(now - targetMm))} ${how} the ${mm(targetMm)} wanted`,
      why: dimensionWhy(state, ruler, now, cut, stocked),
    };
  });

const gapsOff = (
  state: PinState,
  gaps: readonly Gap[],
  tolerance: number,
  stocked: boolean,
): CouldNot[] => {
  const deep = gaps.filter(({ scallop }) => scallop > tolerance);
  if (deep.length === 0) return [];
  const worst = deep.reduce((a, b) => (b.scallop > a.scallop ? b : a));
  const kind = state.sheet.ring[worst.within[0]!]!.kind;
  return [
    {
      what: `The edge lies more than ${mm(tolerance)} inside its line between pins in ${deep.length} ${deep.length === 1 ? 'place' : 'places'}, by ${mm(worst.scallop)} at worst (${EDGE_WORDS[kind]})`,
      why: stocked
        ? 'pins any closer together would be of no use: the edge is short or strained between them'
        : 'there are not enough pins at hand',
    },
  ];
};

/** Everything that was wanted and is not reached, each with its reason. */
export const couldNot = (
  state: PinState,
  standing: Standing,
  { cut, tolerance, stocked }: { cut: Cut; tolerance: number; stocked: boolean },
): CouldNot[] => {
  const dimensions = dimensionsOff(state, standing, cut, stocked);
  const short = Math.max(0, ...[...state.shortfalls.values()].map((s) => s.short));
  const shape: CouldNot[] =
    dimensions.length === 0 && short > tolerance
      ? [{ what: `Part of the edge stops ${mm(short)} short of its place`, why: causes(state) }]
      : [];
  return [...dimensions, ...shape, ...gapsOff(state, standing.gaps, tolerance, stocked)];
};

/** The largest share of the wanted change that keeps every dimension within the limit. */
export const cutOf = (
  rulers: readonly Ruler[],
  safe: SafeStretch,
  { gentle, maxStretch: own }: Pick<BlockQuestion, 'gentle' | 'maxStretch'>,
): Cut => {
  const limit = Math.min(
    gentle ? safe.limit : Number.POSITIVE_INFINITY,
    own ?? Number.POSITIVE_INFINITY,
  );
  const because = gentle && limit === safe.limit ? safe.origin : 'own';
  const share = rulers.reduce((least, ruler) => {
    const stretch = ruler.dimension.targetMm / restOf(ruler) - 1;
    return stretch > limit ? Math.min(least, limit / stretch) : least;
  }, 1);
  return { share, limit, because };
};
