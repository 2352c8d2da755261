import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type EdgeAsked, fitEdge } from './fit-edge.ts';

const asked = (wanted: (height: number) => number, to: number, starts: number[]): EdgeAsked => ({
  wanted,
  from: 0,
  to,
  starts,
  least: () => 0,
  boundOn: 1,
  most: () => Infinity,
  measured: [],
});

const intervals = (rows: readonly number[]) => rows.slice(1).map((row, i) => row - rows[i]!);

describe('following an edge', () => {
  it('CN10: an upright edge is not shaped', () => {
    expect(fitEdge(asked(() => 50, 100, [50]))).toEqual({
      start: 50,
      events: [],
      worst: 0,
      rms: 0,
    });
  });

  it('CN10: a slant of one stitch in six rows is one run, every 6 rows', () => {
    const fit = fitEdge(asked((h) => 20 + h / 6, 72, [20]))!;
    expect(fit.events.every((event) => event.by === 1)).toBe(true);
    expect(new Set(intervals(fit.events.map((event) => event.row)))).toEqual(new Set([6]));
    expect(fit.worst).toBeLessThanOrEqual(0.5);
  });

  it('CN10: a slant of 13 stitches in 60 rows is two or three runs, 4 and 6 rows apart', () => {
    const fit = fitEdge(asked((h) => 20 + (13 * h) / 60, 60, [20]))!;
    const gaps = intervals(fit.events.map((event) => event.row));
    expect(fit.events.length).toBe(13);
    expect(gaps.every((gap) => gap === 4 || gap === 6)).toBe(true);
    expect(gaps.filter((gap, i) => i > 0 && gap !== gaps[i - 1]).length).toBeLessThanOrEqual(2);
  });

  it('CN10: a ledge is bound off at once', () => {
    const fit = fitEdge(asked((h) => (h < 20 ? 50 : 42), 40, [50]))!;
    expect(fit.events).toEqual([{ row: 21, by: -8 }]);
  });

  it('CN10: any smooth edge stays within one stitch, half a stitch on the whole, shaped on right-side rows', () => {
    const curve = fc.record({
      a: fc.double({ min: -15, max: 15, noNaN: true }),
      b: fc.double({ min: -8, max: 8, noNaN: true }),
      waves: fc.double({ min: 0, max: 2, noNaN: true }),
      rows: fc.integer({ min: 10, max: 60 }),
    });
    fc.assert(
      fc.property(curve, ({ a, b, waves, rows }) => {
        const wanted = (h: number) =>
          60 + (a * h) / rows + b * Math.sin((waves * Math.PI * h) / rows);
        const fit = fitEdge(asked(wanted, 2 * rows, [Math.round(wanted(0))]))!;
        expect(fit.worst).toBeLessThanOrEqual(1);
        // Half a stitch is the rounding to whole ones; twenty rows beyond it cost as much as two lines.
        expect(fit.rms).toBeLessThan(0.5);
        const odd = fit.events.filter((event) => event.row % 2 === 0).length;
        // Slopes above one stitch in two rows need wrong-side rows too; these have none.
        if (Math.abs(a) + 2 * Math.PI * Math.abs(b) * waves < rows / 2) expect(odd).toBe(0);
      }),
      { numRuns: 40 },
    );
  });
});
