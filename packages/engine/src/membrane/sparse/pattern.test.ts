import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dense, somePattern } from './check/random-symmetric.ts';
import { checkPattern, entryPosition } from './pattern.ts';

const pattern = (n: number, colPtr: number[], rowIdx: number[]) => ({
  n,
  colPtr: Int32Array.from(colPtr),
  rowIdx: Int32Array.from(rowIdx),
});

describe('pattern', () => {
  it('SP1: a whole pattern passes, an empty one too', () => {
    expect(() => checkPattern(pattern(3, [0, 1, 3, 5], [0, 0, 1, 1, 2]))).not.toThrow();
    expect(() => checkPattern(pattern(0, [0], []))).not.toThrow();
  });

  it.each([
    ['too few starts', pattern(2, [0, 1], [0]), '2 columns need 3 starts'],
    ['starts not from 0', pattern(1, [1, 1], [0]), 'starts from 0'],
    ['rows left over', pattern(1, [0, 1], [0, 0]), '2 rows, but the last start is 1'],
    ['no diagonal', pattern(2, [0, 1, 2], [0, 0]), 'column 1 does not end on its diagonal'],
    ['empty column', pattern(2, [0, 0, 1], [1]), 'column 0 does not end on its diagonal'],
    ['lower triangle', pattern(2, [0, 2, 3], [0, 1, 1]), 'column 0 does not end on its diagonal'],
    ['rows that fall', pattern(3, [0, 1, 2, 5], [0, 1, 1, 0, 2]), 'rows of column 2 do not rise'],
    ['a row twice', pattern(2, [0, 1, 4], [0, 0, 0, 1]), 'rows of column 1 do not rise'],
    ['a negative row', pattern(2, [0, 1, 3], [0, -1, 1]), 'column 1 has a negative row'],
  ])('SP1: %s is refused', (_, broken, said) => {
    expect(() => checkPattern(broken)).toThrow(said);
  });

  it('SP1: an entry is found from either triangle, and only where there is one', () => {
    fc.assert(
      fc.property(somePattern(1), (given) => {
        // Values 1, 2, 3 … name their own position.
        const values = Float64Array.from(given.rowIdx, (_, p) => p + 1);
        const full = dense({ pattern: given, values });
        for (let i = 0; i < given.n; i++)
          for (let j = 0; j < given.n; j++)
            expect(entryPosition(given, i, j) + 1).toBe(full.get(i, j));
      }),
      { numRuns: 50 },
    );
  });
});
