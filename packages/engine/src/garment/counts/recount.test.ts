import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mm } from '../../units/index.ts';
import { pitches, steps } from './check/arbitrary.ts';
import { readCounts } from './read-counts.ts';
import { recount } from './recount.ts';
import { tidySteps } from './tidy.ts';
import type { Pitch, Step } from './types.ts';

const gauge = (stitch: number, row: number): Pitch => ({
  stitch: mm(stitch),
  row: mm(row),
  state: 'dried',
});
const read = (text: string): readonly Step[] => {
  const found = readCounts(text);
  if (!found.ok) throw new Error(JSON.stringify(found.faults));
  return found.value;
};

const BACK = read(
  `Cast on 104 sts. Work 20 rows in rib. Increase 4 evenly across the next row (108).
  Work to 37 cm. Bind off 5 at the beginning of the next 2 rows. Decrease 1 each end of every 2nd row 7 times.
  Work 40 rows. Bind off center 24 sts and work each side separately. Decrease 1 at neck edge of every 2nd row 3 times.
  Bind off 8 at side edge of next row and every 2nd row 2 times more. Work 1 row. Bind off the remaining stitches.`.replace(
    '(108)',
    '(108 sts)',
  ),
);

describe('a pattern at another gauge', () => {
  it('CN11: the same gauge gives the same steps', () => {
    fc.assert(
      fc.property(steps, pitches, (list, pitch) => {
        const tidy = tidySteps(list, pitch);
        if (!tidy.ok) return;
        expect(recount(tidy.value, pitch, pitch)).toMatchObject({
          ok: true,
          value: { steps: tidy.value },
        });
      }),
      { numRuns: 200 },
    );
  });

  it('CN11: both gauges scaled alike change nothing', () => {
    const plain = recount(BACK, gauge(5, 4), gauge(4.5, 3.5));
    // Lengths of the text stay what they are, so a back that is worked to a length is scaled without it.
    const inRows = BACK.map(
      (s): Step => (s.kind === 'work' && 'toMm' in s.extent ? { ...s, extent: { rows: 70 } } : s),
    );
    const one = recount(inRows, gauge(5, 4), gauge(4.5, 3.5));
    const two = recount(inRows, gauge(10, 8), gauge(9, 7));
    expect(plain.ok && one.ok && two.ok).toBe(true);
    if (one.ok && two.ok) expect(two.value.steps).toEqual(one.value.steps);
  });

  it('CN11: at 22 stitches for 20 the back of 104 is cast on with 114, and keeps its lengths', () => {
    const found = recount(BACK, gauge(5, 4), gauge(100 / 22, 100 / 28));
    if (!found.ok) throw new Error(JSON.stringify(found.faults));
    const { lines } = found.value;
    expect(lines[0]).toMatchObject({
      mine: [{ kind: 'cast-on', stitches: 114 }],
      stitches: { theirs: 104, mine: 114 },
    });
    // 104 · 5 = 520 mm; 114 · 100/22 = 518.2 mm.
    expect(lines[0]!.stitches!.errorMm).toBeCloseTo(114 * (100 / 22) - 520, 9);
    expect(lines[3]).toMatchObject({ mine: [{ kind: 'work', extent: { toMm: 370 } }] });
  });

  it('CN11: widths stay within one stitch and a half of the pattern’s at each edge, lengths within six rows', () => {
    const mine = fc.record({
      s: fc.double({ min: 4, max: 6.2, noNaN: true }),
      r: fc.double({ min: 3, max: 5.2, noNaN: true }),
    });
    fc.assert(
      fc.property(mine, ({ s, r }) => {
        const found = recount(BACK, gauge(5, 4), gauge(s, r));
        if (!found.ok) return found.faults[0]!.code === 'recount-impossible';
        for (const line of found.value.lines) {
          // Half a stitch for the cast-on, half for the running total of each of two edges, one for the
          // centre, whose count has to be even where the rest is.
          if (line.stitches) expect(Math.abs(line.stitches.errorMm)).toBeLessThanOrEqual(3 * s);
          // Half a row of rounding, a row that a line takes whether there is room for it or not, and four
          // that shaping may borrow from the plain rows after it.
          expect(Math.abs(line.rows.errorMm)).toBeLessThanOrEqual(5.5 * r);
        }
        return true;
      }),
      { numRuns: 100 },
    );
  });

  it('CN11: what is borrowed for shaping on right-side rows is given back by the plain rows after it', () => {
    const found = recount(
      read(
        'Cast on 100. Decrease 1 each end every 2nd row 9 times. Work 40 rows. Bind off remaining.',
      ),
      gauge(5, 4),
      gauge(4.5, 4),
    );
    if (!found.ok) throw new Error(JSON.stringify(found.faults));
    expect(found.value.steps.slice(1, 3)).toMatchObject([
      { every: 2, times: 10 },
      { extent: { rows: 38 } },
    ]);
    expect(found.value.lines.at(-1)!.rows).toEqual({ theirs: 58, mine: 58, errorMm: 0 });
  });

  it('CN11: a repeat is kept where stitches are cast on', () => {
    const found = recount(BACK, gauge(5, 4), gauge(4.5, 3.6), { stitches: 6, plus: 1 });
    if (!found.ok) throw new Error(JSON.stringify(found.faults));
    expect(found.value.steps[0]).toEqual({ kind: 'cast-on', stitches: 115, round: false });
  });

  it('CN12: gauges that cannot be compared are faults', () => {
    expect(recount(BACK, gauge(5, 4), { ...gauge(5, 4), state: 'asKnit' })).toMatchObject({
      faults: [{ code: 'recount-states', field: 'myPitch.state' }],
    });
    expect(recount(BACK, gauge(0, 4), gauge(5, 4))).toMatchObject({
      faults: [{ field: 'patternPitch.stitch' }],
    });
    expect(recount(BACK, gauge(5, 4), gauge(5, -1))).toMatchObject({
      faults: [{ field: 'myPitch.row' }],
    });
    expect(recount([], gauge(5, 4), gauge(5, 4))).toMatchObject({
      faults: [{ code: 'recount-impossible' }],
    });
  });
});
