import { describe, expect, it } from 'vitest';
import { GARMENT_KINDS } from '../kinds.ts';
import { outlineOf } from '../outline/index.ts';
import { shareKnit } from './share-knit.ts';

describe('share of a piece that is knit', () => {
  it.each(GARMENT_KINDS)('CN13: of a %s it runs from nothing to all and never falls', (kind) => {
    for (const piece of outlineOf(kind, {}).pieces) {
      const share = shareKnit(piece);
      const shares = Array.from({ length: 101 }, (_, i) => share(20 * i));
      expect(shares[0]).toBe(0);
      expect(shares.at(-1)).toBe(1);
      // Corners of a curve that is cut in two: the rounding of the polygon.
      for (let i = 1; i < shares.length; i++)
        expect(shares[i]! - shares[i - 1]!).toBeGreaterThan(-1e-6);
    }
  });

  it('CN13: of a rectangle it is the share of its length', () => {
    const [blanket] = outlineOf('blanket', {}).pieces;
    const long = blanket!.dimensions.find(({ landmark }) => landmark === 'length')!.mm;
    for (const part of [0.1, 0.5, 0.9])
      expect(shareKnit(blanket!)(part * long)).toBeCloseTo(part, 9);
  });

  it('CN13: half the depth of a triangle knit outwards is a quarter of it', () => {
    const [shawl] = outlineOf('shawl-triangle', {}).pieces;
    const deep = shawl!.dimensions.find(({ landmark }) => landmark === 'depth')!.mm;
    expect(shareKnit(shawl!)(deep / 2)).toBeCloseTo(0.25, 9);
  });
});
