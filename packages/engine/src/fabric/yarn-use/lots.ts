import { MOST_SHORT } from './assumptions.ts';
import type { DoubtColumns } from './columns.ts';
import { gramsOf, metresOf } from './draws.ts';
import { heldGrams, lotTerms } from './held.ts';
import { lotChanges, middle, type Supply } from './lot-changes.ts';
import { chanceShort } from './short.ts';
import { neededTerms } from './terms.ts';
import type { LotAdvice, LotChange, YarnStock, YarnWork } from './types.ts';

/** Grams over the draws. */
type Column = Float64Array;

/** More ways to share parts among lots than this are not tried one by one. */
const MOST_WAYS = 4096;

const plus = (a: Column, b: Column): Column => a.map((value, i) => value + b[i]!);

/** Grams of each part; the extras go with the part that takes most. */
const partNeeds = (columns: DoubtColumns, work: YarnWork): Column[] => {
  const perGram = columns.log('metres').map(Math.exp);
  const terms = neededTerms(work);
  const grams = (part: number) =>
    gramsOf(
      metresOf(
        columns,
        terms.filter((term) => term.part === part),
      ),
      perGram,
    );
  const parts = work.parts.map((_, part) => grams(part));
  const largest = parts.reduce(
    (best, each, k) => (middle(each) > middle(parts[best]!) ? k : best),
    0,
  );
  return parts.map((each, k) => (k === largest ? plus(each, grams(-1)) : each));
};

/** What lot each part is knit from, as indices; every way in turn. */
function* ways(parts: number, lots: number): Generator<readonly number[]> {
  for (let code = 0; code < lots ** parts; code++)
    yield Array.from({ length: parts }, (_, k) => Math.floor(code / lots ** k) % lots);
}

/** The least of supply over need among the lots, by their means. */
const slack = (
  way: readonly number[],
  needs: readonly number[],
  held: readonly number[],
): number => {
  const used = held.map((_, lot) =>
    needs.reduce((sum, need, k) => sum + (way[k] === lot ? need : 0), 0),
  );
  return Math.min(...held.map((grams, lot) => (used[lot] === 0 ? Infinity : grams / used[lot]!)));
};

const bestWay = (
  needs: readonly Column[],
  supplies: readonly Supply[],
): readonly number[] | null => {
  if (needs.length === 0 || supplies.length ** needs.length > MOST_WAYS) return null;
  const [need, held] = [needs.map(middle), supplies.map(({ grams }) => middle(grams))];
  let best: { way: readonly number[]; slack: number } | null = null;
  for (const way of ways(needs.length, supplies.length)) {
    const least = slack(way, need, held);
    if (best === null || least > best.slack) best = { way, slack: least };
  }
  return best?.way ?? null;
};

/** Chance that some lot runs out before its parts are done. */
const chanceOfWay = (
  way: readonly number[],
  needs: readonly Column[],
  supplies: readonly Supply[],
): number => {
  const { length } = supplies[0]!.grams;
  let short = 0;
  for (let i = 0; i < length; i++) {
    const left = supplies.map(({ grams }) => grams[i]!);
    needs.forEach((need, k) => {
      left[way[k]!]! -= need[i]!;
    });
    if (left.some((grams) => grams < 0)) short++;
  }
  return short / length;
};

const list = (names: readonly string[]): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;

const byPartSentence = (parts: LotAdvice['parts']): string => {
  const lots = [...new Set(parts.map(({ dyeLot }) => dyeLot))];
  const said = lots.map(
    (lot) =>
      `${list(parts.filter((each) => each.dyeLot === lot).map(({ part }) => part))} from lot ${lot}`,
  );
  return `No lot suffices alone. Knit ${list(said)}: no part then changes lot.`;
};

const place = ({ part, share, from, to }: LotChange): string =>
  `begin lot ${to} beside lot ${from} before ${Math.floor(share * 100)} % of ${part}`;

const mixedSentence = (changes: readonly LotChange[]): string =>
  `No lot suffices for its parts with safety. Knit two lots alternately, two rows of each, where they meet (common practice, no source): ${list(changes.map(place))}.`;
const SHORT = 'All lots together are likelier to run out than to last.';
const UNTOLD =
  'What is left was weighed together: weigh each dye lot by itself to know which of them suffices.';

const shortOfOne = (dyeLot: string, short: number): string =>
  short > 0.5
    ? `Lot ${dyeLot} is likelier to run out than to last.`
    : `Lot ${dyeLot} may run out before all is knit.`;

/** Grams over the draws: needed for what is left to knit, given back by ripping, at hand for it. */
export interface Account {
  readonly needed: Column;
  readonly returned: Column;
  readonly held: Column;
  /** Knit already of what the labels count; null where what is left was weighed. */
  readonly gone: Column | null;
}

/**
 * Which dye lots to knit from: one that suffices alone, else a share of whole parts among lots, else
 * lots mixed. `work` is all that is knit of them, what is knit already included. Chances are those of the draws;
 * `MOST_SHORT` decides.
 */
export const lotAdvice = (
  columns: DoubtColumns,
  work: YarnWork,
  stock: YarnStock,
  { needed, returned, held, gone }: Account,
): LotAdvice => {
  const supplies = stock.lots
    .map((lot): Supply => ({ lot, grams: heldGrams(columns, lotTerms(lot)) }))
    .filter(({ grams }) => middle(grams) > 0);
  const none = { alone: [], parts: [], changes: [] } as const;
  if (supplies.length === 0) return { ...none, kind: 'no-lots', sentence: 'No dye lot is known.' };
  if (gone === null && supplies.length > 1) return { ...none, kind: 'untold', sentence: UNTOLD };
  // What was weighed is what is left of the only lot; a label counts what is used up too.
  const leftOf = (grams: Column): Column =>
    gone === null ? held : grams.map((each, i) => Math.max(0, each - gone[i]!));
  const alone = supplies
    .map(({ lot, grams }) => ({
      dyeLot: lot.dyeLot,
      chanceShort: chanceShort(needed, returned, leftOf(grams)),
    }))
    .filter((each) => each.chanceShort < MOST_SHORT)
    .sort((a, b) => a.chanceShort - b.chanceShort);
  const one = alone[0];
  if (one !== undefined)
    return {
      alone,
      kind: 'one',
      parts: work.parts.map(({ name }) => ({ part: name, dyeLot: one.dyeLot })),
      changes: [],
      sentence: `Lot ${one.dyeLot} suffices alone.`,
    };
  const short = chanceShort(needed, returned, held);
  const [only, ...others] = supplies;
  return only !== undefined && others.length === 0
    ? { ...none, kind: 'short', sentence: shortOfOne(only.lot.dyeLot, short) }
    : shared(work, partNeeds(columns, work), supplies, short);
};

const shared = (
  work: YarnWork,
  needs: readonly Column[],
  supplies: readonly Supply[],
  shortOfAll: number,
): LotAdvice => {
  const none = { alone: [], parts: [], changes: [] } as const;
  if (shortOfAll > 0.5) return { ...none, kind: 'short', sentence: SHORT };
  const way = bestWay(needs, supplies);
  if (way === null || chanceOfWay(way, needs, supplies) >= Math.max(MOST_SHORT, shortOfAll)) {
    const changes = lotChanges(work, needs, supplies);
    return { ...none, kind: 'mixed', changes, sentence: mixedSentence(changes) };
  }
  const parts = work.parts.map(({ name }, k) => ({
    part: name,
    dyeLot: supplies[way[k]!]!.lot.dyeLot,
  }));
  return { ...none, kind: 'by-part', parts, sentence: byPartSentence(parts) };
};
