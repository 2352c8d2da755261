import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { fitted } from './shrink.ts';

test('PH2: a picture fits its longest side, keeps its shape, and is never made larger', () => {
  const side = fc.integer({ min: 1, max: 20_000 });
  fc.assert(
    fc.property(side, side, (width, height) => {
      const size = fitted({ width, height }, 1280);
      expect(Math.max(size.width, size.height)).toBe(Math.min(1280, Math.max(width, height)));
      const scale = Math.min(1, 1280 / Math.max(width, height));
      // Half a pixel for rounding, and a thread stays a pixel wide.
      expect(Math.abs(size.width - width * scale)).toBeLessThanOrEqual(
        width * scale < 0.5 ? 1 : 0.5,
      );
      expect(Math.abs(size.height - height * scale)).toBeLessThanOrEqual(
        height * scale < 0.5 ? 1 : 0.5,
      );
    }),
  );
});
