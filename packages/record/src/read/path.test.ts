import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { givenText, pathText, valueAt } from './path.ts';

describe('paths', () => {
  it.each([
    [[], 'record'],
    [['plan'], 'plan'],
    [['evidence', 0, 'readings', 1, 'count'], 'evidence[0].readings[1].count'],
  ])('R47: %j reads as %s', (path, text) => {
    expect(pathText(path)).toBe(text);
  });

  it('R47: what is not there is undefined, never an error', () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.array(fc.oneof(fc.string(), fc.nat(3))), (root, path) => {
        expect(valueAt(root, [...path, 'surely-not-there'])).toBeUndefined();
      }),
    );
  });

  it('R47: a given value is repeated short', () => {
    expect(givenText('x'.repeat(100))).toHaveLength(60);
    expect(givenText(undefined)).toBe('');
    expect(givenText(null)).toBe('null');
  });
});
