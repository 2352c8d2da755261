import fc from 'fast-check';
import { expect, test } from 'vitest';
import { shortPercent } from './short-percent.ts';

test('RT1: a chance is never 0 % or 100 %, and fits a narrow column', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (chance) => {
      const said = shortPercent(chance).replaceAll('\u00a0', ' ');
      expect(said).toMatch(/^(?:< 1|> 99|[1-9]\d?) %$/);
    }),
  );
});
