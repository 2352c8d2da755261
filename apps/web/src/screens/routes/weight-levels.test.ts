import fc from 'fast-check';
import { expect, test } from 'vitest';
import { LEVELS, levelOf, withLevel } from './weight-levels.ts';

test('RT4: a level read back is the level that was chosen, and nothing else moves', () => {
  const weight = fc.double({ min: 0, max: 1, noNaN: true });
  fc.assert(
    fc.property(
      fc.record({ fit: weight, time: weight, yarn: weight }),
      fc.constantFrom('fit' as const, 'time' as const, 'yarn' as const),
      fc.constantFrom(...LEVELS.map(({ value }) => value)),
      (weights, what, level) => {
        const { [what]: set, ...others } = withLevel(weights, what, level);
        const { [what]: _, ...before } = weights;
        expect(levelOf(set)).toBe(level);
        expect(others).toEqual(before);
      },
    ),
  );
});

test('RT4: a weight between levels is the nearest', () => {
  expect([0, 0.2, 0.3, 0.7, 0.8, 1].map(levelOf)).toEqual([
    'not',
    'not',
    'some',
    'some',
    'much',
    'much',
  ]);
});
