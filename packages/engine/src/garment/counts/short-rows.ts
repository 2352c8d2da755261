import { type Fault, fail, ok, type Result } from '../../units/index.ts';
import { type CountAnswer, countFor } from './count-for.ts';
import { evenGaps } from './even-gaps.ts';
import { lengthFaults, wholeFaults } from './whole.ts';

export interface ShortRowQuestion {
  /** Stitches that the slope goes over. */
  readonly stitches: number;
  /** How much taller the tall end is than the short one: a shoulder's slope, a heel's or bust's depth. */
  readonly depthMm: number;
  readonly rowMm: number;
  /** `one`: the rows grow shorter at one end, as on a shoulder. `both`: at both, as on a heel. */
  readonly ends: 'one' | 'both';
}

export interface ShortRows {
  /** Rows at the tall place beyond those at the short one, always even; with their rounding error. */
  readonly rows: CountAnswer;
  /** Stitches left unworked at each turn, the first turn first; at each end for `both`. */
  readonly turns: readonly number[];
  /** Stitches that are worked in every row: the flat top. */
  readonly flat: number;
}

const tooSteep = (q: ShortRowQuestion, turns: number): Fault => ({
  code: 'short-rows-too-steep',
  field: 'depthMm',
  given: String(q.depthMm),
  problem: `that depth needs ${turns} turns${q.ends === 'both' ? ' at each end' : ''}, and there are ${q.stitches} stitches to turn among`,
  mend: 'Go over more stitches, or make it less deep.',
});

const faultsOf = (q: ShortRowQuestion): Fault[] => [
  ...wholeFaults([['stitches', q.stitches, 'the number of stitches', 2]]),
  ...lengthFaults([
    ['depthMm', q.depthMm, 'the depth'],
    ['rowMm', q.rowMm, 'the height of a row'],
  ]),
];

/**
 * Short rows that make one end of a stretch taller: two rows for each turn, the stitches shared out
 * evenly. At `both` ends a third of the stitches stays in the middle (common practice, no source).
 */
export const shortRows = (q: ShortRowQuestion): Result<ShortRows> => {
  const faults = faultsOf(q);
  if (faults.length > 0) return fail(...faults);
  const rows = countFor({ wantedMm: q.depthMm, pitchMm: q.rowMm, parity: 'even' });
  if (!rows.ok) return rows;
  const turns = rows.value.count / 2;
  if (q.ends === 'one') {
    if (turns >= q.stitches) return fail(tooSteep(q, turns));
    const groups = evenGaps(q.stitches, turns + 1);
    return ok({ rows: rows.value, turns: groups.slice(0, -1), flat: groups.at(-1)! });
  }
  const side = Math.floor(q.stitches / 3);
  if (turns > side) return fail(tooSteep(q, turns));
  return ok({ rows: rows.value, turns: evenGaps(side, turns), flat: q.stitches - 2 * side });
};
