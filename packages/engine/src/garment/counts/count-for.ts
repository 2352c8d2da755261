import { type Fault, fail, type Millimetres, mm, ok, type Result } from '../../units/index.ts';
import type { Repeat } from './types.ts';
import { lengthFaults, MOST_COUNT, settled, wholeFaults } from './whole.ts';

export type Parity = 'any' | 'even' | 'odd';

export interface CountQuestion {
  readonly wantedMm: number;
  /** Width of a stitch, or height of a row. */
  readonly pitchMm: number;
  /** Counts have to be a multiple of `stitches`, plus `plus`; one repeat at least. Left out: any count. */
  readonly repeat?: Pick<Repeat, 'stitches' | 'plus'> | undefined;
  readonly parity?: Parity | undefined;
  /** Least count that will do; 1 where left out. */
  readonly atLeast?: number | undefined;
}

/** A count and what it measures. `errorMm` is what it measures less what was wanted. */
export interface Counted {
  readonly count: number;
  readonly mm: Millimetres;
  readonly errorMm: number;
}

export interface CountAnswer extends Counted {
  readonly wantedMm: Millimetres;
  /** The next allowed counts on both sides; null where there is none below. */
  readonly below: Counted | null;
  readonly above: Counted;
}

/** Allowed counts are `first`, `first + step`, and so on. */
interface Ladder {
  readonly first: number;
  readonly step: number;
}

const fits = (count: number, parity: Parity): boolean =>
  parity === 'any' || (count % 2 === 0) === (parity === 'even');

const ladderOf = (q: CountQuestion): Ladder | null => {
  const { stitches, plus } = q.repeat ?? { stitches: 1, plus: 0 };
  const parity = q.parity ?? 'any';
  const least = Math.max(q.atLeast ?? 1, stitches + plus);
  const onRepeat = plus + stitches * Math.ceil((least - plus) / stitches);
  const first = [onRepeat, onRepeat + stitches].find((count) => fits(count, parity));
  if (first === undefined) return null;
  return { first, step: parity === 'any' || stitches % 2 === 0 ? stitches : 2 * stitches };
};

const noneFits = ({ repeat, parity }: CountQuestion): Fault => ({
  code: 'count-parity-impossible',
  field: 'parity',
  given: String(parity),
  problem: `a multiple of ${repeat?.stitches} plus ${repeat?.plus} is never ${parity}`,
  mend: 'Change what is added to the repeat by one stitch, or leave even and odd open.',
});

const faultsOf = (q: CountQuestion): Fault[] => {
  const faults = [
    ...lengthFaults([
      ['wantedMm', q.wantedMm, 'the length that is wanted'],
      ['pitchMm', q.pitchMm, 'the width of a stitch or the height of a row'],
    ]),
    ...wholeFaults([
      ['repeat.stitches', q.repeat?.stitches ?? 1, 'the repeat', 1],
      ['repeat.plus', q.repeat?.plus ?? 0, 'what is added to the repeat', 0],
      ['atLeast', q.atLeast ?? 1, 'the least count', 0],
    ]),
  ];
  if (faults.length > 0 || q.wantedMm / q.pitchMm <= MOST_COUNT) return faults;
  return [
    {
      code: 'count-too-many',
      field: 'pitchMm',
      given: String(q.pitchMm),
      problem: `that many stitches would be more than ${MOST_COUNT}`,
      mend: 'Look at the unit of both lengths; they are millimetres.',
    },
  ];
};

/**
 * The allowed count nearest to a wanted length, with its neighbours. Halfway between two, the larger:
 * a garment that is too small cannot be worn.
 *
 * @returns faults for lengths that are not above zero, counts that are not whole, and a parity that the
 *   repeat never has.
 */
export const countFor = (q: CountQuestion): Result<CountAnswer> => {
  const faults = faultsOf(q);
  if (faults.length > 0) return fail(...faults);
  const ladder = ladderOf(q);
  if (ladder === null) return fail(noneFits(q));
  const { first, step } = ladder;
  const counted = (count: number): Counted => ({
    count,
    mm: mm(count * q.pitchMm),
    errorMm: count * q.pitchMm - q.wantedMm,
  });
  const rungs = Math.floor(settled((q.wantedMm / q.pitchMm - first) / step + 0.5));
  const count = first + step * Math.max(0, rungs);
  return ok({
    ...counted(count),
    wantedMm: mm(q.wantedMm),
    below: count === first ? null : counted(count - step),
    above: counted(count + step),
  });
};
