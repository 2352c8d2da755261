import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mm, type Result } from '../../units/index.ts';
import { pitches, steps } from './check/arbitrary.ts';
import { outlineFromCounts } from './draw-steps.ts';
import { pieceStitches } from './piece-stitches.ts';
import { stepsOfGrid } from './read-grid.ts';
import { stitchesIn, tidySteps } from './tidy.ts';
import type { Pitch, Step } from './types.ts';

const got = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value;
};

const pitch: Pitch = { stitch: mm(5), row: mm(4), state: 'dried' };

const BACK: Step[] = [
  { kind: 'cast-on', stitches: 100, round: false },
  { kind: 'work', fabric: 'rib', extent: { rows: 20 } },
  { kind: 'evenly', change: 'increase', stitches: 6 },
  { kind: 'work', fabric: 'main', extent: { rows: 60 } },
  { kind: 'shape', by: 'bind-off', edge: 'each', stitches: 5, first: 1, every: 2, times: 1 },
  { kind: 'shape', by: 'decrease', edge: 'each', stitches: 1, first: 1, every: 2, times: 6 },
  { kind: 'work', fabric: 'main', extent: { rows: 30 } },
  { kind: 'divide', stitches: 20 },
  { kind: 'shape', by: 'decrease', edge: 'neck', stitches: 1, first: 1, every: 1, times: 3 },
  { kind: 'same-time' },
  { kind: 'shape', by: 'bind-off', edge: 'side', stitches: 7, first: 1, every: 2, times: 3 },
  { kind: 'finish', by: 'bind-off' },
  { kind: 'reverse' },
];

describe('counts and outline', () => {
  it('CN8: a back of 106 stitches is 530 mm wide, 131 rows are 524 mm high', () => {
    const piece = got(outlineFromCounts(BACK, pitch));
    const sizes = Object.fromEntries(piece.dimensions.map((d) => [d.landmark, d.mm]));
    // 20 + 1 + 60 + 2 + 11 + 30 + 1 + 5 rows.
    expect(sizes).toMatchObject({
      hem: 500,
      width: 530,
      length: 130 * 4,
      'rib-depth': 80,
      'underarm-length': 81 * 4,
    });
    expect(sizes['neck-width']).toBe((20 + 6) * 5);
  });

  it('CN8: counts → outline → counts are the same counts', () => {
    fc.assert(
      fc.property(steps, pitches, (list, gauge) => {
        const tidy = tidySteps(list, gauge);
        if (!tidy.ok) return; // Stitches that ran out: no piece.
        const piece = got(outlineFromCounts(list, gauge));
        expect(stepsOfGrid(piece, gauge)).toEqual(tidy.value);
        expect(got(tidySteps(tidy.value, gauge))).toEqual(tidy.value);
      }),
      { numRuns: 400 },
    );
  });

  it('CN8: most made-up pieces can be knit, so that the law above is about something', () => {
    const all = fc.sample(steps, { numRuns: 300, seed: 5 });
    const knit = all.filter((list) => tidySteps(list, pitch).ok);
    expect(knit.length).toBeGreaterThan(200);
    expect(knit.some((list) => list.some((step) => step.kind === 'same-time'))).toBe(true);
  });

  it('CN8: gauge and outline scaled alike give the same counts', () => {
    fc.assert(
      fc.property(steps, fc.double({ min: 0.3, max: 3, noNaN: true }), (list, by) => {
        if (!tidySteps(list, pitch).ok) return;
        const piece = got(outlineFromCounts(list, pitch));
        const scaled = got(
          outlineFromCounts(list, { ...pitch, stitch: mm(5 * by), row: mm(4 * by) }),
        );
        const twice = stepsOfGrid(scaled, { ...pitch, stitch: mm(5 * by), row: mm(4 * by) });
        expect(twice).toEqual(stepsOfGrid(piece, pitch));
      }),
      { numRuns: 100 },
    );
  });

  it('CN1: the stitches of the steps are the area of their outline', () => {
    fc.assert(
      fc.property(steps, pitches, (list, gauge) => {
        const count = stitchesIn(list, gauge);
        if (!count.ok) return;
        const piece = got(
          outlineFromCounts(
            list,
            gauge,
            list[0]?.kind === 'cast-on' && list[0].round ? 'hat' : 'piece',
          ),
        );
        // Sums of some hundred products in doubles: a billionth is far above their rounding.
        expect(pieceStitches(piece, gauge) / count.value).toBeCloseTo(1, 9);
      }),
      { numRuns: 200 },
    );
  });
});
