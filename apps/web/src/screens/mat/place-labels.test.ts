import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { placeLabels } from './place-labels.ts';

const label = fc.record({
  x: fc.double({ min: 0, max: 300, noNaN: true }),
  y: fc.double({ min: 0, max: 300, noNaN: true }),
  turn: fc.double({ min: 0, max: 6.3, noNaN: true }),
});

test('M2: labels that are shown lie apart, and the first is always shown', () => {
  fc.assert(
    fc.property(fc.array(label, { minLength: 1, maxLength: 40 }), (all) => {
      const labels = all.map(({ x, y, turn }) => ({
        x,
        y,
        outX: Math.cos(turn),
        outY: Math.sin(turn),
        width: 18,
        height: 14,
      }));
      const placed = placeLabels(labels);
      expect(placed[0]?.shown).toBe(true);
      const shown = placed.filter((each) => each.shown);
      shown.forEach((a, i) => {
        for (const b of shown.slice(i + 1))
          expect(Math.abs(a.x - b.x) >= 18 || Math.abs(a.y - b.y) >= 14).toBe(true);
      });
    }),
  );
});
