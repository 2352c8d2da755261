import { describe, expect, it } from 'vitest';
import type { Result } from '../../units/index.ts';
import { buttonholes } from './buttonholes.ts';
import { spaceEvenly } from './even-gaps.ts';
import { simplestRatio } from './pick-up.ts';
import { shortRows } from './short-rows.ts';
import { spaceRows } from './space-rows.ts';
import {
  writeBand,
  writeHeel,
  writePickUp,
  writeRowSpacing,
  writeShortRows,
  writeSpacing,
} from './write-plans.ts';

const got = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value;
};

/** Stitches that a sentence uses up, told by reading its numbers, blocks multiplied out. */
const stitchesSaid = (text: string, changeUses: number): number => {
  const flat = text.replace(/\(([^)]*)\) (twice|(\d+) times)/g, (_, block, often, n) =>
    Array(often === 'twice' ? 2 : Number(n))
      .fill(block)
      .join(', '),
  );
  return [...flat.matchAll(/(knit|work|decrease|increase|bind off|cast off) (\d+)/gi)].reduce(
    (sum, [, verb, n]) => sum + (/crease/.test(verb!) ? changeUses : Number(n)),
    0,
  );
};

describe('plans in words', () => {
  it('CN3: evenly spread shaping is said with its repeats', () => {
    const flat = got(spaceEvenly({ total: 80, places: 7, uses: 2, layout: 'flat' }));
    const round = got(spaceEvenly({ total: 80, places: 8, uses: 2, layout: 'round' }));
    expect(writeSpacing(round, 'decrease', 'round')).toBe('(knit 8, decrease 1) 8 times.');
    expect(writeSpacing(flat, 'decrease', 'flat')).toMatch(/^[(K].*knit 8\.$/);
    const none = got(spaceEvenly({ total: 6, places: 6, uses: 0, layout: 'round' }));
    expect(writeSpacing(none, 'increase', 'round')).toBe('(knit 1, increase 1) 6 times.');
  });

  it('CN3: what is said uses up every stitch', () => {
    for (let total = 10; total <= 60; total += 7)
      for (let places = 1; places <= 5; places++)
        for (const layout of ['flat', 'round'] as const) {
          const spacing = got(spaceEvenly({ total, places, uses: 2, layout }));
          expect(stitchesSaid(writeSpacing(spacing, 'decrease', layout), 2)).toBe(total);
        }
  });

  it('CN4: shaping over rows is said as every n and the next longer', () => {
    const rows = got(spaceRows({ rows: 51, times: 7, on: 'right-side' }));
    expect(writeRowSpacing(rows, 'us')).toBe(
      'Every 6th row 3 times, then every 8th row 4 times, then 1 row.',
    );
    const close = got(spaceRows({ rows: 7, times: 3, on: 'any' }));
    expect(writeRowSpacing(close, 'us')).toBe('Every other row twice, then every 3rd row once.');
    expect(writeRowSpacing(close, 'uk')).toBe(
      'Every alternate row twice, then every 3rd row once.',
    );
  });

  it('CN5: a ratio is said as stitches for rows', () => {
    expect(writePickUp(simplestRatio(0.75))).toBe('Pick up 3 stitches for every 4 rows.');
    expect(writePickUp(simplestRatio(1))).toBe('Pick up 1 stitch for every row.');
  });

  it('CN6: a buttonhole row uses up the band, in American or British words', () => {
    const band = { total: 100, holes: 6, size: 2, margin: { start: 4, end: 4 }, pitchMm: 5 };
    const us = writeBand(got(buttonholes(band)), 2, 'us');
    expect(us).toBe('Work 4, bind off 2, (work 16, bind off 2) 5 times, work 4.');
    expect(writeBand(got(buttonholes(band)), 2, 'uk')).toContain('cast off 2');
    expect(stitchesSaid(us, 0)).toBe(100);
  });

  it('CN7: short rows name what is left at each turn', () => {
    const shoulder = got(shortRows({ stitches: 24, depthMm: 25, rowMm: 3, ends: 'one' }));
    expect(writeShortRows(shoulder)).toBe(
      'Work short rows, leaving 5, 5, 4, 5 stitches more unworked at each turn, until 5 stitches are worked; then work across all.',
    );
    const heel = got(shortRows({ stitches: 32, depthMm: 48, rowMm: 2.4, ends: 'both' }));
    expect(writeHeel({ ...heel, stitches: 32 })).toBe(
      'Heel, over 32 stitches: work short rows, leaving 1 more unworked at each end, 10 turns at each, until 12 stitches are worked; then take the same back in, one turn after the other.',
    );
  });
});
