import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ButtonholeQuestion, buttonholes, buttonNotice } from './buttonholes.ts';
import { nearerRatios, pickUp, simplestRatio } from './pick-up.ts';
import { shortRows } from './short-rows.ts';

describe('picking up along an edge', () => {
  it('CN5: no fraction with a denominator up to its own is nearer, found by trying them all', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.15, max: 5, noNaN: true }), (value) => {
        for (const { pick, of } of nearerRatios(value)) {
          const off = Math.abs(pick / of - value);
          for (let q = 1; q <= of; q++)
            for (let p = 1; p <= 5 * q + 5; p++)
              // Errors are compared at a ten-millionth of the value, 5 at most.
              expect(off).toBeLessThanOrEqual(Math.abs(p / q - value) + 5e-7);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('CN5: rows of 3.75 mm under stitches of 5 mm are 3 for every 4; 5 mm under 7 mm are 5 for every 7', () => {
    expect(simplestRatio(3.75 / 5)).toEqual({ pick: 3, of: 4, error: 0 });
    expect(simplestRatio(5 / 7)).toMatchObject({ pick: 5, of: 7 });
    expect(simplestRatio(1)).toEqual({ pick: 1, of: 1, error: 0 });
    const tried = nearerRatios(5 / 7).map(({ pick, of }) => `${pick}/${of}`);
    expect(tried).toEqual(['1/1', '1/2', '2/3', '3/4', '5/7']);
  });

  it('CN5: a band on its repeat says what it is off by', () => {
    const answer = pickUp({
      along: 120,
      edgePitchMm: 3.6,
      bandPitchMm: 5,
      repeat: { stitches: 4, plus: 2 },
    });
    expect(answer).toMatchObject({
      value: { edge: 432, count: { count: 86, errorMm: -2 }, ratio: { pick: 5, of: 7 } },
    });
  });

  it('CN12: what is no edge is a fault', () => {
    const good = { along: 120, edgePitchMm: 3.6, bandPitchMm: 5 };
    expect(pickUp({ ...good, along: 1.5 })).toMatchObject({ faults: [{ field: 'along' }] });
    expect(pickUp({ ...good, edgePitchMm: -1 })).toMatchObject({
      faults: [{ field: 'edgePitchMm' }],
    });
    expect(pickUp({ ...good, bandPitchMm: 500 })).toMatchObject({
      faults: [{ code: 'pick-up-gauges-apart' }],
    });
  });
});

const band: ButtonholeQuestion = {
  total: 100,
  holes: 6,
  size: 2,
  margin: { start: 4, end: 4 },
  pitchMm: 5,
};

describe('buttonholes', () => {
  it('CN6: gaps and holes fill the band, margins are kept, spacing differs by one and is alike from both ends', () => {
    const room = fc.record({
      holes: fc.integer({ min: 1, max: 12 }),
      size: fc.integer({ min: 1, max: 5 }),
      plain: fc.integer({ min: 12, max: 150 }),
      margin: fc.integer({ min: 0, max: 9 }),
    });
    fc.assert(
      fc.property(room, ({ holes, size, plain, margin }) => {
        const total = plain + holes * size + 2 * margin;
        const q = { ...band, holes, size, total, margin: { start: margin, end: margin } };
        const answer = buttonholes(q);
        if (!answer.ok) return false;
        const { gaps, worstErrorMm } = answer.value;
        const inner = gaps.slice(1, -1);
        expect(gaps.reduce((a, b) => a + b, 0) + holes * size).toBe(total);
        if (holes > 1) expect([gaps[0], gaps.at(-1)]).toEqual([margin, margin]);
        expect(Math.max(0, ...inner) - Math.min(...inner, Math.max(0, ...inner))).toBeLessThan(2);
        const odd = inner.reduce((a, b) => a + b, 0) % 2 === 1;
        if (inner.length % 2 === 1 || !odd) expect(inner).toEqual([...inner].reverse());
        // Half a stitch: the farthest that rounding moves a hole; sums of doubles beside it.
        return worstErrorMm <= q.pitchMm / 2 + 1e-9;
      }),
    );
  });

  it('CN6: six holes of 2 in 100 stitches, 4 at the ends', () => {
    expect(buttonholes(band)).toMatchObject({
      value: { gaps: [4, 16, 16, 16, 16, 16, 4], idealMm: 90, worstErrorMm: 0 },
    });
  });

  it('CN6: small parts are named for children, and for nobody else', () => {
    expect(buttonNotice('baby')?.text).toContain('rules of where you live');
    expect(buttonNotice('child')?.code).toBe('small-parts');
    expect(buttonNotice('man')).toBeNull();
  });

  it('CN12: holes that do not go in are a fault', () => {
    expect(buttonholes({ ...band, holes: 40 })).toMatchObject({
      faults: [{ code: 'buttonholes-do-not-fit', given: '40' }],
    });
    expect(buttonholes({ ...band, size: 0 })).toMatchObject({ faults: [{ field: 'size' }] });
    expect(buttonholes({ ...band, margin: { start: 99, end: 99 } })).toMatchObject({ ok: false });
  });
});

describe('short rows', () => {
  it('CN7: a shoulder of 24 stitches that slopes 25 mm at 3 mm a row is 8 rows, 4 turns', () => {
    const answer = shortRows({ stitches: 24, depthMm: 25, rowMm: 3, ends: 'one' });
    expect(answer).toMatchObject({
      value: { rows: { count: 8, errorMm: -1 }, turns: [5, 5, 4, 5], flat: 5 },
    });
  });

  it('CN7: turns and what stays flat are all the stitches, rows are even', () => {
    const asked = fc.record({
      stitches: fc.integer({ min: 2, max: 80 }),
      depthMm: fc.double({ min: 1, max: 120, noNaN: true }),
      rowMm: fc.double({ min: 2, max: 8, noNaN: true }),
      ends: fc.constantFrom('one', 'both') as fc.Arbitrary<'one' | 'both'>,
    });
    fc.assert(
      fc.property(asked, (q) => {
        const answer = shortRows(q);
        if (!answer.ok) return answer.faults[0]!.code === 'short-rows-too-steep';
        const { rows, turns, flat } = answer.value;
        const left = turns.reduce((a, b) => a + b, 0) * (q.ends === 'both' ? 2 : 1);
        expect(left + flat).toBe(q.stitches);
        expect(turns.length * 2).toBe(rows.count);
        expect(Math.min(...turns, flat)).toBeGreaterThan(0);
        return true;
      }),
    );
  });

  it('CN12: a cliff is no slope', () => {
    expect(shortRows({ stitches: 5, depthMm: 100, rowMm: 3, ends: 'one' })).toMatchObject({
      faults: [{ code: 'short-rows-too-steep', field: 'depthMm' }],
    });
    expect(shortRows({ stitches: 5, depthMm: Number.NaN, rowMm: 3, ends: 'one' })).toMatchObject({
      faults: [{ code: 'count-length' }],
    });
  });
});
