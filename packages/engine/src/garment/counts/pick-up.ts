import { type Fault, fail, type Millimetres, mm, ok, type Result } from '../../units/index.ts';
import { type CountAnswer, countFor } from './count-for.ts';
import type { Repeat } from './types.ts';
import { lengthFaults, settled, wholeFaults } from './whole.ts';

/** `pick` stitches for every `of` rows (or stitches) of the edge. */
export interface Ratio {
  readonly pick: number;
  readonly of: number;
  /** How much longer (+) or shorter (−) than the edge the band becomes, as a share: 0.02 is 2 %. */
  readonly error: number;
}

/** Fractions above which a knitter loses count between two markers: common practice, no source. */
const LARGEST_OF = 12;
/** A band this much off lies flat once it is blocked: common practice, no source. */
const GOOD_ENOUGH = 0.02;

/**
 * The fractions that come nearer to `value` than any with a smaller denominator, by going down the
 * Stern–Brocot tree: each step takes the mediant of the two fractions that hold the value.
 * `value` above 0; denominators up to `most`. Never empty; the last is the best.
 */
export const nearerRatios = (value: number, most: number = LARGEST_OF): Ratio[] => {
  const ratio = (pick: number, of: number): Ratio => ({ pick, of, error: pick / of / value - 1 });
  const nearest = Math.max(1, Math.floor(settled(value) + 0.5));
  const found = [ratio(nearest, 1)];
  let [low, high] = [
    { pick: Math.floor(value), of: 1 },
    { pick: Math.floor(value) + 1, of: 1 },
  ];
  while (low.of + high.of <= most) {
    const middle = ratio(low.pick + high.pick, low.of + high.of);
    const best = found.at(-1)!;
    if (middle.pick > 0 && settled(Math.abs(best.error) - Math.abs(middle.error)) > 0)
      found.push(middle);
    if (settled(middle.error) === 0) break;
    if (middle.error < 0) low = middle;
    else high = middle;
  }
  return found;
};

/** The smallest fraction that is good enough, else the best there is. */
export const simplestRatio = (value: number): Ratio => {
  const found = nearerRatios(value);
  return found.find((each) => Math.abs(each.error) <= GOOD_ENOUGH) ?? found.at(-1)!;
};

export interface PickUpQuestion {
  /** Rows (or stitches) along the edge. */
  readonly along: number;
  /** Height of a row (or width of a stitch) of the fabric along the edge. */
  readonly edgePitchMm: number;
  /** Width of a stitch of the band that is picked up. */
  readonly bandPitchMm: number;
  readonly repeat?: Pick<Repeat, 'stitches' | 'plus'> | undefined;
}

export interface PickUp {
  readonly edge: Millimetres;
  readonly ratio: Ratio;
  /** Other fractions, from rough to fine. */
  readonly others: readonly Ratio[];
  /** The whole count for this edge, on the repeat of the band. */
  readonly count: CountAnswer;
}

const unlikely = (q: PickUpQuestion): Fault => ({
  code: 'pick-up-gauges-apart',
  field: 'bandPitchMm',
  given: String(q.bandPitchMm),
  problem: 'the two gauges are more than ten times apart, which no band is',
  mend: 'Give both as millimetres for one row or stitch.',
});

/** How many stitches to pick up along an edge, from the gauges of the edge and of the band. */
export const pickUp = (q: PickUpQuestion): Result<PickUp> => {
  const faults = [
    ...wholeFaults([['along', q.along, 'the number of rows along the edge', 1]]),
    ...lengthFaults([
      ['edgePitchMm', q.edgePitchMm, 'the height of a row at the edge'],
      ['bandPitchMm', q.bandPitchMm, 'the width of a stitch of the band'],
    ]),
  ];
  if (faults.length > 0) return fail(...faults);
  const value = q.edgePitchMm / q.bandPitchMm;
  if (value < 0.1 || value > 10) return fail(unlikely(q));
  const edge = mm(q.along * q.edgePitchMm);
  const count = countFor({ wantedMm: edge, pitchMm: q.bandPitchMm, repeat: q.repeat });
  if (!count.ok) return count;
  const ratio = simplestRatio(value);
  return ok({ edge, ratio, others: nearerRatios(value), count: count.value });
};
