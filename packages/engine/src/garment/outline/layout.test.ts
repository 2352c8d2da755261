import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flat } from '../../units/index.ts';
import { inRows, layoutPieces, rowBreaks } from './layout.ts';
import { outlinePieces } from './outline.ts';

const slot = fc.record({
  width: fc.double({ min: 1, max: 900, noNaN: true }),
  height: fc.double({ min: 1, max: 900, noNaN: true }),
});

describe('layout', () => {
  it('G-L1: three pieces break into rows in four ways, keeping their order', () => {
    expect(rowBreaks(3)).toEqual([[1, 1, 1], [1, 2], [2, 1], [3]]);
  });

  it('G-L2: no two slots overlap and all lie inside the whole', () => {
    fc.assert(
      fc.property(fc.array(slot, { minLength: 1, maxLength: 4 }), fc.nat(), (slots, pick) => {
        const ways = rowBreaks(slots.length);
        const { at, width, height } = inRows(slots, ways[pick % ways.length]!, 10);
        // 1e-9: rounding of sums of a few hundreds.
        const clear = (lo: number, hi: number) => hi - lo > -1e-9;
        at.forEach((p, i) => {
          expect(clear(p.x + slots[i]!.width, width) && clear(p.y + slots[i]!.height, height)).toBe(
            true,
          );
          at.slice(i + 1).forEach((q, k) => {
            const beside = clear(p.x + slots[i]!.width + 10, q.x);
            const below = clear(p.y + slots[i]!.height + 10, q.y);
            expect(beside || below, `${i} and ${i + 1 + k}`).toBe(true);
          });
        });
      }),
    );
  });

  it('G-L3: a wide sheet puts pieces in one row, a tall one in several', () => {
    const pieces = outlinePieces('cardigan-set-in', { chest: flat(500) });
    const wide = layoutPieces(pieces, 4);
    const tall = layoutPieces(pieces, 0.25);
    expect(new Set(wide.at.map((p) => p.y)).size).toBe(1);
    expect(new Set(tall.at.map((p) => p.y)).size).toBe(3);
    expect(wide.width / wide.height).toBeGreaterThan(tall.width / tall.height);
  });

  it('G-L4: no pieces give an empty layout', () => {
    expect(layoutPieces([], 1)).toEqual({ at: [], boxes: [], width: 0, height: 0 });
  });
});
