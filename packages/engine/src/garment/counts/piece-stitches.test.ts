import { describe, expect, it } from 'vitest';
import { flat, mm } from '../../units/index.ts';
import { outlinePieces } from '../outline/index.ts';
import { layersOf, pieceStitches } from './piece-stitches.ts';

const pitch = { stitch: mm(5), row: mm(4), state: 'dried' } as const;

describe('stitches in a piece', () => {
  it('CN1: a rectangle holds its columns times its rows', () => {
    const [piece] = outlinePieces('other', { width: flat(300), length: flat(200) });
    // Exact but for rounding of doubles.
    expect(pieceStitches(piece!, pitch)).toBeCloseTo(60 * 50, 9);
  });

  it('CN1: a folded sleeve is counted on both layers, a back on one', () => {
    const pieces = outlinePieces('pullover-drop-shoulder', {
      'upper-arm': flat(200),
      cuff: flat(100),
      'sleeve-length': flat(400),
    });
    const sleeve = pieces.find((each) => each.name === 'sleeve')!;
    expect(pieces.map((each) => [each.name, layersOf(each)])).toEqual([
      ['front', 1],
      ['back', 1],
      ['sleeve', 2],
    ]);
    // A trapezium of 400 high, 400 and 200 wide when it is opened.
    expect(pieceStitches(sleeve, pitch)).toBeCloseTo((400 * 300) / 20, 6);
  });

  it('CN1: twice the lengths at twice the gauge are as many stitches', () => {
    const sizes = { chest: 500, 'body-length': 600, 'armhole-depth': 200 };
    const scaled = (by: number) =>
      outlinePieces(
        'pullover-set-in',
        Object.fromEntries(Object.entries(sizes).map(([id, size]) => [id, flat(size * by)])),
      );
    const twice = { ...pitch, stitch: mm(10), row: mm(8) };
    for (const [i, piece] of scaled(1).entries()) {
      const other = scaled(2)[i]!;
      // Curves are flattened to a fixed 0.05 mm: under 1 in 10,000 of the area.
      expect(pieceStitches(other, twice) / pieceStitches(piece, pitch)).toBeCloseTo(1, 4);
    }
  });
});
