import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stack, stackDown } from './stack.ts';

const column = fc
  .array(
    fc.record({
      want: fc.double({ min: 0, max: 500, noNaN: true }),
      height: fc.double({ min: 10, max: 80, noNaN: true }),
    }),
    { minLength: 1, maxLength: 12 },
  )
  .map((items) => items.sort((a, b) => a.want - b.want));

/** Rounding of sums of a few thousand px. */
const ROUNDING = 1e-6;

describe('columns of labels', () => {
  it.each([
    ['stack', stack],
    ['stackDown', stackDown],
  ])('W-S1: %s keeps the order and lets none overlap', (_, put) => {
    fc.assert(
      fc.property(column, (items) => {
        const at = put(items, 4);
        at.slice(1).forEach((y, i) => {
          const apart = y - items[i + 1]!.height / 2 - (at[i]! + items[i]!.height / 2);
          expect(apart).toBeGreaterThan(4 - ROUNDING);
        });
      }),
    );
  });

  it('W-S2: labels that have room stay where they want to be', () => {
    const items = [10, 100, 200].map((want) => ({ want, height: 40 }));
    expect(stack(items, 4)).toEqual([10, 100, 200]);
    expect(stackDown(items, 4)).toEqual([10, 100, 200]);
  });

  it('W-S3: two that want one place share the shift, or the second moves down', () => {
    const items = [50, 50].map((want) => ({ want, height: 40 }));
    expect(stack(items, 4)).toEqual([28, 72]);
    expect(stackDown(items, 4)).toEqual([50, 94]);
  });
});
