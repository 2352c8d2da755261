import * as fc from 'fast-check';
import type { YarnStock } from '../../fabric/index.ts';

/** Skeins in up to three dye lots, some without a label, and what the scale says is left. */
export const stock: fc.Arbitrary<YarnStock> = fc.record({
  lots: fc
    .array(
      fc.record({
        skeins: fc.integer({ min: 0, max: 14 }),
        gramsEach: fc.constantFrom(50, 100, null),
        metresEach: fc.constantFrom(100, 180, null),
      }),
      { maxLength: 3 },
    )
    .map((lots) =>
      lots.map((lot, k) => ({
        dyeLot: `${k + 1}`,
        ...lot,
        gramsEach: lot.gramsEach ?? (lot.metresEach === null ? 50 : null),
      })),
    ),
  leftG: fc.option(fc.integer({ min: 0, max: 900 })),
});
