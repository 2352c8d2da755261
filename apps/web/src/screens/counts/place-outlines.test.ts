import { countsOfPiece, outlineFromCounts } from '@dryflat/engine/counts';
import { outlinePieces } from '@dryflat/engine/garment';
import { flat, mm } from '@dryflat/engine/units';
import { expect, test } from 'vitest';
import { placeOutlines } from './place-outlines.ts';

const pitch = { stitch: mm(5), row: mm(3.6), state: 'dried' } as const;
const sizes = { chest: flat(520), 'rib-depth': flat(60) };

test.each(['cardigan-set-in', 'pullover-raglan'] as const)(
  'CW2: hems lie on one line, and counts lie on what is wanted to a stitch or two (%s)',
  (kind) => {
    for (const wanted of outlinePieces(kind, sizes)) {
      const counts = countsOfPiece(wanted, { pitch });
      if (!counts.ok) throw new Error(JSON.stringify(counts.faults));
      const drawn = outlineFromCounts(counts.value.steps, pitch, wanted.name);
      if (!drawn.ok) throw new Error(JSON.stringify(drawn.faults));
      const { placed } = placeOutlines([wanted, drawn.value]);
      const [a, b] = placed.map(({ box }) => box);
      expect([a!.bottom, b!.bottom]).toEqual([0, 0]);
      // Counts of a piece are even numbers of stitches and rows: two of each at the most.
      expect(Math.abs(a!.left - b!.left)).toBeLessThanOrEqual(2 * pitch.stitch);
      expect(Math.abs(a!.right - b!.right)).toBeLessThanOrEqual(2 * pitch.stitch);
      expect(Math.abs(a!.top - b!.top)).toBeLessThanOrEqual(2 * pitch.row);
    }
  },
);
