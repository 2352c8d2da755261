import { describe, expect, it } from 'vitest';
import { evenGaps, spaceEvenly } from './even-gaps.ts';
import { spaceRows } from './space-rows.ts';

/** Every way of writing `total` as `groups` numbers from 0 upwards, in order. */
const everyWay = (total: number, groups: number): number[][] =>
  groups === 1
    ? [[total]]
    : Array.from({ length: total + 1 }, (_, first) => first).flatMap((first) =>
        everyWay(total - first, groups - 1).map((rest) => [first, ...rest]),
      );

const spread = (gaps: readonly number[]) => Math.max(...gaps) - Math.min(...gaps);
const isMirror = (gaps: readonly number[]) => gaps.every((gap, i) => gap === gaps.at(-1 - i));
/** Farthest that a boundary lies from its ideal place. */
const farthest = (gaps: readonly number[]) => {
  const total = gaps.reduce((a, b) => a + b, 0);
  const edges = gaps.map((_, i) => gaps.slice(0, i + 1).reduce((a, b) => a + b, 0));
  return Math.max(...edges.map((edge, i) => Math.abs(edge - ((i + 1) * total) / gaps.length)));
};

describe('even spacing', () => {
  it('CN3: of every arrangement of up to 14 in up to 6, none is more even, better placed or more alike', () => {
    for (let total = 0; total <= 14; total++)
      for (let groups = 1; groups <= 6; groups++) {
        const found = evenGaps(total, groups);
        const all = everyWay(total, groups);
        expect(found.reduce((a, b) => a + b, 0)).toBe(total);
        expect(spread(found)).toBe(Math.min(...all.map(spread)));
        // Sums of halves and sixths in doubles: a billionth is far above their rounding.
        expect(farthest(found)).toBeLessThan(Math.min(...all.map(farthest)) + 1e-9);
        const even = all.filter((gaps) => spread(gaps) <= 1 && farthest(gaps) <= 0.5 + 1e-9);
        if (even.some(isMirror))
          expect([total, groups, isMirror(found)]).toEqual([total, groups, true]);
      }
  });

  it('CN3: any stretch of gaps holds as much as any other so long, but for one', () => {
    for (const [total, groups] of [
      [97, 14],
      [101, 9],
      [200, 37],
    ] as const) {
      const gaps = evenGaps(total, groups);
      for (let length = 1; length < groups; length++) {
        const sums = gaps
          .slice(0, groups - length + 1)
          .map((_, i) => gaps.slice(i, i + length).reduce((a, b) => a + b, 0));
        // Both ends of a stretch are within half a unit of their ideal places, so its length is within
        // one, and whole: two lengths at most, next to each other.
        expect(spread(sums)).toBeLessThanOrEqual(1);
      }
    }
  });

  it('CN3: flat keeps a margin at both ends, a round has none; decreases use two stitches', () => {
    const flat = spaceEvenly({ total: 80, places: 7, uses: 2, layout: 'flat' });
    const round = spaceEvenly({ total: 80, places: 8, uses: 2, layout: 'round' });
    expect(flat).toMatchObject({ value: { gaps: [8, 8, 9, 8, 8, 9, 8, 8], sizes: [8, 9] } });
    expect(round).toMatchObject({ value: { gaps: Array(8).fill(8), sizes: [8], worst: 0 } });
  });

  it('CN12: what does not go in, or is not whole, is a fault', () => {
    const question = { total: 10, places: 6, uses: 2, layout: 'flat' } as const;
    expect(spaceEvenly(question)).toMatchObject({
      faults: [{ code: 'spacing-too-many', mend: 'Spread 5 at most, or use a longer stretch.' }],
    });
    expect(spaceEvenly({ ...question, places: 2.5 })).toMatchObject({
      faults: [{ code: 'count-not-whole', field: 'places', given: '2.5' }],
    });
    expect(spaceRows({ rows: 10, times: 6, on: 'right-side' })).toMatchObject({
      faults: [{ code: 'spacing-too-many', mend: expect.stringContaining('5 times at most') }],
    });
    expect(spaceRows({ rows: 0, times: 1, on: 'any' })).toMatchObject({
      faults: [{ field: 'rows' }],
    });
  });

  it('CN4: rows are used up by intervals that differ by one step', () => {
    for (let rows = 1; rows <= 60; rows++)
      for (let times = 1; times <= rows; times++)
        for (const on of ['any', 'right-side'] as const) {
          const step = on === 'any' ? 1 : 2;
          const answer = spaceRows({ rows, times, on });
          if (times * step > rows) {
            expect(answer.ok).toBe(false);
            continue;
          }
          if (!answer.ok) throw new Error('expected runs');
          const { runs, rest } = answer.value;
          const used = runs.reduce((sum, run) => sum + run.every * run.times, 0);
          expect(runs.reduce((sum, run) => sum + run.times, 0)).toBe(times);
          expect(used + rest).toBe(rows);
          expect(rest).toBeLessThan(step);
          expect(runs.every((run) => run.every % step === 0)).toBe(true);
          expect(spread(runs.map((run) => run.every))).toBeLessThanOrEqual(step);
        }
  });
});
