import type { Cited } from '../textile/index.ts';
import { fail, type Millimetres, mm, ok, type Result } from '../units/index.ts';

/**
 * A fabric takes the same yarn per stitch however it is stretched, which ties width to height:
 * w + δ · c is constant, with w the width of a stitch and c the height of a row. (Poincloux et al.
 * write the letters the other way round.)
 */
export interface RestStitch {
  readonly stitch: Millimetres;
  readonly row: Millimetres;
  readonly delta: number;
}

/** δ from 0.86, a very open monofilament, over 2, Peirce's outline, to about 3, a tight worsted. */
export const DELTA: Cited & {
  readonly low: number;
  readonly high: number;
  readonly usual: number;
} = { low: 0.9, high: 3, usual: 2, source: null, standing: 'assumption' };

const check = ({ stitch, row, delta }: RestStitch): void => {
  if (!(stitch > 0 && row > 0 && delta > 0))
    throw new RangeError(`no such stitch: ${stitch} by ${row} mm, delta ${delta}`);
};

/** The constant w + δ · c, in millimetres. */
export const yarnMeasure = (rest: RestStitch): Millimetres => {
  check(rest);
  return mm(rest.stitch + rest.delta * rest.row);
};

/** Width lost per height gained, both as fractions of rest: ν = δ · c / w. */
export const narrowingRatio = (rest: RestStitch): number => {
  check(rest);
  return (rest.delta * rest.row) / rest.stitch;
};

const spent = (what: 'width' | 'height', given: Millimetres): Result<never> =>
  fail({
    code: 'yarn-spent',
    field: what === 'width' ? 'row' : 'stitch',
    given: `${given} mm`,
    problem: `there is not enough yarn in a stitch for that: no ${what} would be left`,
    mend: 'Stretch it less, or work it with more yarn in each stitch.',
  });

/** Width of a stitch when its row is drawn to a height. A fault where no width would be left. */
export const stitchAtRow = (rest: RestStitch, row: Millimetres): Result<Millimetres> => {
  const stitch = yarnMeasure(rest) - rest.delta * row;
  return stitch > 0 ? ok(mm(stitch)) : spent('width', row);
};

/** Height of a row when its stitch is drawn to a width. A fault where no height would be left. */
export const rowAtStitch = (rest: RestStitch, stitch: Millimetres): Result<Millimetres> => {
  const row = (yarnMeasure(rest) - stitch) / rest.delta;
  return row > 0 ? ok(mm(row)) : spent('height', stitch);
};
